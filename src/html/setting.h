#pragma once

#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "html/plan.h"
#include "model/fact.h"

namespace benchleaf::html {

/// What is known while one page is set: where it stands, and what its content has used so far.
struct Setting {
  Setting(const Plan& whole, const Page& own) : plan(whole), page(own) {}

  const Plan& plan;
  const Page& page;
  int level = 1;             ///< of the last heading; the next one is at most one deeper
  int raised = 0;            ///< how much higher headings stand on this page than in the book
  std::string last_heading;  ///< plain words, the name of a table that has no caption
  /// A heading of the page, for its own contents.
  struct Part {
    int level;
    Id id;
    std::string title;
  };
  std::vector<Part> parts;                        ///< so far
  int tables = 0;                                 ///< set so far, numbers their captions
  std::set<std::pair<model::Trust, bool>> signs;  ///< trust signs on the page, with and without the bar
  std::set<model::Verdict> verdicts;              ///< verdict marks on the page
  bool leaflet = false;                           ///< a sheet to send on, without scripts
  bool alert = false;                             ///< an alert triangle is on the page
  std::set<std::string> named;                    ///< anchors that have got their name
  std::set<std::string> dead;                     ///< targets that the book lacks
};

/// The name for an anchor that lies on this page, once; none for the second bearer or one that lies elsewhere.
std::optional<Id> claim_name(const std::string& anchor, Setting& setting);

/// The address of a target as seen from this page; none, and noted as dead, when the book lacks it.
std::optional<Url> address_of(const std::string& target, Setting& setting);
/// The address of a page as seen from this one.
Url address_of(const Page& page, const Setting& setting);

}  // namespace benchleaf::html
