// Laws of judging that hold whatever the data: missing knowledge never helps, notation changes nothing.
#include "law_data.h"

#include <algorithm>

using namespace benchlore;

namespace {

// Suitable and conditional are good to use; of the others none is better than another, since what is not known of an
// unsafe part may well be what made it unsafe.
int usability(Verdict verdict) { return verdict == Verdict::suitable ? 2 : verdict == Verdict::conditional ? 1 : 0; }

void without_each_rating(const test::Pair& pair, Ratings test::Pair::*side, int before, std::size_t& tried) {
  for (const auto& [name, unused] : pair.*side) {
    test::Pair less = pair;
    (less.*side).erase(name);
    ++tried;
    const int after = usability(test::judge_pair(less).verdict);
    if (after > before)
      FAIL_CHECK(pair.name << ": without `" << name << "` of the "
                           << (side == &test::Pair::original ? "original" : "substitute")
                           << " the verdict gets better");
  }
}

} // namespace

TEST_CASE("removing any stated rating of either part never makes a substitute more usable") {
  std::size_t tried = 0;
  for (const test::Pair& pair : test::law_pairs()) {
    const int before = usability(test::judge_pair(pair).verdict);
    without_each_rating(pair, &test::Pair::original, before, tried);
    without_each_rating(pair, &test::Pair::substitute, before, tried);
  }
  CHECK(tried > 5000);
}

TEST_CASE("removing a rating that decided for suitable leaves no suitable") {
  for (const test::Pair& pair : test::law_pairs()) {
    const Judgement judgement = test::judge_pair(pair);
    if (judgement.verdict != Verdict::suitable) continue;
    for (const Reason& reason : judgement.reasons) {
      if (reason.rule == nullptr || !pair.substitute.contains(reason.rating)) continue;
      test::Pair less = pair;
      less.substitute.erase(reason.rating);
      CHECK_MESSAGE(test::judge_pair(less).verdict < Verdict::suitable, pair.name << " without " << reason.rating);
    }
  }
}

TEST_CASE("a typical value in place of a guaranteed one never makes a substitute more usable") {
  for (const test::Pair& pair : test::law_pairs()) {
    const int before = usability(test::judge_pair(pair).verdict);
    for (const auto& [name, stated] : pair.substitute) {
      const Quantity* quantity = std::get_if<Quantity>(&stated.value);
      if (quantity == nullptr || !quantity->centre()) continue;
      Quantity typical;
      typical.dimension = quantity->dimension;
      typical.typical = quantity->nominal   ? quantity->nominal
                        : quantity->maximum ? quantity->maximum
                                            : quantity->minimum;
      typical.at = quantity->at;
      test::Pair other = pair;
      other.substitute[name].value = typical;
      CHECK_MESSAGE(usability(test::judge_pair(other).verdict) <= before, pair.name << ", " << name);
    }
  }
}

TEST_CASE("writing every value out in its canonical text changes no verdict") {
  for (const test::Pair& pair : test::law_pairs()) {
    test::Pair rewritten = pair;
    for (Ratings* side : {&rewritten.original, &rewritten.substitute, &rewritten.where.stress}) {
      for (auto& [name, stated] : *side) {
        const Quantity* quantity = std::get_if<Quantity>(&stated.value);
        if (quantity == nullptr) continue;
        const QuantityResult again = parse_quantity(to_text(*quantity), quantity->dimension);
        REQUIRE_MESSAGE(again.quantity.has_value(), to_text(*quantity));
        stated.value = *again.quantity;
      }
    }
    const Judgement a = test::judge_pair(pair);
    const Judgement b = test::judge_pair(rewritten);
    CHECK_MESSAGE(a.verdict == b.verdict, pair.name);
    CHECK_MESSAGE(a.deciding == b.deciding, pair.name);
  }
}

TEST_CASE("a part suits its own place unless something is not stated or the place itself is the finding") {
  for (const test::Pair& pair : test::law_pairs()) {
    test::Pair self = pair;
    self.substitute = self.original;
    self.substitute_class = self.original_class;
    const Judgement judgement = test::judge_pair(self);
    for (const Reason& reason : judgement.reasons) {
      if (reason.outcome != Outcome::falls_short && reason.outcome != Outcome::differs) continue;
      const bool by_place = std::any_of(judgement.original_reasons.begin(), judgement.original_reasons.end(),
                                        [&](auto& r) { return r.rule_name == reason.rule_name; });
      const bool fixed =
          reason.rule != nullptr && (reason.rule->limit.has_value() || reason.rule->form == RuleForm::allowed);
      CHECK_MESSAGE((by_place || fixed || !reason.only_in_role.empty()),
                    pair.name << ": " << reason.rule_name << " " << reason.substitute << " wanted " << reason.required);
    }
  }
}

