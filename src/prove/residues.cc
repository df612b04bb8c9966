// Rules about what a leak leaves behind: it is told by the look that is described.

#include <string>

#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {

void check_residue_colours(const Proof& proof) {
  for (const auto& [id, residue] : proof.base.residues) {
    if (!residue.usable("looks")) continue;
    const std::string look = " " + plain_words(residue.looks) + " ";
    for (std::size_t i = 0; i < residue.colours.size(); ++i) {
      const std::string path = "colours." + std::to_string(i);
      if (!residue.usable(path) || look.find(" " + word_of(residue.colours[i]) + " ") != std::string::npos) continue;
      proof.findings
          .add(report::Rule::residue_colours, residue.span_of(path),
               "found " + word_of(residue.colours[i]) + ", which its look does not name",
               "say it in looks, or take the colour out")
          .notes.push_back({residue.span_of("looks"), "the look"});
    }
  }
}

}  // namespace benchleaf::prove
