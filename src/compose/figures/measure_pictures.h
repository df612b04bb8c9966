#pragma once

#include <memory>
#include <string_view>

#include "model/drawing.h"

namespace benchleaf::compose {

// Small pictures of what is measured on a watch, drawn by us in section. No measures are read off them.

/// Callipers on the boss that a gasket is drawn over.
std::shared_ptr<const model::Drawing> seat_picture();
/// A groove with its depth and its width.
std::shared_ptr<const model::Drawing> groove_picture();
/// A crystal seen from above with its width, and from the side with its thickness.
std::shared_ptr<const model::Drawing> crystal_picture();
/// A nail drawn across a scratch.
std::shared_ptr<const model::Drawing> scratch_picture();
/// The width between the lugs.
std::shared_ptr<const model::Drawing> lugs_picture();
/// A cell with its width and its height.
std::shared_ptr<const model::Drawing> cell_picture();
/// The bore that a gasket is pressed into, in section.
std::shared_ptr<const model::Drawing> bore_picture();
/// The groove in a face, in section, with the diameter of its outer wall.
std::shared_ptr<const model::Drawing> face_picture();
/// A gasket from above with the measure of its inside or of its outside.
std::shared_ptr<const model::Drawing> gasket_inside_picture();
std::shared_ptr<const model::Drawing> gasket_outside_picture();
/// A gasket from above with inside i and outside o, and cut through with its section c.
std::shared_ptr<const model::Drawing> gasket_measures();
/// A round gasket cut through, with the measure of its section.
std::shared_ptr<const model::Drawing> section_picture();

/// The picture of an input of a calculator, or nullptr where nothing is measured with callipers.
std::shared_ptr<const model::Drawing> input_picture(std::string_view calculator, std::string_view input);

}  // namespace benchleaf::compose
