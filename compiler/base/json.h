// Writes JSON text, in the order in which it is told; no reading. Strings must be UTF-8.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace benchlore {

// `JsonWriter j; j.object(); j.field("a", 1); j.key("b"); j.list(); j.value("x"); j.end(); j.end(); j.text()`.
class JsonWriter {
public:
  void object();
  void list();
  void end(); // closes the innermost object or list
  void key(std::string_view name);
  void value(std::string_view text);
  void value(const char* text) { value(std::string_view(text)); }
  void value(double number); // shortest text that reads back the same within 15 digits; not finite: null
  void value(long long number);
  void value(int number) { value(static_cast<long long>(number)); }
  void value(std::uint32_t number) { value(static_cast<long long>(number)); }
  void value(std::size_t number) { value(static_cast<long long>(number)); }
  void value(bool flag);
  void value(const std::vector<std::string>& texts); // as a list
  void null();

  template <class T> void field(std::string_view name, const T& content) {
    key(name);
    value(content);
  }

  const std::string& text() const { return out_; }

private:
  void separate();
  std::string out_;
  std::string open_; // '{' or '[' for each level
  bool first_ = true;
  bool after_key_ = false;
};

// The text between quotes of a JSON string, escaped; `<`, `>`, `&`, U+2028 and U+2029 are escaped too, so
// that the result may stand in a script. Bytes that are no UTF-8 become U+FFFD.
std::string json_escape(std::string_view text);

} // namespace benchlore
