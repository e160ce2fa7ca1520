// Reads Markdown texts from standard input, each after a line with its length in bytes, and prints a JSON list of the
// HTML that the notes layer makes of them. Every link keeps its destination, so that outside examples can be compared.
#include "base/json.h"
#include "notes/note.h"

#include <iostream>

namespace {

struct AsWritten : benchlore::LinkTarget {
  std::optional<std::string> href(const benchlore::BodyLink& link) const override { return link.raw; }
};

} // namespace

int main() {
  benchlore::JsonWriter json;
  json.list();
  for (std::size_t length = 0; std::cin >> length;) {
    std::cin.ignore(); // the line end after the length
    std::string text(length, '\0');
    std::cin.read(text.data(), static_cast<std::streamsize>(length));
    json.value(std::string_view(benchlore::render_markdown(text, AsWritten{})));
  }
  json.end();
  std::cout << json.text() << '\n';
}
