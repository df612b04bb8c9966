#pragma once

#include <algorithm>
#include <functional>
#include <string>
#include <variant>
#include <vector>

#include "compose/book_walk.h"
#include "compose/real_book.h"
#include "model/drawing.h"
#include "support/catch.h"

namespace benchleaf::test {

struct Box {
  double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;
  double width() const { return right - left; }
  double height() const { return bottom - top; }
};

/// Round the points that the pen comes to; shapes here have the ends of their curves on their box.
inline Box box_of(const model::PathShape& shape) {
  Box box;
  for (const auto& step : shape.steps) {
    if (step.op == model::PathStep::Op::close) continue;
    box.left = std::min(box.left, step.to.x), box.right = std::max(box.right, step.to.x);
    box.top = std::min(box.top, step.to.y), box.bottom = std::max(box.bottom, step.to.y);
  }
  return box;
}

inline std::vector<Box> boxes_of(const model::Drawing& drawing, const std::function<bool(const model::PathShape&)>& wanted) {
  std::vector<Box> boxes;
  for (const model::Shape& shape : drawing.shapes) {
    const auto* path = std::get_if<model::PathShape>(&shape);
    if (path != nullptr && wanted(*path)) boxes.push_back(box_of(*path));
  }
  return boxes;
}

inline std::vector<const model::TextShape*> words_of(const model::Drawing& drawing) {
  std::vector<const model::TextShape*> words;
  for (const model::Shape& shape : drawing.shapes) {
    if (const auto* text = std::get_if<model::TextShape>(&shape)) words.push_back(text);
  }
  return words;
}

/// The drawings of the table of this name in the handbook.
inline std::vector<const model::Drawing*> drawings_of(const std::string& table_name) {
  std::vector<const model::Drawing*> found;
  BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    const auto* table = std::get_if<model::Table>(&block.what);
    if (table == nullptr || table->name != table_name) return;
    CHECK_FALSE(table->caption.empty());
    for (const auto& row : table->rows) {
      for (const auto& cell : row.cells) {
        if (cell.drawing) found.push_back(cell.drawing.get());
      }
    }
  };
  walk.walk(real_book().book);
  return found;
}

}  // namespace benchleaf::test