TEST_CASE("a greater value never worsens an at-least rule, and a smaller one never an at-most rule") {
  for (const test::Pair& pair : test::law_pairs()) {
    for (const Reason& reason : test::judge_pair(pair).reasons) {
      if (reason.rule == nullptr || reason.outcome != Outcome::meets) continue;
      const bool upward = reason.rule->form == RuleForm::at_least || reason.rule->form == RuleForm::withstands;
      if (!upward && reason.rule->form != RuleForm::at_most) continue;
      const auto stated = pair.substitute.find(reason.rule->rating);
      const Quantity* quantity =
          stated == pair.substitute.end() ? nullptr : std::get_if<Quantity>(&stated->second.value);
      if (quantity == nullptr || !quantity->centre() || *quantity->centre() <= 0) continue;
      test::Pair better = pair;
      Quantity moved = *quantity;
      for (auto* number : {&moved.nominal, &moved.minimum, &moved.maximum}) {
        if (*number) *number = multiply(**number, *Decimal::make(upward ? 2 : 5, upward ? 0 : -1));
      }
      better.substitute[reason.rule->rating].value = moved;
      const Part original{"o", "o", better.original_class, &better.original};
      const Part substitute{"s", "s", better.substitute_class, &better.substitute};
      const auto again = ask_rule(test::project_schema(), *reason.rule, original, substitute, better.where);
      REQUIRE(again.has_value());
      CHECK_MESSAGE(again->outcome == Outcome::meets, pair.name << ": " << reason.rule_name);
    }
  }
}

TEST_CASE("other names for the parts and another order of the rules change neither verdict nor what decides") {
  Schema turned = test::project_schema();
  std::reverse(turned.rules.begin(), turned.rules.end());
  turned.rules_from.clear();
  auto sorted = [](std::vector<std::string> names) {
    std::sort(names.begin(), names.end());
    return names;
  };
  std::size_t at = 0;
  for (const test::Pair& pair : test::law_pairs()) {
    if (++at % 7 != 0) continue; // a part of the pairs: without an index each asks every rule
    const Judgement a = test::judge_pair(pair);
    const Judgement b = judge(
        turned, {"another name", "Another", turned.find_class(pair.original_class->name), &pair.original},
        {"and one more", "One more", turned.find_class(pair.substitute_class->name), &pair.substitute}, pair.where);
    CHECK_MESSAGE(a.verdict == b.verdict, pair.name);
    CHECK_MESSAGE(sorted(a.deciding) == sorted(b.deciding), pair.name);
  }
}

namespace {

// The same value in a unit a thousand or a thousand million times smaller; nothing when it is not a plain one.
std::optional<std::string> in_small_units(const Quantity& quantity) {
  struct Row {
    Dimension dimension;
    const char* unit;
    int exponent;
  };
  constexpr Row rows[] = {{dimension::capacitance, "nF", 9},  {dimension::voltage, "mV", 3},
                          {dimension::resistance, "mohm", 3}, {dimension::current, "uA", 6},
                          {dimension::time, "ns", 9},         {dimension::power, "mW", 3}};
  if (!quantity.nominal || !quantity.at.empty() || (quantity.tolerance_stated() && !quantity.relative_tolerance))
    return std::nullopt;
  for (const Row& row : rows) {
    if (!(quantity.dimension == row.dimension)) continue;
    const auto scaled = multiply(*quantity.nominal, *Decimal::make(1, row.exponent));
    std::string text = scaled->text() + " " + row.unit;
    if (!quantity.tolerance_stated()) return text;
    const Decimal hundred = *Decimal::make(1, 2);
    return text + " -" + multiply(*quantity.minus, hundred)->text() + "/+" + multiply(*quantity.plus, hundred)->text() +
           "%";
  }
  return std::nullopt;
}

} // namespace

TEST_CASE("10 uF, 10000 nF and 10u are one value, and no verdict hangs on the unit") {
  CHECK(*parse_quantity("10 uF", dimension::capacitance).quantity ==
        *parse_quantity("10000 nF", dimension::capacitance).quantity);
  CHECK(*parse_quantity("10 uF", dimension::capacitance).quantity ==
        *parse_quantity("10u", dimension::capacitance).quantity);
  std::size_t rewritten = 0;
  for (const test::Pair& pair : test::law_pairs()) {
    test::Pair other = pair;
    for (Ratings* side : {&other.original, &other.substitute, &other.where.stress}) {
      for (auto& [name, stated] : *side) {
        const Quantity* quantity = std::get_if<Quantity>(&stated.value);
        const auto text = quantity == nullptr ? std::nullopt : in_small_units(*quantity);
        if (!text) continue;
        const auto again = parse_quantity(*text, quantity->dimension);
        REQUIRE_MESSAGE(again.quantity.has_value(), *text);
        stated.value = *again.quantity;
        ++rewritten;
      }
    }
    const Judgement a = test::judge_pair(pair), b = test::judge_pair(other);
    CHECK_MESSAGE(a.verdict == b.verdict, pair.name);
    CHECK_MESSAGE(a.deciding == b.deciding, pair.name);
  }
  CHECK(rewritten > 1000);
}
