// The families of codes, one file each. Every function adds to `out` what a text can mean by its code, and nothing when
// it is no such code.
#pragma once

#include "decode/draft.h"

namespace benchlore {

// Values without tolerance or voltage.
void read_letter_code(std::string_view text, Drafts& out); // `4k7`, `R47`, `n47`, `4R7`, `2L2`: IEC 60062
void read_digit_code(std::string_view text, Drafts& out);  // `104`, `4702`: figures and a power of ten
void read_bare_number(std::string_view text, Drafts& out); // `.1`, `220`, `4700`: printed plainly, without a unit
void read_eia96(std::string_view text, Drafts& out);       // `01C`: EIA-96
void read_plain_value(std::string_view text, Drafts& out); // `100uF`, `16V`, `12MHz`, `.01MFD`
// The first three together.
Drafts value_readings(std::string_view text);

// Ratings of their own.
void read_voltage_code(std::string_view text, Drafts& out);   // `2A`: EIA code of a rated d.c. voltage
void read_chip_voltage(std::string_view text, Drafts& out);   // `E`: one letter on a tantalum chip
void read_tolerance_code(std::string_view text, Drafts& out); // `K`
void read_taper(std::string_view text, Drafts& out);          // `B`: of a potentiometer
void read_dielectric(std::string_view text, Drafts& out);     // `X7R`, `U2J`, `NP0`, `N750`
void read_date_code(std::string_view text, Drafts& out);      // `8632`, `K7`
void read_geometry(std::string_view text, Drafts& out);       // `615/4/17`

// Values with what stands around them.
void read_affixed(std::string_view text, Drafts& out); // `104K`, `2A474J`, `.1K63`, `106C`, `B10K`

// The d.c. voltage that a letter on a tantalum chip means; nothing when none.
std::optional<Decimal> chip_voltage(char letter);
// The voltage that a digit and a letter mean.
struct CodedVoltage {
  std::optional<Decimal> volts; // nothing where sources disagree
  std::string disagreement;
};
std::optional<CodedVoltage> coded_voltage(std::string_view text);
// What a taper letter is said to mean; empty when nothing.
std::string taper_of(char letter);
// Adds the meaning of a tolerance letter; false when it is no tolerance letter, or none of such a part.
bool add_tolerance(Draft& draft, char letter);
// A d.c. or a.c. voltage that parts are usually rated for.
bool usual_voltage(Decimal volts);
// Adds the rated voltage of a capacitor, and weighs whether such a capacitor is made.
void add_rated_voltage(Draft& capacitor, Decimal volts);

// Names of colours in reading order, `dot` where one of them was called a dot.
struct ColourWords {
  std::vector<std::string_view> names; // the canonical spelling
  bool dot = false;
};
std::optional<ColourWords> colour_words(std::string_view text); // nothing when any word is no colour
void read_colour_bands(const ColourWords& words, Drafts& out);
void read_tantalum_colours(const ColourWords& words, Drafts& out);
void read_single_colour(const ColourWords& words, Drafts& out);

} // namespace benchlore
