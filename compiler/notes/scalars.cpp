// Scalars of front matter are text until a field gives them meaning; here that meaning is checked.
#include "notes/scalars.h"

#include "base/text.h"

#include <algorithm>

namespace benchlore {
namespace {

// True when the node is a scalar with something in it.
bool has_text(FieldReading& reading, const Node& node, const std::string& path, const std::string& form) {
  if (node.is_scalar() && !trim(node.text).empty()) return true;
  const bool empty = node.is_scalar();
  reading.report.add(MessageKind::wrong_type, node.span, "`" + path + (empty ? "` has no value" : "` is not " + form),
                     empty ? "write " + form + ", or take the field out" : "write " + form);
  return false;
}

void wrong(FieldReading& reading, const Node& node, const std::string& form) {
  reading.report.add(MessageKind::wrong_type, node.span, "`" + node.text + "` is not " + form, "write " + form);
}

bool all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int number(std::string_view digits) {
  int value = 0;
  for (char c : digits) value = value * 10 + (c - '0');
  return value;
}

bool is_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
  const auto year = text.substr(0, 4), month = text.substr(5, 2), day = text.substr(8, 2);
  if (!all_digits(year) || !all_digits(month) || !all_digits(day)) return false;
  constexpr int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const int y = number(year), m = number(month), d = number(day);
  if (m < 1 || m > 12 || d < 1) return false;
  const bool leap = (y % 4 == 0 && y % 100 != 0) || y % 400 == 0;
  return d <= days[m - 1] + (m == 2 && leap ? 1 : 0);
}

} // namespace

void check_text(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  has_text(reading, node, path, "text");
}

void check_word(FieldReading& reading, const Field& field, const Node& node, const std::string& path) {
  if (!has_text(reading, node, path, "a word") || field.choices.empty()) return;
  if (std::find(field.choices.begin(), field.choices.end(), node.text) != field.choices.end()) return;
  auto near = near_names(node.text, field.choices);
  if (near.empty() && field.choices.size() <= 12) near = field.choices;
  const MessageKind kind = path == "class" ? MessageKind::unknown_class : MessageKind::unknown_word;
  reading.report.add(kind, node.span, "`" + node.text + "` is no word for `" + path + "`",
                     near.empty() ? "the schema lists the words" : "use " + alternatives(near));
}

void check_flag(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  if (!has_text(reading, node, path, "`yes` or `no`")) return;
  const std::string word = lower(node.text);
  if (word != "yes" && word != "no" && word != "true" && word != "false") wrong(reading, node, "`yes` or `no`");
}

void check_count(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  if (!has_text(reading, node, path, "a whole number")) return;
  if (!all_digits(node.text) || node.text.size() > 9) wrong(reading, node, "a whole number");
}

void check_date(FieldReading& reading, const Field&, const Node& node, const std::string& path) {
  if (!has_text(reading, node, path, "a date like 2024-05-31")) return;
  if (!is_date(node.text)) wrong(reading, node, "a date like 2024-05-31");
}

} // namespace benchlore
