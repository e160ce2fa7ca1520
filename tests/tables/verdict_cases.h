// The verdict tables of tests/tables/*.yaml, read for the tests that use them.
#pragma once

#include "base/files.h"
#include "substitute/combine.h"
#include "support.h"

#include <string>
#include <vector>

namespace benchlore::test {

struct VerdictCase {
  std::string file, name, verdict, source;
  std::vector<std::string> deciding;
  std::string original_class, substitute_class;
  std::string combination; // way in which `count` of the substitute are joined; empty: one part alone
  std::size_t count = 1;
  std::string list; // of dangerous substitutions that it stands in, with its number there; empty: in none
  int danger = 0;
  std::vector<std::string> stopped_by; // rules among those that are not met
  Ratings original, substitute;
  Where where;
};

inline Ratings read_ratings(const Node* node, const std::map<std::string, RatingType, std::less<>>& types,
                            const Sources& sources) {
  Ratings ratings;
  if (node == nullptr) return ratings;
  for (const Entry& entry : node->entries) {
    const auto type = types.find(entry.key);
    if (type == types.end()) {
      FAIL_CHECK(sources.path(entry.key_span.file) << ": `" << entry.key << "` is no rating or stress here");
      continue;
    }
    Report report;
    const auto value = read_value(entry.value, type->second, sources, report);
    for (const Message& message : report.messages()) FAIL_CHECK(entry.key << ": " << message.text);
    if (value) ratings[entry.key] = *value;
  }
  return ratings;
}

inline std::string word_of(const Node& node, std::string_view key) {
  const Node* found = node.find(key);
  return found == nullptr ? std::string() : found->text;
}

inline std::vector<std::string> words_in(const Node& node, std::string_view key) {
  std::vector<std::string> words;
  const Node* found = node.find(key);
  if (found == nullptr) return words;
  if (found->is_scalar()) words.push_back(found->text);
  for (const Node& item : found->items) words.push_back(item.text);
  return words;
}

inline VerdictCase read_case(const Node& node, const std::string& file, const Schema& schema, const Sources& sources) {
  VerdictCase made;
  made.file = file;
  made.name = word_of(node, "case");
  made.verdict = word_of(node, "verdict");
  made.source = word_of(node, "source");
  made.where.role = word_of(node, "role");
  CHECK_MESSAGE((made.where.role.empty() || schema.roles.contains(made.where.role)),
                made.name << ": no role " << made.where.role);
  made.deciding = words_in(node, "deciding");
  made.stopped_by = words_in(node, "reason");
  made.list = word_of(node, "list");
  if (!made.list.empty()) made.danger = std::stoi(word_of(node, "danger"));
  for (auto [key, class_name, ratings] : {std::tuple("original", &made.original_class, &made.original),
                                          std::tuple("substitute", &made.substitute_class, &made.substitute)}) {
    const Node* part = node.find(key);
    REQUIRE_MESSAGE(part != nullptr, made.name);
    *class_name = word_of(*part, "class");
    const ComponentClass* component_class = schema.find_class(*class_name);
    REQUIRE_MESSAGE(component_class != nullptr, made.name << ": no class " << *class_name);
    *ratings = read_ratings(part->find("ratings"), component_class->ratings, sources);
    made.combination = word_of(*part, "combination");
    if (const Node* count = part->find("count")) made.count = static_cast<std::size_t>(std::stoul(count->text));
  }
  made.where.stress = read_ratings(node.find("stress"), schema.stresses, sources);
  return made;
}

inline std::vector<VerdictCase> verdict_cases() {
  std::vector<VerdictCase> cases;
  const Schema& schema = project_schema();
  const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/tests/tables");
  for (const std::string& path : files->list("")) {
    if (!path.ends_with(".yaml") || path == "logic-matrix.yaml") continue;
    Sources sources;
    Report report;
    const std::string text = files->read(path).value_or("");
    const FileId file = sources.add(path, text);
    const auto node =
        read_record(sources, {file, 0, static_cast<std::uint32_t>(text.size())}, report, {.bytes = 1 << 20});
    for (const Message& message : report.messages())
      FAIL_CHECK(path << ":" << sources.place(message.span).line << ": " << message.text);
    const Node* list = node ? node->find("cases") : nullptr;
    if (node && list == nullptr) list = node->find("dangers");
    REQUIRE_MESSAGE(list != nullptr, path << " holds no cases");
    for (const Node& item : list->items) cases.push_back(read_case(item, path, schema, sources));
  }
  return cases;
}

inline Judgement run(const VerdictCase& c, const Schema& schema) {
  const Part original{"original", "original", schema.find_class(c.original_class), &c.original};
  const Part substitute{"substitute", "substitute", schema.find_class(c.substitute_class), &c.substitute};
  if (c.combination.empty()) return judge(schema, original, substitute, c.where);
  const CombinationWay* way = find_way(schema, c.combination, c.substitute_class);
  REQUIRE_MESSAGE(way != nullptr, c.name << ": no combination " << c.combination);
  const auto made = judge_combination(schema, original, {{substitute, static_cast<int>(c.count)}}, {way},
                                      std::vector<std::size_t>(c.count, 0), c.where);
  REQUIRE_MESSAGE(made.has_value(), c.name << ": the parts cannot be combined");
  return made->judgement;
}

} // namespace benchlore::test
