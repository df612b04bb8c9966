#pragma once

#include <string>
#include <vector>

#include "model/book.h"

namespace benchleaf::model {

/// Blocks side by side; each column flows by itself, and what is behind stands below the highest of them.
struct LeafletRow {
  struct Column {
    double share = 1;  ///< of the width, against the other columns
    Blocks blocks;
  };
  std::vector<Column> columns;
  bool whole = true;       ///< not parted over pages
  bool cut_above = false;  ///< a line of dashes to cut along
};

/// A sheet that is read by itself. It begins on a page of its own unless it fits under the one before.
struct LeafletSheet {
  std::string anchor;       ///< `sheet/change-the-cell`: what page numbers lead to
  std::string key;          ///< largest in its head: the number of the ticket, or that of the job
  std::string title;        ///< beside the key
  std::string subtitle;     ///< under the title
  std::vector<Runs> right;  ///< lines at the right of the head: blanks to fill in
  std::vector<LeafletRow> rows;
  bool may_share = false;  ///< may stand under the sheet before it
};

/// A few pages of their own, device-neutral: no cover, no contents, no index. Page numbers lead to its own sheets alone.
struct Leaflet {
  std::string id;        ///< of the record: `quillfen-d-001`
  std::string title;     ///< `Ticket D-001`
  std::string subtitle;  ///< what it is about
  std::string imprint;   ///< `Benchleaf, edition 1, November 2026`
  std::string standing_line;
  std::string language = "en-GB";
  std::string iso_date;
  std::vector<LeafletSheet> sheets;
};

/// All blocks in reading order, the head of each sheet as a heading.
Blocks blocks_of(const Leaflet& leaflet);

}  // namespace benchleaf::model
