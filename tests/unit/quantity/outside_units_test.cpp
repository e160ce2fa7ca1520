// Conversions against another program: GNU units 2.22 (Debian package `units`), which is run, not linked.
// Every unit with every prefix and several numbers goes through one process.
#include "quantity/quantity.h"
#include "quantity/unit.h"

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

using namespace benchlore;

namespace {

struct Question {
  std::string ours; // number and unit as we write them
  std::string number;
  std::string theirs; // the unit as GNU units writes it
  std::string si;     // the unit that the answer is in
  Dimension dimension;
};

struct Name {
  const char* ours;
  const char* theirs;
  const char* si;
};

const std::vector<Name> simple{{"V", "V", "V"},
                               {"A", "A", "A"},
                               {"ohm", "ohm", "ohm"},
                               {"Ω", "ohm", "ohm"},
                               {"S", "S", "S"},
                               {"F", "F", "F"},
                               {"H", "henry", "H"},
                               {"Hz", "Hz", "Hz"},
                               {"W", "W", "W"},
                               {"VA", "V A", "W"},
                               {"J", "J", "J"},
                               {"Wh", "W hour", "J"},
                               {"C", "C", "C"},
                               {"Ah", "A hour", "C"},
                               {"s", "s", "s"},
                               {"min", "minute", "s"},
                               {"h", "hour", "s"},
                               {"d", "day", "s"},
                               {"year", "julianyear", "s"},
                               {"m", "m", "m"},
                               {"in", "inch", "m"},
                               {"g", "g", "kg"},
                               {"N", "N", "N"},
                               {"Pa", "Pa", "Pa"},
                               {"K", "K", "K"},
                               {"%", "percent", "1"},
                               {"ppm", "ppm", "1"},
                               {"bit", "bit", "bit"},
                               {"B", "byte", "bit"}};

const std::vector<Name> compound{
    {"V/us", "V/us", "V/s"},      {"A/ms", "A/ms", "A/s"},     {"ppm/K", "ppm/K", "1/K"},
    {"%/K", "percent/K", "1/K"},  {"K/W", "K/W", "K/W"},       {"mW/K", "mW/K", "W/K"},
    {"A2s", "A^2 s", "A^2 s"},    {"A²s", "A^2 s", "A^2 s"},   {"kohm/V", "kohm/V", "ohm/V"},
    {"uV/V", "uV/V", "1"},        {"mV/K", "mV/K", "V/K"},     {"kbit/s", "kbit/s", "bit/s"},
    {"MB/s", "Mbyte/s", "bit/s"}, {"KiB", "kibibyte", "bit"},  {"MiB", "mebibyte", "bit"},
    {"GiB", "gibibyte", "bit"},   {"Kibit", "kibibit", "bit"}, {"mm2", "mm^2", "m^2"},
    {"cm³", "cm^3", "m^3"},       {"nV/rtHz", "nV", "V"},      {"kg*m^2*s^-3", "kg m^2 s^-3", "W"}};

// GNU units writes prefixes before a single name; a product takes the power of ten instead.
std::string power_of(char prefix) {
  switch (prefix) {
  case 'f':
    return "1e-15";
  case 'p':
    return "1e-12";
  case 'n':
    return "1e-9";
  case 'u':
    return "1e-6";
  case 'm':
    return "1e-3";
  case 'c':
    return "1e-2";
  case 'k':
    return "1e3";
  case 'M':
    return "1e6";
  case 'G':
    return "1e9";
  default:
    return "1e12";
  }
}

std::string their_unit(const Name& name, char prefix) {
  std::string theirs = name.theirs;
  return theirs.find(' ') == std::string::npos ? prefix + theirs : power_of(prefix) + " " + theirs;
}

void add_questions(std::vector<Question>& list, const std::string& ours, const std::string& theirs, const char* si,
                   Dimension dimension) {
  for (const char* number : {"1", "4.7", "0.00033", "98765.4"}) {
    list.push_back({number + (" " + ours), number, theirs, si, dimension});
  }
}

const UnitRow* row_of(std::string_view symbol) {
  for (const UnitRow& row : units()) {
    if (row.symbol == symbol) return &row;
  }
  return nullptr;
}

std::vector<Question> questions() {
  std::vector<Question> list;
  for (const Name& name : simple) {
    const UnitRow* row = row_of(name.ours);
    REQUIRE_MESSAGE(row, name.ours);
    add_questions(list, name.ours, name.theirs, name.si, row->dimension);
    for (char prefix : row->prefixes) {
      add_questions(list, prefix + std::string(name.ours), their_unit(name, prefix), name.si, row->dimension);
    }
  }
  for (const Name& name : compound) {
    auto unit = parse_unit(name.ours);
    REQUIRE_MESSAGE(unit.has_value(), name.ours);
    add_questions(list, name.ours, name.theirs, name.si, unit->dimension);
  }
  return list;
}

std::vector<std::string> ask(const std::vector<Question>& list) {
  std::string command = "units --quiet --terse --output-format %.17g 2>&1 <<'END'\n";
  for (const Question& question : list) {
    command += question.number + " " + question.theirs + "\n" + question.si + "\n";
  }
  std::vector<std::string> answers;
  FILE* pipe = popen((command + "END\n").c_str(), "r");
  if (!pipe) return answers;
  std::array<char, 512> line{};
  while (std::fgets(line.data(), line.size(), pipe)) answers.emplace_back(line.data());
  pclose(pipe);
  return answers;
}

} // namespace

TEST_CASE("GNU units converts every unit to the same number") {
  auto list = questions();
  CHECK(list.size() >= 200);
  auto answers = ask(list);
  for (const std::string& answer : answers) {
    char* end = nullptr;
    std::strtod(answer.c_str(), &end);
    REQUIRE_MESSAGE(*end == '\n', "`units` (GNU units) must be installed and know every unit; it said: " << answer);
  }
  REQUIRE_MESSAGE(answers.size() == list.size(), "`units` (GNU units) must be installed");
  for (std::size_t i = 0; i < list.size(); ++i) {
    auto ours = parse_quantity(list[i].ours, list[i].dimension);
    REQUIRE_MESSAGE(ours.quantity.has_value(), list[i].ours);
    double mine = ours.quantity->nominal->value();
    double theirs = std::strtod(answers[i].c_str(), nullptr);
    bool near = std::abs(mine - theirs) <= 1e-12 * std::abs(theirs);
    CHECK_MESSAGE(near, list[i].ours << " is " << mine << ", not " << answers[i]);
  }
}
