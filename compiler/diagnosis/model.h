// What a shop's notes say about one machine's faults, as a model: causes with priors, how often each shows a symptom,
// and checks that tell them apart.
#pragma once

#include "link/shop.h"

#include <string>
#include <vector>

namespace benchlore {

// The constants of the model; they stand on every answer.
inline constexpr double prior_strength = 4;     // the words weigh as much as so many jobs
inline constexpr double leak_weight = 0.07;     // of "something not in these notes", beside the words of the faults
inline constexpr double inherited_weight = 0.1; // of a failure mode of a fitted part, beside a fault note's word
inline constexpr double false_alarm = 0.02;     // of a symptom that a cause does not list
inline constexpr double leak_symptom = 0.1;     // of any symptom under the leak
inline constexpr double check_right = 0.95;     // of a check under its own fault, and of the other outcome elsewhere
inline constexpr double leak_check = 0.5;

struct CauseModel {
  std::string id; // of the fault note, `component: mode` of an inherited one, empty for the leak
  std::string title;
  NoteId note;       // fault or component; unknown for the leak
  std::string word;  // likelihood as the note says it
  double weight = 0; // before normalizing
  int jobs = 0;      // finished jobs of this machine in which it was found
  double prior = 0;
  std::map<std::string, double, std::less<>> symptoms; // id to probability
};

struct CheckModel {
  std::string id; // `fault-id/1`
  std::string text, good, bad;
  std::vector<std::size_t> causes; // whose check it is
  double minutes = 15;             // when the note does not say
  std::string risk;                // none, low, mains, eht, charged
  bool power = false;
};

struct DiagnosisModel {
  NoteId equipment;
  std::vector<CauseModel> causes; // the leak is the last one
  std::vector<CheckModel> checks;
};

DiagnosisModel diagnosis_model(const Shop& shop, NoteId equipment);

} // namespace benchlore
