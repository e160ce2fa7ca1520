// Reads schema/ in the order in which its files build on one another, then checks names across files.
#include "schema/schema.h"

#include "base/text.h"
#include "schema/reading.h"

#include <algorithm>

namespace benchlore {
namespace {

std::optional<Node> open_file(SchemaReading& reading, const Files& files, const std::string& path, Sources& sources) {
  const auto bytes = files.read(path);
  if (!bytes) {
    reading.report.add(MessageKind::schema_error, {}, "`" + path + "` cannot be read",
                       "put the file back, or name another schema folder");
    reading.sound = false;
    return std::nullopt;
  }
  const FileId file = sources.add(path, *bytes);
  Report syntax;
  const auto node =
      read_record(sources, {file, 0, static_cast<std::uint32_t>(bytes->size())}, syntax, {.bytes = 256 * 1024});
  for (const Message& message : syntax.messages()) reading.fault(message.span, message.text, message.way_out);
  return node;
}

using Reader = void (*)(SchemaReading&, const Node&);

struct ListFile {
  std::string_view name;
  Reader reader;
  bool optional = false;
};

bool in_folder(std::string_view path, std::string_view folder) {
  return path.substr(0, folder.size()) == folder && path.ends_with(".yaml");
}

// Reads one file of each folder that has it; the project's own must be there unless it is optional.
void read_list(SchemaReading& reading, const std::vector<SchemaFolder>& folders, ListFile list, Sources& sources) {
  for (const SchemaFolder& place : folders) {
    reading.shop = &place != &folders.front();
    const std::string path = place.folder + std::string(list.name);
    if ((reading.shop || list.optional) && !place.files.is_file(path)) continue;
    if (const auto node = open_file(reading, place.files, path, sources)) list.reader(reading, *node);
  }
}

void read_folder(SchemaReading& reading, const std::vector<SchemaFolder>& folders, std::string_view name, Reader reader,
                 Sources& sources) {
  for (const SchemaFolder& place : folders) {
    reading.shop = &place != &folders.front();
    std::size_t count = 0;
    const std::string folder = place.folder + std::string(name);
    for (const std::string& path : place.files.list(folder)) {
      if (!in_folder(path, folder)) continue;
      ++count;
      if (const auto node = open_file(reading, place.files, path, sources)) reader(reading, *node);
    }
    if (count > 0 || reading.shop) continue;
    reading.report.add(MessageKind::schema_error, {}, "`" + folder + "` holds no files",
                       "name the folder that holds the schema");
    reading.sound = false;
  }
}

} // namespace

const Kind* Schema::find_kind(std::string_view name) const {
  const auto found = kinds.find(name);
  return found == kinds.end() ? nullptr : &found->second;
}

const ComponentClass* Schema::find_class(std::string_view name) const {
  const auto found = classes.find(name);
  return found == classes.end() ? nullptr : &found->second;
}

const Rule* Schema::find_rule(std::string_view name) const {
  for (const Rule& rule : rules) {
    if (rule.name == name) return &rule;
  }
  return nullptr;
}

bool Schema::is_a(std::string_view name, std::string_view ancestor) const {
  for (int depth = 0; depth < 16 && !name.empty(); ++depth) {
    if (name == ancestor) return true;
    const ComponentClass* made = find_class(name);
    if (made == nullptr) return false;
    name = made->extends;
  }
  return false;
}

const Field* Kind::field(std::string_view field_name) const {
  for (const Field& field : fields) {
    if (field.name == field_name) return &field;
  }
  return nullptr;
}

namespace {

// Each class is spoken of by the rules that name it or a class that it descends from.
void index_rules(Schema& schema) {
  std::map<std::string_view, std::vector<std::size_t>> named;
  for (std::size_t place = 0; place < schema.rules.size(); ++place) {
    for (const std::string& name : schema.rules[place].from) named[name].push_back(place);
  }
  for (const auto& [name, unused] : schema.classes) {
    std::vector<std::size_t>& places = schema.rules_from[name];
    const ComponentClass* made = schema.find_class(name);
    for (int depth = 0; depth < 16 && made != nullptr; ++depth) {
      const auto found = named.find(made->name);
      if (found != named.end()) places.insert(places.end(), found->second.begin(), found->second.end());
      made = schema.find_class(made->extends);
    }
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
  }
}

} // namespace

std::optional<Schema> read_schema(const std::vector<SchemaFolder>& folders, Sources& sources, Report& report) {
  Schema schema;
  SchemaReading reading{sources, report, schema};
  for (ListFile list : {ListFile{"sources.yaml", read_sources}, ListFile{"roles.yaml", read_roles},
                        ListFile{"likelihood.yaml", read_likelihood}, ListFile{"stresses.yaml", read_stresses}}) {
    read_list(reading, folders, list, sources);
  }
  read_folder(reading, folders, "classes", read_classes, sources);
  read_list(reading, folders, {"cautions.yaml", read_cautions}, sources);
  finish_classes(reading);
  read_list(reading, folders, {"logic-families.yaml", read_families, true}, sources);
  read_list(reading, folders, {"drive-types.yaml", read_drive_types, true}, sources);
  read_list(reading, folders, {"combinations.yaml", read_combinations, true}, sources);
  read_list(reading, folders, {"synonyms.yaml", read_synonyms}, sources);
  read_folder(reading, folders, "rules", read_rules, sources);
  check_rules(reading);
  read_folder(reading, folders, "kinds", read_kind, sources);
  if (!reading.sound) return std::nullopt;
  index_rules(schema);
  return schema;
}

} // namespace benchlore
