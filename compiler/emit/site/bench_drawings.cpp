// Drawings of a supply and of a rescue, as SVG without styles of its own.
#include "emit/site/bench_parts.h"

#include <algorithm>

namespace benchlore {
namespace {

constexpr double width = 640, left = 70, right = 90, pitch = 44;

Html number(double value) { return text(show_number(value, dimension::none, 5)); }

Html rect(const char* style, double x, double y, double w, double h) {
  Html out{"<rect class=\""};
  out << text(style) << "\" x=\"" << number(x) << "\" y=\"" << number(y) << "\" width=\"" << number(std::max(0.0, w))
      << "\" height=\"" << number(h) << "\"/>";
  return out;
}

Html line(const char* style, double x, double y1, double y2) {
  Html out{"<line class=\""};
  out << text(style) << "\" x1=\"" << number(x) << "\" x2=\"" << number(x) << "\" y1=\"" << number(y1) << "\" y2=\""
      << number(y2) << "\"/>";
  return out;
}

Html label(double x, double y, const std::string& words, const char* anchor) {
  Html out{"<text x=\""};
  out << number(x) << "\" y=\"" << number(y) << "\" text-anchor=\"" << text(anchor) << "\">" << text(words)
      << "</text>";
  return out;
}

// Each module of a rail beside the one before it, then what starting adds, with the rating and the peak across.
Html rail_row(const RailBudget& rail, double y) {
  const double most =
      std::max({rail.starting, rail.running, rail.rated.value_or(0), rail.peak.value_or(0), 1e-6}) * 1.05;
  const double scale = (width - left - right) / most;
  Html out = label(left - 8, y + 19, rail.rail, "end");
  double x = left;
  std::size_t module = 0;
  for (const ModuleLoad& load : rail.loads) {
    out << rect(module++ % 2 == 0 ? "load" : "load other", x, y, load.running * scale, 26);
    x += load.running * scale;
  }
  out << rect("start", x, y + 4, (rail.starting - rail.running) * scale, 18);
  if (rail.rated) out << line("rated", left + *rail.rated * scale, y - 5, y + 31);
  if (rail.peak && rail.peak != rail.rated) out << line("peak", left + *rail.peak * scale, y - 5, y + 31);
  return out << label(width - right + 8, y + 19, show_number(rail.running, dimension::current), "start");
}

const char* style_of(RescueState state) {
  switch (state) {
  case RescueState::read:
    return "read";
  case RescueState::unreadable:
    return "unreadable";
  case RescueState::untried:
    return "untried";
  }
  return "untried";
}

} // namespace

Html supply_chart(const Budget& budget) {
  const double height = pitch * static_cast<double>(budget.rails.size()) + 14;
  Html out{"<figure class=\"supply\"><svg viewBox=\"0 0 640 "};
  out << number(height)
      << "\" role=\"img\" aria-label=\"Current on each rail against its rating; the numbers stand in the table "
         "below\">\n";
  double y = 10;
  for (const RailBudget& rail : budget.rails) {
    out << rail_row(rail, y) << "\n";
    y += pitch;
  }
  return out << "</svg><figcaption>Filled: running, module by module. Outlined: added while all start at once. Solid "
                "line: rating; broken line: peak.</figcaption></figure>\n";
}

Html rescue_strip(const Rescue& rescue) {
  Html out{
      "<figure class=\"rescue\"><svg viewBox=\"0 0 640 40\" role=\"img\" aria-label=\"The medium from its first to its "
      "last sector: read, unreadable and not yet tried\">\n"};
  out << rect("untried", 0, 4, width, 32);
  const double total = static_cast<double>(std::max<std::int64_t>(rescue.total, 1));
  for (const RescueRange& range : rescue.ranges) {
    const double begin = std::min(1.0, static_cast<double>(range.begin) / total);
    const double end = std::min(1.0, static_cast<double>(range.end) / total);
    // A single bad sector would be too thin to see.
    const double least = range.state == RescueState::unreadable ? 2.0 : 0.0;
    out << rect(style_of(range.state), begin * width, 4, std::max(least, (end - begin) * width), 32);
  }
  return out
         << "</svg><figcaption>Filled: read. Hatched edge: unreadable. Empty: not yet tried.</figcaption></figure>\n";
}

} // namespace benchlore
