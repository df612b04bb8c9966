// Out: the one conversion between millimetres and the lengths of the display list.
#include "page/display.h"

#include <cmath>

namespace benchleaf::page {

Length from_mm(double mm) { return std::llround(mm * 72000.0 / 25.4); }

}  // namespace benchleaf::page
