// A schema made for one test: the small one with files of its own, and parts written as notes write them.
#pragma once

#include "small_schema.h"
#include "substitute/verdict.h"

#include <doctest/doctest.h>

namespace benchlore::test {

struct Made {
  Sources sources;
  Report report;
  std::optional<Schema> schema;

  // The ratings of a class, from `name: value` lines.
  Ratings ratings(const std::string& class_name, const std::string& text) {
    return read(text, schema->find_class(class_name)->ratings);
  }
  Ratings stress(const std::string& text) { return read(text, schema->stresses); }

  // What a rule says of two parts of one class in a place.
  Reason ask(const std::string& rule, const std::string& class_name, const std::string& original,
             const std::string& substitute, const std::string& stress_text = {}) {
    const Ratings o = ratings(class_name, original), s = ratings(class_name, substitute);
    const Part a{"a", "a", schema->find_class(class_name), &o}, b{"b", "b", schema->find_class(class_name), &s};
    REQUIRE(schema->find_rule(rule) != nullptr);
    const auto reason = ask_rule(*schema, *schema->find_rule(rule), a, b, {"", "", stress(stress_text)});
    REQUIRE(reason.has_value());
    return *reason;
  }

  std::string messages() const {
    std::string text;
    for (const Message& message : report.messages()) text += message.text + " | " + message.way_out + "\n";
    return text;
  }

private:
  Ratings read(const std::string& text, const std::map<std::string, RatingType, std::less<>>& types) {
    Ratings result;
    if (text.empty()) return result;
    const FileId file = sources.add("text", text);
    const auto node = read_record(sources, {file, 0, static_cast<std::uint32_t>(text.size())}, report);
    REQUIRE(node.has_value());
    for (const Entry& entry : node->entries) {
      REQUIRE_MESSAGE(types.contains(entry.key), entry.key);
      const auto value = read_value(entry.value, types.find(entry.key)->second, sources, report);
      REQUIRE_MESSAGE(value.has_value(), messages());
      result[entry.key] = *value;
    }
    return result;
  }
};

// The small schema with these files in place of its own, and a shop's folder.
inline std::unique_ptr<Made> made_schema(const std::map<std::string, std::string>& files,
                                         const std::map<std::string, std::string>& shop = {}) {
  auto all = small_schema_files();
  for (const auto& [path, text] : files) all[path] = text;
  std::map<std::string, std::string, std::less<>> shop_files(shop.begin(), shop.end());
  const MemoryFiles project(all), own(shop_files);
  auto made = std::make_unique<Made>();
  made->schema = read_schema({{project, ""}, {own, ""}}, made->sources, made->report);
  return made;
}

} // namespace benchlore::test
