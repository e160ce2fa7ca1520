// Where the limits of a measurement come from, and what the meter leaves open.
#include "bench/measurements.h"

#include "base/text.h"

#include <algorithm>
#include <cmath>

namespace benchlore {
namespace {

// One measurement as it stands in the note.
struct Written {
  std::string what, reading, meter, limits, rail, board, position, component, rating;
  Span span;
};

Written from_front(const Node& item) {
  return {text_in(item, "what"),     text_in(item, "value"),
          text_in(item, "meter"),    text_in(item, "limits"),
          text_in(item, "rail"),     text_in(item, "board"),
          text_in(item, "position"), text_in(item, "component"),
          text_in(item, "rating"),   item.span};
}

// Columns of a line of a block: two or more blanks, a tab or a stroke part them.
std::vector<std::string> columns_of(std::string_view line) {
  std::vector<std::string> columns;
  std::string column;
  std::size_t blanks = 0;
  for (char c : line) {
    const bool blank = c == ' ';
    blanks = blank ? blanks + 1 : 0;
    if (c == '\t' || c == '|' || blanks == 2) {
      if (!trim(column).empty()) columns.emplace_back(trim(column));
      column.clear();
    } else {
      column += c;
    }
  }
  if (!trim(column).empty()) columns.emplace_back(trim(column));
  return columns;
}

void set_column(Written& written, const std::string& name, const std::string& value) {
  if (name == "what") written.what = value;
  if (name == "limit" || name == "limits") written.limits = value;
  if (name == "reading" || name == "value") written.reading = value;
  if (name == "meter") written.meter = value;
  if (name == "rail") written.rail = value;
}

// The rows of every fenced block whose first word is `measurements`; its first line names the columns.
std::vector<Written> from_body(const Shop& shop, const Note& note) {
  std::vector<Written> found;
  const std::string_view body = shop.sources->text(note.body_span);
  bool inside = false;
  std::vector<std::string> names;
  std::size_t offset = 0;
  for (std::string_view line : split(body, '\n')) {
    const auto begin = note.body_span.begin + static_cast<std::uint32_t>(offset);
    offset += line.size() + 1;
    const std::string_view plain = trim(line);
    if (plain.starts_with("```")) {
      inside = !inside && trim(plain.substr(3)).starts_with("measurements");
      names.clear();
      continue;
    }
    if (!inside || plain.empty()) continue;
    const auto columns = columns_of(plain);
    if (names.empty()) {
      for (const std::string& column : columns) names.push_back(lower(column));
      continue;
    }
    Written written;
    written.span = {note.file, begin, begin + static_cast<std::uint32_t>(line.size())};
    for (std::size_t i = 0; i < columns.size() && i < names.size(); ++i) set_column(written, names[i], columns[i]);
    if (!written.what.empty() && !written.reading.empty()) found.push_back(std::move(written));
  }
  return found;
}

struct Limits {
  std::optional<double> low, high;
  Dimension dimension;
  std::string text;
};

Limits limits_of(const Quantity& quantity, const std::string& from) {
  return {quantity.low(), quantity.high(), quantity.dimension,
          to_text(quantity) + (from.empty() ? "" : " (" + from + ")")};
}

constexpr Dimension measured[] = {dimension::voltage, dimension::resistance,  dimension::capacitance,
                                  dimension::current, dimension::frequency,   dimension::time,
                                  dimension::power,   dimension::temperature, dimension::inductance};

std::optional<Quantity> read_any(const std::string& text) {
  for (Dimension dimension : measured) {
    if (const auto read = parse_quantity(text, dimension); read.quantity) return read.quantity;
  }
  return std::nullopt;
}

std::optional<Limits> by_rail(const Shop& shop, const Note& job, const Written& written) {
  if (written.rail.empty()) return std::nullopt;
  const auto equipment = shop.find(job.text("equipment"));
  const Node* supply = equipment ? shop.note(*equipment).field("supply") : nullptr;
  const Node* rails = supply == nullptr ? nullptr : supply->find("rails");
  const Node* rail = rails == nullptr ? nullptr : rails->find(written.rail);
  const auto read = rail == nullptr ? QuantityResult{} : parse_quantity(text_in(*rail, "voltage"), dimension::voltage);
  if (!read.quantity) return std::nullopt;
  return limits_of(*read.quantity, "rail " + written.rail);
}

std::optional<NoteId> measured_part(const Shop& shop, const Written& written) {
  if (!written.component.empty()) return shop.find(written.component);
  const Position* position =
      written.board.empty() || written.position.empty() ? nullptr : shop.position(written.board, written.position);
  return position != nullptr && position->component.known() ? std::optional(position->component) : std::nullopt;
}

// The rating that is named, or else the first of the class that the reading can be held against: capacitance for
// farads, resistance for ohms. Other ratings are limits of use, not what a meter shows.
std::optional<Limits> by_part(const Shop& shop, const Written& written) {
  const auto part = measured_part(shop, written);
  if (!part) return std::nullopt;
  const Note& note = shop.note(*part);
  for (const auto& [name, stated] : note.ratings) {
    const Quantity* quantity = std::get_if<Quantity>(&stated.value);
    if (quantity == nullptr) continue;
    const bool natural = (name == "capacitance" && quantity->dimension == dimension::capacitance) ||
                         (name == "resistance" && quantity->dimension == dimension::resistance);
    if (written.rating.empty() ? !natural : name != written.rating) continue;
    if (written.rating.empty() && !parse_quantity(written.reading, quantity->dimension).quantity) continue;
    return limits_of(*quantity, note.id + ", " + name);
  }
  return std::nullopt;
}

std::optional<Limits> limits_for(const Shop& shop, const Note& job, const Written& written) {
  if (!written.limits.empty()) {
    const auto read = read_any(written.limits);
    return read ? std::optional(limits_of(*read, "")) : std::nullopt;
  }
  const auto rail = by_rail(shop, job, written);
  return rail ? rail : by_part(shop, written);
}

const Meter* find_meter(const Shop& shop, const std::string& name) {
  for (const Meter& meter : shop.facts.meters) {
    if (meter.name == name) return &meter;
  }
  return nullptr;
}

void rule(JudgedMeasurement& judged, const Limits& limits, double reading, double doubt) {
  judged.ruling = guarded(reading, doubt, limits.low, limits.high);
  judged.working = show_number(reading, limits.dimension) + " ± " + show_number(doubt, limits.dimension);
  if (*judged.ruling != Ruling::undecided) return;
  double distance = INFINITY;
  for (const auto& limit : {limits.low, limits.high}) {
    if (limit) distance = std::min(distance, std::fabs(reading - *limit));
  }
  judged.decides = distance > 0 ? "a meter that is right within " + show_number(distance, limits.dimension)
                                : "a better meter, or the part out of circuit";
}

void judge_one(const Shop& shop, const Note& job, const Written& written, JudgedMeasurement& judged) {
  const auto limits = limits_for(shop, job, written);
  if (!limits) {
    if (!written.limits.empty()) judged.why_not = "the limits `" + written.limits + "` cannot be read";
    return;
  }
  judged.limits = limits->text;
  if (!limits->low && !limits->high) {
    judged.why_not = "nothing is guaranteed on either side";
    return;
  }
  const auto read = parse_quantity(written.reading, limits->dimension);
  if (!read.quantity || !read.quantity->centre()) {
    judged.why_not = "the reading `" + written.reading + "` cannot be read: " + (read.error ? read.error->message : "");
    return;
  }
  const Meter* meter = find_meter(shop, written.meter);
  const auto accuracy = meter == nullptr ? std::nullopt : read_accuracy(meter->accuracy);
  const auto step = last_digit(written.reading, limits->dimension);
  if (!accuracy || !step) {
    judged.why_not = written.meter.empty() ? "no meter is named, so that its accuracy is not known"
                     : meter == nullptr    ? "shop.yaml lists no meter `" + written.meter + "`"
                                           : "the accuracy of `" + written.meter + "` cannot be read; write `1% + 2`";
    return;
  }
  const double reading = *read.quantity->centre();
  rule(judged, *limits, reading, meter_uncertainty(reading, accuracy->share, accuracy->counts, *step));
}

bool was_fitted(const Note& job, const Written& written) {
  const Node* fitted = job.field("fitted");
  if (fitted == nullptr || written.position.empty()) return false;
  return std::any_of(fitted->items.begin(), fitted->items.end(), [&](const Node& item) {
    return text_in(item, "board") == written.board && text_in(item, "position") == written.position;
  });
}

void settle(std::vector<JudgedMeasurement>& all) {
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (std::size_t later = i + 1; later < all.size(); ++later) {
      if (all[later].what == all[i].what && all[later].ruling == Ruling::accept) all[i].settled = true;
    }
  }
}

} // namespace

