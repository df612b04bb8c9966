// In: a short text. Out: a square code of it, drawn by libqrencode's matrix with four modules of quiet around it.
#include <qrencode.h>

#include <memory>

#include "compose/charts/panels.h"

namespace benchleaf::compose {

std::shared_ptr<const model::Drawing> square_code(const std::string& text) {
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1),
                                                             &QRcode_free);
  if (!code) return nullptr;
  constexpr double kQuiet = 4;
  model::Drawing drawing;
  const int side = code->width;
  drawing.width_mm = drawing.height_mm = side + 2 * kQuiet;
  drawing.alt = text;
  for (int row = 0; row < side; ++row) {
    for (int column = 0; column < side;) {
      const auto dark = [&](int at) { return at < side && (code->data[row * side + at] & 1) != 0; };
      int end = column;
      while (dark(end)) ++end;
      if (end > column) {
        model::PathShape run = model::rectangle({kQuiet + column, kQuiet + row}, end - column, 1);
        run.fill = model::Ink::ink;
        drawing.shapes.push_back(std::move(run));
      }
      column = std::max(end, column + 1);
    }
  }
  return std::make_shared<const model::Drawing>(std::move(drawing));
}

}  // namespace benchleaf::compose
