// `benchlore diagnose MACHINE`: from what is seen to ranked causes and the next best check.
#include "diagnosis/diagnose.h"
#include "base/json.h"
#include "base/text.h"
#include "command/command.h"

#include <CLI/CLI.hpp>
#include <ostream>

namespace benchlore {
namespace {

void options_of(CLI::App& app, Options& options) {
  add_content_options(app, options);
  add_format_option(app, options);
  app.add_option("--seen", options.seen, "ids of symptoms that are there")->delimiter(',');
  app.add_option("--not-seen", options.not_seen, "ids of symptoms that were looked for and are not there")
      ->delimiter(',');
  app.add_option("--checked", options.checked, "a check that was made, as CHECK=good or CHECK=bad; may be repeated");
  app.add_flag("--powered", options.powered, "the checks before power-on are done; checks under power may be proposed");
  app.add_option("--limit", options.limit, "at most so many causes and checks")->capture_default_str();
  app.add_option("equipment", options.words, "id of the machine")->required()->expected(1);
}

bool known_symptoms(const Compiled& compiled, const std::vector<std::string>& ids, Streams& streams) {
  std::vector<std::string> known;
  for (const auto& [id, note] : compiled.shop.by_id) {
    if (compiled.shop.note(note).kind == "symptom") known.push_back(id);
  }
  for (const std::string& id : ids) {
    if (std::find(known.begin(), known.end(), id) != known.end()) continue;
    const auto near = near_names(id, known);
    streams.err << "benchlore: there is no symptom `" << id << "`"
                << (near.empty() ? "" : "; near it: " + alternatives(near)) << "\n";
    return false;
  }
  return true;
}

std::optional<Observations> read_observations(const Compiled& compiled, const DiagnosisModel& model,
                                              const Options& options, Streams& streams) {
  Observations observed{options.seen, options.not_seen, {}, options.powered};
  if (!known_symptoms(compiled, options.seen, streams) || !known_symptoms(compiled, options.not_seen, streams))
    return std::nullopt;
  for (const std::string& text : options.checked) {
    const std::size_t equals = text.rfind('=');
    const std::string id = text.substr(0, equals), result = equals == std::string::npos ? "" : text.substr(equals + 1);
    const bool known =
        std::any_of(model.checks.begin(), model.checks.end(), [&](auto& check) { return check.id == id; });
    if (!known || (result != "good" && result != "bad")) {
      streams.err << "benchlore: `" << text
                  << "` is no result; write --checked CHECK=good or =bad, with a check such as "
                  << (model.checks.empty() ? "fault/1" : model.checks.front().id) << "\n";
      return std::nullopt;
    }
    observed.checked.emplace_back(id, result == "bad");
  }
  return observed;
}

std::string percent(double share) { return show_number(100 * share, dimension::none, 3) + " %"; }

void write_cause(const CauseModel& cause, double probability, std::ostream& out) {
  out << percent(probability) << "  " << (cause.id.empty() ? cause.title : cause.id + "  " + cause.title) << "\n";
  if (cause.id.empty()) return;
  out << "    from " << (cause.word.empty() ? std::string("no word (counted as sometimes)") : "`" + cause.word + "`")
      << " in its note, " << cause.jobs << (cause.jobs == 1 ? " job" : " jobs") << "; before anything was seen "
      << percent(cause.prior) << "\n";
}

void write_check(const CheckModel& check, const NextCheck& next, std::ostream& out) {
  out << check.id << "  " << check.text << "\n    " << show_number(next.gain, dimension::none, 3) << " bits in "
      << check.minutes << " minutes" << (check.power ? ", under power" : "");
  if (!check.risk.empty() && check.risk != "none") out << ", risk: " << check.risk;
  out << "\n";
  if (!check.good.empty()) out << "    good: " << check.good << "\n";
  if (!check.bad.empty()) out << "    bad (" << percent(next.chance_of_bad) << "): " << check.bad << "\n";
}

void write_text(const Compiled& compiled, const DiagnosisModel& model, const Diagnosis& found, std::size_t limit,
                std::ostream& out) {
  write_cautions(compiled, model.equipment, out);
  out << "\ncauses\n";
  for (std::size_t i = 0; i < found.causes.size() && i < limit; ++i)
    write_cause(model.causes[found.causes[i].cause], found.causes[i].probability, out);
  out << "\nnext\n";
  for (std::size_t i = 0; i < found.next.size() && i < limit; ++i)
    write_check(model.checks[found.next[i].check], found.next[i], out);
  if (found.next.empty())
    out << "no check of the notes is left" << (model.checks.empty() ? "" : "; more may be made under power (--powered)")
        << "\n";
  if (found.repairs.empty()) return;
  out << "\none cause is probable enough to begin; in this order "
      << show_number(found.expected_minutes, dimension::none, 3) << " minutes are expected:\n";
  for (std::size_t i = 0; i < found.repairs.size() && i < 5; ++i) {
    const CauseModel& cause = model.causes[found.repairs[i]];
    out << "  " << (cause.id.empty() ? cause.title : cause.id);
    if (cause.note.known() && !compiled.shop.note(cause.note).text("remedy").empty())
      out << ": " << compiled.shop.note(cause.note).text("remedy");
    out << "\n";
  }
}

std::string as_json(const Compiled& compiled, const DiagnosisModel& model, const Diagnosis& found, std::size_t limit) {
  JsonWriter json;
  json.object();
  json.field("format", "benchlore-diagnosis");
  json.field("version", 1);
  json.field("equipment", std::string_view(compiled.shop.note(model.equipment).id));
  json.key("causes");
  json.list();
  for (std::size_t i = 0; i < found.causes.size() && i < limit; ++i) {
    const CauseModel& cause = model.causes[found.causes[i].cause];
    json.object();
    json.field("id", std::string_view(cause.id));
    json.field("title", std::string_view(cause.title));
    json.field("probability", found.causes[i].probability);
    json.field("prior", cause.prior);
    json.field("word", std::string_view(cause.word));
    json.field("jobs", cause.jobs);
    json.end();
  }
  json.end();
  json.key("next");
  json.list();
  for (std::size_t i = 0; i < found.next.size() && i < limit; ++i) {
    const CheckModel& check = model.checks[found.next[i].check];
    json.object();
    json.field("check", std::string_view(check.id));
    json.field("text", std::string_view(check.text));
    json.field("gain", found.next[i].gain);
    json.field("minutes", check.minutes);
    json.field("risk", std::string_view(check.risk));
    json.field("power", check.power);
    json.end();
  }
  json.end();
  json.field("expected_minutes", found.expected_minutes);
  json.key("repairs");
  json.list();
  for (std::size_t cause : found.repairs) json.value(std::string_view(model.causes[cause].id));
  json.end();
  json.end();
  return json.text() + "\n";
}

int execute(const Options& options, Streams& streams) {
  const auto compiled = open_shop(options, streams);
  if (!compiled) return exit_usage;
  const auto equipment = find_equipment(*compiled, options.words.front(), streams);
  if (!equipment) return exit_usage;
  const DiagnosisModel model = diagnosis_model(compiled->shop, *equipment);
  const auto observed = read_observations(*compiled, model, options, streams);
  if (!observed) return exit_usage;
  const Diagnosis found = diagnose(model, *observed);
  if (options.format == "json") {
    streams.out << as_json(*compiled, model, found, options.limit);
  } else {
    write_text(*compiled, model, found, options.limit, streams.out);
  }
  return model.causes.size() > 1 ? exit_good : exit_findings;
}

} // namespace

const Command diagnose_command = {"diagnose", "rank causes for what is seen, and say which check to make next",
                                  options_of, execute};

} // namespace benchlore
