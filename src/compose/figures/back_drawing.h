#pragma once

#include <memory>
#include <string>

#include "model/drawing.h"
#include "model/fact.h"

namespace benchleaf::compose {

/// A way into a case, as records have it.
struct BackPlace {
  std::string back;                      ///< snap, screwed, four-screws, none
  std::string tool;                      ///< what the tool is called
  std::string place;                     ///< the word for where it goes in: lip, notch; or empty
  const model::Fact* deepest = nullptr;  ///< how deep a blade may go in, where it goes into the seam
  const model::Fact* section = nullptr;  ///< thickness of the round gasket under the back, or not known
};

/// How many times their size the depth of the blade and the gasket are drawn.
inline constexpr double kBackScale = 5;

/// The back from above with the tool in its place, and beside it the rim in section: seam, gasket, tool. Tools are in the
/// accent. Millimetres; all but the depth of the blade and the gasket is drawn to no scale. Nothing for a back that is none
/// of the four, or without the facts it needs.
std::shared_ptr<const model::Drawing> back_drawing(const BackPlace& place);
/// The same for a narrow column: the section under the plan, a fifth larger, its words no smaller than 9.5 points.
std::shared_ptr<const model::Drawing> narrow_back_drawing(const BackPlace& place);

}  // namespace benchleaf::compose
