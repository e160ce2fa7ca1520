// Dates of making: year and week in four digits, in either order; and year letter and month of IEC 60062.
// source: EPCOS marking document of 2009 and an abstract of IEC 60062 (ove.at) for the system; the letters
// and the order of the four digits from memory.
#include "decode/families.h"

#include <array>

namespace benchlore {
namespace {

constexpr std::string_view year_letters = "ABCDEFHJKLMNPRSTUVWX"; // 1970 to 1989, and again every twenty years
constexpr std::string_view month_signs = "123456789OND";
constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};

int two_digits(std::string_view text) { return 10 * (text[0] - '0') + (text[1] - '0'); }

// Two figures of a year; electronics with dates in weeks are not older than 1950.
int full_year(int two) { return two >= 50 ? 1900 + two : 2000 + two; }

void add_week(int year, int week, std::string_view order, Drafts& out) {
  if (week < 1 || week > 53) return;
  const int full = full_year(year);
  const bool likely = full >= 1965 && full < 2030;
  out.push_back(
      fact_draft("date code " + std::string(order),
                 "made in week " + std::to_string(week) + " of " + std::to_string(full), likely ? 46 : rank_odd,
                 order == "YYWW" ? "two digits of the year, then the week" : "the week, then two digits of the year"));
}

void add_weeks(std::string_view text, Drafts& out) {
  const int first = two_digits(text), last = two_digits(text.substr(2));
  const std::size_t before = out.size();
  add_week(first, last, "YYWW", out);
  add_week(last, first, "WWYY", out);
  if (out.size() != before + 1) return;
  out.back().rank += 8;
  add_reason(out.back(), "the other order would be no week of a year");
}

void add_month(std::string_view text, Drafts& out) {
  const std::size_t letter = year_letters.find(text[0]), month = month_signs.find(text[1]);
  if (letter == std::string_view::npos || month == std::string_view::npos) return;
  const int year = 1970 + static_cast<int>(letter);
  const std::string years =
      std::to_string(year) + ", " + std::to_string(year + 20) + " or " + std::to_string(year + 40);
  out.push_back(
      fact_draft("IEC 60062 date code", "made in " + std::string(months[month]) + " " + years, 52,
                 "a letter for the year, which comes again every twenty years, and a sign for the month (letters "
                 "from memory); the other parts on the board decide"));
}

} // namespace

void read_date_code(std::string_view text, Drafts& out) {
  if (text.size() == 4 && all_digits(text)) add_weeks(text, out);
  if (text.size() == 2) add_month(text, out);
}

} // namespace benchlore