std::optional<MeterAccuracy> read_accuracy(std::string_view text) {
  const std::size_t percent = text.find('%');
  if (percent == std::string_view::npos) return std::nullopt;
  std::string_view share = trim(text.substr(0, percent)), rest = trim(text.substr(percent + 1));
  for (std::string_view sign : {"±", "+/-"}) {
    if (share.starts_with(sign)) share = trim(share.substr(sign.size()));
  }
  const auto number = Decimal::parse(share);
  if (!number || number->negative()) return std::nullopt;
  MeterAccuracy accuracy{number->value() / 100, 0};
  if (rest.empty()) return accuracy;
  if (!rest.starts_with("+")) return std::nullopt;
  rest = trim(rest.substr(1));
  const std::size_t blank = rest.find(' ');
  const auto counts = Decimal::parse(rest.substr(0, blank));
  if (!counts || counts->negative()) return std::nullopt;
  accuracy.counts = counts->value();
  return accuracy;
}

std::optional<double> last_digit(std::string_view reading, Dimension dimension) {
  std::string step(trim(reading));
  std::size_t last = std::string::npos;
  for (std::size_t i = 0; i < step.size(); ++i) {
    const bool number = (step[i] >= '0' && step[i] <= '9') || step[i] == '.' || step[i] == '-' || step[i] == '+';
    if (!number) break;
    if (step[i] == '-' || step[i] == '+') step[i] = '0';
    if (step[i] == '.') continue;
    step[i] = '0';
    last = i;
  }
  if (last == std::string::npos) return std::nullopt;
  step[last] = '1';
  const auto read = parse_quantity(step, dimension);
  return read.quantity && read.quantity->nominal ? std::optional(read.quantity->nominal->value()) : std::nullopt;
}

