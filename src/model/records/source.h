#pragma once

#include <string>
#include <vector>

#include "model/record.h"

namespace benchleaf::model {

/// A work that values come from: what it is, and what of it was read.
struct Source : Record {
  std::optional<Work> work;  ///< `kind`
  std::string publication;
  std::string publisher;
  std::string edition;
  std::string year;
  std::string licence;
  std::string address;
  std::string read;
  std::string date_read;
  std::vector<std::string> covers;
};

}  // namespace benchleaf::model
