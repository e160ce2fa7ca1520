// The steps of a build: start reading here.
//
//   schema + files → notes → shop → verdicts → findings → site, index, catalogue
#pragma once

#include "base/files.h"
#include "link/shop.h"
#include "substitute/judged.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace benchlore {

// A shop with everything that is known of it. It is not moved: the parts point into one another.
struct Compiled {
  Sources sources;
  Report report;
  Schema schema;
  Shop shop;
  JudgedShop judged;
  Compiled() = default;
  Compiled(const Compiled&) = delete;
  Compiled& operator=(const Compiled&) = delete;
};

struct CompileInput {
  std::string content; // folder of the notes
  std::string schema;  // folder of the schema
};

struct Failure {
  std::string message;               // what was not done, and what to do
  std::unique_ptr<Compiled> partial; // for the messages of a bad schema
};

// Reads, links and judges. Nothing when the content folder is missing or the schema is wrong; `failure` says why.
std::unique_ptr<Compiled> compile(const CompileInput& input, Failure& failure);

struct BuildInput {
  std::string site;    // folder of templates, styles and scripts
  std::string schema;  // folder of the schema, for catalogue.sql
  std::string content; // for pictures
  std::string output;  // folder to publish into
};

using Progress = std::function<void(std::string_view step, std::size_t done, std::size_t total)>;

// Writes site, index and catalogue into a folder beside the output and puts it in place. False with a sentence when
// anything failed; the old output is untouched then.
bool publish(const Compiled& compiled, const BuildInput& input, const Progress& progress, std::string& error);

} // namespace benchlore