std::vector<JudgedMeasurement> judge_measurements(const Shop& shop, NoteId job) {
  const Note& note = shop.note(job);
  std::vector<Written> written;
  if (const Node* list = note.field("measurements")) {
    for (const Node& item : list->items) written.push_back(from_front(item));
  }
  for (Written& one : from_body(shop, note)) written.push_back(std::move(one));
  std::vector<JudgedMeasurement> all;
  for (const Written& one : written) {
    JudgedMeasurement judged;
    judged.job = job;
    judged.what = one.what;
    judged.reading = one.reading;
    judged.meter = one.meter;
    judged.where = one.position.empty() ? one.board : one.board + ":" + one.position;
    judged.span = one.span;
    judged.settled = was_fitted(note, one);
    judge_one(shop, note, one, judged);
    all.push_back(std::move(judged));
  }
  settle(all);
  return all;
}

void report_measurements(const Shop& shop, Report& report) {
  for (const auto& [id, note] : shop.by_id) {
    if (shop.note(note).kind != "job") continue;
    for (const JudgedMeasurement& judged : judge_measurements(shop, note)) {
      const std::string about = "`" + judged.what + "`: " + judged.reading;
      if (!judged.why_not.empty())
        report
            .add(MessageKind::measurement_unjudged, judged.span, about + " is not judged: " + judged.why_not,
                 "name the meter and the limits")
            .subject = id;
      if (judged.settled || !judged.ruling || *judged.ruling == Ruling::accept) continue;
      const bool rejected = *judged.ruling == Ruling::reject;
      report
          .add(rejected ? MessageKind::measurement_rejected : MessageKind::measurement_undecided, judged.span,
               about + (rejected ? " is outside " : " decides nothing against ") + judged.limits + " with " +
                   judged.working,
               rejected ? "say what was put in there, or measure it again" : judged.decides + " would decide it")
          .subject = id;
    }
  }
}

} // namespace benchlore
