// The one place that escapes, and the one that fills a template.
#include "emit/site/html.h"

#include "base/text.h"

namespace benchlore {
namespace {

std::string_view escaped(char c) {
  switch (c) {
  case '&':
    return "&amp;";
  case '<':
    return "&lt;";
  case '>':
    return "&gt;";
  case '"':
    return "&quot;";
  case '\'':
    return "&#39;";
  default:
    return {};
  }
}

bool control(char c) {
  auto byte = static_cast<unsigned char>(c);
  return (byte < 0x20 && c != '\n' && c != '\t') || byte == 0x7F;
}

} // namespace

Html& Html::operator<<(Markup markup) {
  bytes_ += markup.text;
  return *this;
}

Html& Html::operator<<(const Html& other) {
  bytes_ += other.bytes_;
  return *this;
}

Html text(std::string_view plain) {
  Html out;
  out.bytes_.reserve(plain.size() + plain.size() / 16);
  for (char c : plain) {
    if (auto entity = escaped(c); !entity.empty()) {
      out.bytes_ += entity;
    } else if (control(c)) {
      out.bytes_ += "\xEF\xBF\xBD";
    } else {
      out.bytes_ += c;
    }
  }
  return out;
}

Html rendered(std::string markup) {
  Html out;
  out.bytes_ = std::move(markup);
  return out;
}

Html link(std::string_view address, const Html& inside) {
  Html out;
  out << "<a href=\"" << text(address) << "\">" << inside << "</a>";
  return out;
}

Html with_code(std::string_view sentence) {
  Html out;
  while (!sentence.empty()) {
    std::size_t begin = sentence.find('`');
    std::size_t end = begin == std::string_view::npos ? begin : sentence.find('`', begin + 1);
    if (end == std::string_view::npos) break;
    out << text(sentence.substr(0, begin)) << "<code>" << text(sentence.substr(begin + 1, end - begin - 1))
        << "</code>";
    sentence.remove_prefix(end + 1);
  }
  return out << text(sentence);
}

Html section_heading(std::string_view anchor, std::string_view title) {
  Html out;
  out << "<h2 class=\"trace\" id=\"" << text(anchor) << "\">" << text(title) << "</h2>\n";
  return out;
}

std::string spoken(std::string_view name) {
  std::string out(name);
  for (char& c : out)
    if (c == '-' || c == '_') c = ' ';
  if (!out.empty() && out[0] >= 'a' && out[0] <= 'z') out[0] = static_cast<char>(out[0] - 'a' + 'A');
  return out;
}

Html fill(std::string_view page_template, const Slot* slots, std::size_t count) {
  std::string out;
  while (true) {
    std::size_t begin = page_template.find("{{");
    std::size_t end = begin == std::string_view::npos ? begin : page_template.find("}}", begin);
    if (end == std::string_view::npos) break;
    out += page_template.substr(0, begin);
    std::string_view name = trim(page_template.substr(begin + 2, end - begin - 2));
    for (std::size_t i = 0; i < count; ++i)
      if (slots[i].name == name) out += slots[i].content.str();
    page_template.remove_prefix(end + 2);
  }
  out += page_template;
  return rendered(std::move(out));
}

} // namespace benchlore
