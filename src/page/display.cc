// Out: the one conversion between millimetres and the lengths of the display list; what few structure elements have.
#include "page/display.h"

#include <cmath>

namespace benchleaf::page {

Length from_mm(double mm) { return std::llround(mm * 72000.0 / 25.4); }

Tag::Tag(const Tag& other)
    : role(other.role),
      scope(other.scope),
      parent(other.parent),
      more_(other.more_ ? std::make_unique<TagMore>(*other.more_) : nullptr) {}

Tag& Tag::operator=(const Tag& other) { return *this = Tag(other); }

const TagMore& Tag::more() const {
  static const TagMore none;
  return more_ ? *more_ : none;
}

TagMore& Tag::set() {
  if (!more_) more_ = std::make_unique<TagMore>();
  return *more_;
}

}  // namespace benchleaf::page
