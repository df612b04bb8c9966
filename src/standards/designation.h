#pragma once

#include <string>
#include <string_view>
#include <variant>

namespace benchleaf::standards {

/// A round cell's designation taken apart into the parts its grammar names: `[cells in series] SYSTEM R SIZE [suffix]`.
struct Designation {
  int in_series = 1;
  std::string system;  ///< system letter: `S`
  std::string size;    ///< digits: `754`, or a short size `48`
  std::string suffix;  ///< `SW`, or empty

  /// Two digits of size are one of the short forms kept from before 1990.
  bool short_form() const { return size.size() == 2; }
  /// The designation with no suffix and another size: `SR48` for `SR754W`.
  std::string with_size(std::string_view other) const;
  /// As it is written on paper, capitals and no spaces.
  std::string text() const;
};

/// Why a text is no designation. `position` counts code points from 0 in the text as given.
struct DesignationError {
  int position = 0;
  std::string reason;
  std::string hint;
};

/// Takes a designation apart. Small letters and spaces between the parts are accepted; whether the system and the size exist
/// is for the tables to say.
std::variant<Designation, DesignationError> parse_designation(std::string_view text);

}  // namespace benchleaf::standards
