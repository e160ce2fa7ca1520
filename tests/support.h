// What several test programs share: the project's own schema, read once.
#pragma once

#include "base/files.h"
#include "schema/part.h"

#include <doctest/doctest.h>
#include <memory>
#include <string>

namespace benchlore::test {

struct ReadSchema {
  Sources sources;
  Report report;
  std::optional<Schema> schema;
};

// The project's schema; the test fails with its messages when it cannot be read.
inline const Schema& project_schema() {
  static const std::unique_ptr<ReadSchema> read = [] {
    auto made = std::make_unique<ReadSchema>();
    const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/schema");
    made->schema = read_schema({{*files, ""}}, made->sources, made->report);
    return made;
  }();
  for (const Message& message : read->report.messages()) {
    const Place place = read->sources.place(message.span);
    FAIL_CHECK(place.path << ":" << place.line << ": " << message.text << " " << message.way_out);
  }
  REQUIRE(read->schema.has_value());
  return *read->schema;
}

} // namespace benchlore::test
