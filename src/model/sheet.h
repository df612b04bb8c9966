#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "model/book.h"

namespace benchleaf::model {

/// What a chart says, device-neutral: compose writes it, page sets it at the largest type that fits.

/// Verdicts of things across on things down; a cell without one has no data.
struct Matrix {
  struct Row {
    Runs head;
    std::vector<std::optional<Verdict>> cells;  ///< as many as columns
    std::string group;                          ///< its kind: rows of one kind stand together
    Runs page;                                  ///< where the book says more, at the end of the row; or empty
  };
  std::vector<Runs> columns;
  std::vector<std::string> groups;  ///< the kind of each column, named above those it has; or none at all
  std::vector<Row> rows;
  bool heads_at_both_ends = false;  ///< rows too long for the eye to keep
};

/// Small pictures side by side, each with a few words under it.
struct Pictures {
  struct Picture {
    std::shared_ptr<const Drawing> drawing;
    Runs words;
  };
  std::vector<Picture> pictures;
};

/// Messages side by side, equally high.
struct Messages {
  std::vector<Message> messages;
};

/// Lines to fill in. The width of a blank is its share of what the words of its line leave: every line runs to the edge.
struct Fields {
  std::shared_ptr<const Drawing> picture;  ///< at the left of the lines, or none
  std::vector<Runs> lines;
};

using PanelBlock = std::variant<Paragraph, Table, Matrix, Pictures, Messages, Fields>;

/// One answer of a chart under its head.
struct Panel {
  std::string title;
  Runs note;  ///< small, beside the title: units, signs
  Runs page;  ///< where the book says more, at the right of the title; or empty
  std::vector<PanelBlock> blocks;
  int keep = 1;        ///< the higher, the sooner it is dropped; 1 is never dropped
  bool spare = false;  ///< left out without a warning where there is no room
  bool wide = false;   ///< over all columns of the sheet; tables in it run on side by side
};

/// One side of a chart.
struct Sheet {
  std::string title;
  std::string subtitle;
  std::string imprint;   ///< `Benchleaf, edition 1, November 2026`
  std::string addition;  ///< `With NAME` of an overlay, at the foot; or empty
  std::vector<Panel> panels;
};

/// A chart: one or two sides on each of its papers.
struct SheetSet {
  std::string id;  ///< of the record
  std::string title;
  std::string language = "en-GB";
  std::string iso_date;
  std::vector<std::string> papers;  ///< a4, letter, a3, tabloid
  bool card = false;                ///< read in the hand: also cut to A5, its words from 9.5 points on
  bool landscape = false;
  bool runs_over = false;  ///< what has no room on its one side stands on the back
  std::vector<Sheet> sides;
};

}  // namespace benchleaf::model
