// Where each page of the site lies. Names are made of characters that every file system and address takes as they are.
#pragma once

#include "link/shop.h"

#include <optional>
#include <string>
#include <string_view>

namespace benchlore {

// A file name from any text: `a-z`, `0-9` and `-` stay, every other byte becomes `_` and two hex digits (capitals too,
// since a memory stick may not tell them apart). Different texts give different names; long ones end in a digest.
std::string safe_name(std::string_view text);

std::string page_path(const Note& note);
std::string kind_path(std::string_view kind);
std::string class_path(std::string_view class_name);
std::string rule_path(std::string_view rule); // `rules/….html`
std::string source_path(const Shop& shop,
                        std::string_view source); // of a source note or of schema/sources.yaml; may be empty

// Where a picture or file of the content folder is published; nothing for types that a browser might run.
std::optional<std::string> attachment_path(std::string_view path);
bool is_picture(std::string_view path);

} // namespace benchlore
