// The lists of dangerous substitutions: each as two component notes and a board with a position, run through the
// checker as a shop would run it. Where the lists come from stands beside each entry.
#include "verdict_cases.h"

#include "base/text.h"
#include "substitute/judged.h"

#include <algorithm>
#include <map>
#include <set>

using namespace benchlore;

namespace {

std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

std::string as_yaml(const Value& value) {
  const Words* words = std::get_if<Words>(&value);
  if (words == nullptr) return quoted(to_text(value));
  std::string list;
  for (const std::string& item : words->items) list += (list.empty() ? "" : ", ") + quoted(item);
  return "[" + list + "]";
}

std::string lines_of(const Ratings& ratings, const std::string& indent) {
  std::string text;
  for (const auto& [name, stated] : ratings) text += indent + name + ": " + as_yaml(stated.value) + "\n";
  return text;
}

std::string component(const std::string& title, const std::string& class_name, const Ratings& ratings,
                      const std::string& more) {
  std::string text = "---\nkind: component\ntitle: " + title + "\nclass: " + class_name + "\n";
  if (!ratings.empty()) text += "ratings:\n" + lines_of(ratings, "  ");
  return text + more + "---\nA part.\n";
}

std::string board(const test::VerdictCase& c) {
  std::string text = "---\nkind: board\ntitle: Board\npositions:\n  X1:\n    component: original\n";
  if (!c.where.role.empty()) text += "    role: " + c.where.role + "\n";
  if (!c.where.stress.empty()) text += "    stress:\n" + lines_of(c.where.stress, "      ");
  return text + "---\nA board.\n";
}

struct Checked {
  Sources sources;
  Report report;
  Shop shop;
  JudgedShop judged;
};

std::unique_ptr<Checked> check(const test::VerdictCase& c) {
  const MemoryFiles files(std::map<std::string, std::string, std::less<>>{
      {"shop.yaml", "name: Test\nmains: {voltage: 230 V, frequency: 50 Hz}\n"},
      {"components/original.md",
       component("Original", c.original_class, c.original, "substitutes:\n  - component: substitute\n")},
      {"components/substitute.md", component("Substitute", c.substitute_class, c.substitute, "")},
      {"boards/board.md", board(c)}});
  auto checked = std::make_unique<Checked>();
  checked->shop = link_shop(files, "", test::project_schema(), checked->sources, checked->report);
  for (const Message& message : checked->report.messages()) {
    if (message.severity > Severity::error) continue;
    FAIL_CHECK(c.name << ": " << message.text << "; " << message.way_out);
  }
  checked->judged = judge_shop(checked->shop);
  report_judgements(checked->shop, checked->judged, checked->report);
  return checked;
}

const Judgement* at_the_position(const Checked& checked) {
  for (const JudgedSubstitute& judged : checked.judged.substitutes) {
    if (judged.position != nullptr) return &judged.judgement;
  }
  return nullptr;
}

bool stopped_by(const Judgement& judgement, const std::vector<std::string>& rules) {
  for (const auto* reasons : {&judgement.reasons, &judgement.original_reasons}) {
    for (const Reason& reason : *reasons) {
      if (reason.outcome != Outcome::meets && std::find(rules.begin(), rules.end(), reason.rule_name) != rules.end())
        return true;
    }
  }
  return false;
}

bool reported(const Checked& checked) {
  return std::any_of(checked.report.messages().begin(), checked.report.messages().end(), [](const Message& message) {
    return message.kind == MessageKind::unsafe_substitute || message.kind == MessageKind::unfit_substitute ||
           message.kind == MessageKind::unknown_substitute || message.kind == MessageKind::conditional_substitute ||
           message.kind == MessageKind::overstressed_position;
  });
}

} // namespace

TEST_CASE("every dangerous substitution of the lists is stopped by the reason that the list gives") {
  for (const auto& c : test::verdict_cases()) {
    if (c.list.empty()) continue;
    const auto checked = check(c);
    const Judgement* judgement = at_the_position(*checked);
    REQUIRE_MESSAGE(judgement != nullptr, c.name);
    CHECK_MESSAGE(to_text(judgement->verdict) == c.verdict,
                  c.list << " " << c.danger << ", " << c.name << ": " << to_text(judgement->verdict));
    CHECK_MESSAGE(judgement->verdict != Verdict::suitable, c.name);
    CHECK_MESSAGE(stopped_by(*judgement, c.stopped_by),
                  c.list << " " << c.danger << ", " << c.name << ": not by " << join(c.stopped_by, ", "));
    CHECK_MESSAGE(reported(*checked), c.name << " is not reported");
  }
}

TEST_CASE("no entry of the lists of dangerous substitutions is left out") {
  const std::map<std::string, int> lengths{{"passive parts", 40}, {"active parts", 43}, {"assemblies", 10}};
  std::map<std::string, std::set<int>> seen;
  for (const auto& c : test::verdict_cases()) {
    if (!c.list.empty()) seen[c.list].insert(c.danger);
  }
  for (const auto& [list, length] : lengths) {
    for (int number = 1; number <= length; ++number) CHECK_MESSAGE(seen[list].contains(number), list << " " << number);
  }
}
