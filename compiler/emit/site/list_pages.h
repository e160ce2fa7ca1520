// Pages that list: home, all notes, one kind, one class with its parametric table.
#pragma once

#include "emit/site/gathered.h"
#include "emit/site/page.h"

namespace benchlore {

Page home_page(const View& view, const Gathered& gathered);
Page notes_page(const View& view, const Gathered& gathered);
Page kind_page(const View& view, const Gathered& gathered, const Kind& kind);
Page class_page(const View& view, const Gathered& gathered, const ComponentClass& component_class);

// Classes that are the class or descend from it.
std::vector<const ComponentClass*> descendants(const Schema& schema, const ComponentClass& ancestor);

} // namespace benchlore
