#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "model/book.h"
#include "page/display.h"
#include "page/look.h"
#include "page/paper.h"
#include "page/strip.h"
#include "page/text/paragraph.h"
#include "report/finding.h"

namespace benchleaf::page {

/// A line of the contents and a bookmark: 1 a chapter, 2 a section or a titled entry.
struct OutlineLine {
  int level = 1;
  std::string title;
  std::string anchor;
  int number = 0;  ///< of a chapter
  model::BookPart part = model::BookPart::a;
};

/// What every setter of a run shares: the text engine, the structure under construction, and what is known of the book.
struct Setting {
  TextSetter& text;
  report::Findings& findings;
  const Paper& paper;
  std::vector<Tag>& tags;
  std::set<std::string> anchors;      ///< every place a link may lead to
  std::string widest_number = "888";  ///< no page number of the book is wider

  std::vector<OutlineLine> outline;
  std::set<std::string> linked = {};  ///< places that the entry or section has led to: once is enough

  double scale = 1;               ///< how much larger than in the book a chart sets words and what goes with them
  double least_pt = 0;            ///< words that grow with the chart are set no smaller: what is read at arm's length
  bool dense = false;             ///< a sheet of the bench: messages and steps set closer than in the book
  Length row_gap = from_mm(1.2);  ///< between two rows of a table, the rule in its middle
  Length row_air = 0;             ///< put into every row of a table or matrix, on a sheet that has room to spare
  Look sized(Look look) const;
  Length mm(double length) const { return from_mm(length * scale); }

  /// A fresh destination name for a section that nobody named.
  std::string section_anchor() { return "section/" + std::to_string(++sections_); }

  TagId add_tag(Role role, TagId parent);
  TagId add_figure(TagId parent, std::string alt);
  /// A heading of this depth in its chapter, 1 to 4.
  TagId add_heading(int level, TagId parent);

  /// A fresh number for strips that must not be parted by a page turn.
  int next_spread() { return ++spreads_; }

  int sections_ = 0;
  int spreads_ = 0;
};

/// Where blocks go: into a galley, at a width, under a structure element, below a heading level.
struct Target {
  Galley& galley;
  Length width = 0;
  TagId parent = 0;
  int heading_level = 1;    ///< of the heading that stands above; an entry is one deeper
  int least_level = 2;      ///< no heading here is higher
  bool beside_key = false;  ///< a narrow column: prose ragged, heads small
  Look prose;
  TagId steps = kLayoutArtifact;  ///< the list that the next step goes on with
};

}  // namespace benchleaf::page
