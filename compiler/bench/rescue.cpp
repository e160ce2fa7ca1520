// Ranges in order, without overlap; copy first, repair afterwards.
#include "bench/rescue.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr std::int64_t most_sectors = std::int64_t{1} << 48;

std::optional<std::int64_t> whole(const Node& map, std::string_view key) {
  const Node* node = map.find(key);
  const auto number = node != nullptr && node->is_scalar() ? Decimal::parse(node->text) : std::nullopt;
  if (!number || number->negative() || number->exponent() < 0 || number->value() > static_cast<double>(most_sectors))
    return std::nullopt;
  return static_cast<std::int64_t>(number->value());
}

RescueState state_of(const std::string& word) {
  return word == "read" ? RescueState::read : word == "unreadable" ? RescueState::unreadable : RescueState::untried;
}

void read_ranges(const Node& table, Rescue& rescue) {
  const Node* list = table.find("ranges");
  if (list == nullptr) return;
  for (const Node& item : list->items) {
    const auto begin = whole(item, "from"), count = whole(item, "sectors");
    if (!begin || !count) {
      rescue.faults.push_back("a range needs `from` and `sectors`, as whole numbers");
      continue;
    }
    rescue.ranges.push_back({*begin, *begin + *count, state_of(text_in(item, "state")), item.span});
  }
  std::stable_sort(rescue.ranges.begin(), rescue.ranges.end(), [](auto& a, auto& b) { return a.begin < b.begin; });
}

std::string range_text(const RescueRange& range) {
  return std::to_string(range.begin) + " to " + std::to_string(range.end - 1);
}

void add_up(Rescue& rescue) {
  std::int64_t reached = 0;
  for (const RescueRange& range : rescue.ranges) {
    if (range.begin < reached)
      rescue.faults.push_back("the range " + range_text(range) + " overlaps the one before it");
    if (range.end > rescue.total)
      rescue.faults.push_back("the range " + range_text(range) + " lies beyond the end of the medium");
    const std::int64_t begin = std::clamp(range.begin, reached, rescue.total),
                       end = std::clamp(range.end, begin, rescue.total);
    rescue.untried += begin - reached;
    (range.state == RescueState::read         ? rescue.read
     : range.state == RescueState::unreadable ? rescue.unreadable
                                              : rescue.untried) += end - begin;
    reached = end;
  }
  rescue.untried += rescue.total - reached;
}

bool is_drive(const Shop& shop, const std::string& id) {
  const auto component = shop.find(id);
  return component && shop.note(*component).ratings.contains("cylinders");
}

// A part put in on a machine whose fitted parts are drives: the data had to be safe before.
const Node* drive_work(const Shop& shop, const Note& job) {
  const Node* fitted = job.field("fitted");
  if (fitted == nullptr) return nullptr;
  for (const Node& item : fitted->items) {
    if (is_drive(shop, text_in(item, "in-place-of")) || is_drive(shop, text_in(item, "repaired"))) return &item;
  }
  return nullptr;
}

} // namespace

std::string_view to_text(RescueState state) {
  switch (state) {
  case RescueState::read:
    return "read";
  case RescueState::unreadable:
    return "unreadable";
  case RescueState::untried:
    return "not yet tried";
  }
  return {};
}

std::optional<Rescue> rescue_of(const Shop& shop, NoteId job) {
  const Node* table = shop.note(job).field("rescue");
  if (table == nullptr || !table->is_map()) return std::nullopt;
  Rescue rescue;
  rescue.tool = text_in(*table, "tool");
  rescue.hash = text_in(*table, "hash");
  rescue.copy = text_in(*table, "copy");
  rescue.passes = whole(*table, "passes").value_or(0);
  rescue.total = whole(*table, "sectors").value_or(0);
  if (rescue.total == 0) rescue.faults.push_back("`sectors`, the size of the medium, is missing");
  read_ranges(*table, rescue);
  add_up(rescue);
  return rescue;
}

void report_rescues(const Shop& shop, Report& report) {
  for (const auto& [id, note_id] : shop.by_id) {
    const Note& note = shop.note(note_id);
    if (note.kind != "job") continue;
    const auto rescue = rescue_of(shop, note_id);
    if (rescue) {
      const Node* table = note.field("rescue");
      for (const std::string& fault : rescue->faults)
        report
            .add(MessageKind::rescue_table, table->span, fault,
                 "the ranges must lie inside the medium, one after the other")
            .subject = id;
    }
    const bool copied = rescue && rescue->read > 0 && !rescue->hash.empty();
    if (const Node* work = drive_work(shop, note); work != nullptr && !copied)
      report
          .add(MessageKind::rescue_missing, work->span,
               "a drive was exchanged or mended, and no copy of its data is noted",
               "copy first and note `rescue` with its hash; or say in it that there was nothing to save")
          .subject = id;
  }
}

} // namespace benchlore
