// The fields that every kind of note has.
#include "notes/fields.h"

namespace benchlore {
namespace {

Field field(std::string name, Field::Type type, bool required, std::string meaning) {
  Field made;
  made.name = std::move(name);
  made.type = type;
  made.required = required;
  made.meaning = std::move(meaning);
  return made;
}

Field list_of(Field element, std::string meaning) {
  Field made = field(element.name, Field::Type::list, false, std::move(meaning));
  made.fields.push_back(std::move(element));
  return made;
}

Field accepts() {
  Field one = field("accepts", Field::Type::map, false, "");
  one.fields = {field("finding", Field::Type::text, true, "name of the finding or of the rule"),
                field("about", Field::Type::text, false, "the substitute or the position"),
                field("reason", Field::Type::text, true, "why the shop lives with it"),
                field("by", Field::Type::text, true, "who looked at it"),
                field("date", Field::Type::date, true, "and when")};
  return list_of(std::move(one), "findings that the shop has looked at and lives with");
}

} // namespace

std::vector<Field> common_fields(const Schema& schema) {
  Field source = field("sources", Field::Type::ref, false, "");
  source.refers_to = {"source"};
  Field caution = field("cautions", Field::Type::word, false, "");
  for (const auto& [name, unused] : schema.cautions) caution.choices.push_back(name);
  return {field("kind", Field::Type::text, true, "one of the kinds in schema/kinds"),
          field("title", Field::Type::text, true, "what the page is headed with"),
          field("tags", Field::Type::words, false, "words to find it by"),
          list_of(std::move(source), "notes on what the values are taken from"),
          list_of(std::move(caution), "hazards beyond those that its class and places bring"),
          accepts()};
}

} // namespace benchlore
