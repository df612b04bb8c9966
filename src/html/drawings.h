#pragma once

#include "html/markup.h"
#include "model/drawing.h"

namespace benchleaf::html {

/// A drawing at its size in millimetres as an inline picture with its alternative in words.
Markup picture(const model::Drawing& drawing);
/// The same for the eye alone, where words beside it say what it shows; its size is left to the style sheet.
Markup ornament(const model::Drawing& drawing, ClassName class_name);
/// The shapes as a symbol of the page, for `used_symbol`.
Markup symbol(const model::Drawing& drawing, const Id& id);
/// A use of a symbol: with a name for readers that speak, or without one as an ornament.
Markup used_symbol(const Id& id, const model::Drawing& drawing, ClassName class_name, std::string_view name);
/// A bar of 20 mm with a tick every 5, and what it is for.
Markup true_size_bar();
/// A line to write on.
Markup blank_line(double width_mm);
/// A small square to tick.
Markup tick_box();

}  // namespace benchleaf::html
