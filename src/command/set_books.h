#pragma once

#include <map>
#include <string>
#include <vector>

#include "command/options.h"
#include "command/setting.h"
#include "compose/charts/chart_pages.h"
#include "model/book.h"
#include "page/display.h"
#include "report/finding.h"

namespace benchleaf::command {

/// A book on one paper, and on which page of it each record stands.
struct SetBook {
  std::string paper;
  bool wanted = false;  ///< or set only for the charts, which name its pages
  page::Document document;
  std::map<std::string, std::string> pages;
  report::Findings findings;
};

/// Whether a run is to write anything on that paper.
bool is_wanted_on(const BindOptions& options, const std::string& paper);

/// Every book that is wanted, or whose pages the charts name, set on two threads; of `records` it keeps the pages.
std::vector<SetBook> set_books(const BindOptions& options, const std::vector<std::string>& book_papers, const model::Book& book,
                               const TypeCase& type, const std::vector<std::string>& records);

/// The pages that charts on a paper name; valid as long as the books.
compose::PageOf pages_for(const std::string& paper, const std::vector<SetBook>& books);

/// The handbook whose pages the charts on a paper name: `handbook on A4`.
std::string named_book(const std::string& paper);

}  // namespace benchleaf::command
