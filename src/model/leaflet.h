#pragma once

#include <string>
#include <vector>

#include "model/book.h"

namespace benchleaf::model {

/// A few pages of their own, device-neutral: no cover, no contents, no index. Its links lead nowhere and are set as words.
struct Leaflet {
  std::string id;        ///< of the record: `quillfen-d-001`
  std::string title;     ///< `Ticket D-001`
  std::string subtitle;  ///< what it is about
  std::string imprint;   ///< `Benchleaf, edition 1, November 2026`
  std::string standing_line;
  std::string language = "en-GB";
  std::string iso_date;
  Blocks blocks;
  std::vector<std::string> whole;  ///< anchors of headings whose section stays on one page: it is cut out, or filled in at once
};

}  // namespace benchleaf::model
