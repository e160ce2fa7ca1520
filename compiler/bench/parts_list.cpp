// Grouping of positions, choice of substitutes, and what is missing from the drawers.
#include "bench/parts_list.h"

#include "base/text.h"
#include "substitute/judged.h"

#include <algorithm>
#include <map>

namespace benchlore {
namespace {

void take_risk(const Shop& shop, PartsLine& line) {
  const Node* modes = shop.note(line.component).field("failure-modes");
  if (modes == nullptr) return;
  for (const Node& item : modes->items) {
    const Node* mode = item.find("mode");
    const Node* word = item.find("likelihood");
    if (mode == nullptr) continue;
    const auto known = word == nullptr ? shop.schema->likelihood.end() : shop.schema->likelihood.find(word->text);
    const double likelihood = known == shop.schema->likelihood.end() ? 0 : known->second;
    if (!line.risk.empty() && likelihood <= line.likelihood) continue;
    line.likelihood = likelihood;
    line.risk = mode->text + (word == nullptr ? "" : " (" + word->text + ")");
  }
}

// The worst verdict of a substitute over all positions.
Verdict worst_over(const Shop& shop, const PartsLine& line, NoteId substitute) {
  Verdict worst = Verdict::suitable;
  for (const Position* position : line.positions)
    worst = std::min(
        worst, judge(*shop.schema, shop.part(line.component), shop.part(substitute), shop.where(*position)).verdict);
  return worst;
}

// Candidates come best first for the first position; the first that is usable at all of them is taken.
void choose(const Shop& shop, PartsLine& line) {
  for (const Candidate& candidate : candidates(shop, line.component, shop.where(*line.positions.front()))) {
    if (candidate.judgement.verdict < Verdict::conditional) break;
    const Verdict verdict = worst_over(shop, line, candidate.component);
    if (verdict < Verdict::conditional || (line.chosen && verdict <= line.verdict)) continue;
    line.chosen = candidate.component;
    line.verdict = verdict;
    if (verdict == Verdict::suitable) break;
  }
}

void count_stock(const Shop& shop, PartsLine& line) {
  const NoteId fitted = line.chosen.value_or(line.component);
  line.in_stock = shop.in_stock(fitted);
  for (const StockLine& stock : shop.stock) {
    if (stock.component == fitted && line.bin.empty()) line.bin = stock.bin;
  }
  line.to_order = std::max(0, static_cast<int>(line.positions.size()) - line.in_stock);
}

// Quoted when it must be; a text that a spreadsheet would take for a formula gets an apostrophe before it.
std::string field(const std::string& text) {
  std::string safe = text;
  if (!safe.empty() && std::string("=+-@\t\r").find(safe.front()) != std::string::npos) safe.insert(safe.begin(), '\'');
  if (safe.find_first_of(",\"\n\r") == std::string::npos) return safe;
  std::string quoted = "\"";
  for (char c : safe) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

std::string places(const Shop& shop, const PartsLine& line) {
  std::string text;
  for (const Position* position : line.positions) text += (text.empty() ? "" : " ") + position->name(shop);
  return text;
}

} // namespace

std::vector<PartsLine> parts_list(const Shop& shop, NoteId equipment, const std::string& class_name) {
  std::map<std::string, PartsLine> by_component;
  for (const auto& board_name : shop.note(equipment).texts("boards")) {
    const auto board = shop.find(board_name.value);
    if (!board) continue;
    for (const Position* position : shop.positions_on(*board)) {
      if (!position->component.known()) continue;
      const Note& component = shop.note(position->component);
      if (!class_name.empty() && !shop.schema->is_a(component.class_name, class_name)) continue;
      PartsLine& line = by_component[component.id];
      line.component = position->component;
      line.positions.push_back(position);
    }
  }
  std::vector<PartsLine> lines;
  for (auto& [unused, line] : by_component) {
    take_risk(shop, line);
    choose(shop, line);
    count_stock(shop, line);
    lines.push_back(std::move(line));
  }
  std::stable_sort(lines.begin(), lines.end(), [](auto& a, auto& b) { return a.likelihood > b.likelihood; });
  return lines;
}

std::string parts_csv(const Shop& shop, const std::vector<PartsLine>& lines) {
  std::string csv = "component,title,class,count,positions,risk,substitute,verdict,in stock,bin,to order\r\n";
  for (const PartsLine& line : lines) {
    const Note& note = shop.note(line.component);
    const std::vector<std::string> fields = {note.id,
                                             note.title,
                                             note.class_name,
                                             std::to_string(line.positions.size()),
                                             places(shop, line),
                                             line.risk,
                                             line.chosen ? shop.note(*line.chosen).id : "",
                                             line.chosen ? std::string(to_text(line.verdict)) : "",
                                             std::to_string(line.in_stock),
                                             line.bin,
                                             std::to_string(line.to_order)};
    std::string row;
    for (const std::string& one : fields) row += (row.empty() ? "" : ",") + field(one);
    csv += row + "\r\n";
  }
  return csv;
}

} // namespace benchlore
