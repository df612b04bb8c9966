// In: a display list whose parts fit together, and a colour profile. Out: findings wherever a file made of them would not be
// what its metadata say. What the writer sees to by itself is not asked here.
#include "pdf/claims.h"

#include <cstddef>
#include <set>
#include <string>
#include <vector>

#include "page/packed.h"
#include "pdf/links.h"
#include "pdf/metadata.h"

namespace benchleaf::pdf {

namespace {

using report::Rule;

class ClaimCheck {
 public:
  ClaimCheck(const page::Document& document, report::Findings& findings) : document_(document), findings_(findings) {
    for (const page::Tag& tag : document.tags) {
      const std::string& name = tag.more().id;
      if (!name.empty() && !names_.insert(name).second) add(Rule::pdf_header_scope, "two elements have the name " + name);
    }
  }

  void check_head() {
    if (document_.title.empty()) add(Rule::pdf_title, "the document has no title");
    if (document_.language.empty()) add(Rule::pdf_language, "the document has no language");
    if (!is_iso_date(document_.iso_date)) add(Rule::pdf_date, "`" + document_.iso_date + "` is no date; a date reads 2026-11-01");
  }

  void check_elements() {
    for (std::size_t i = 0; i < document_.tags.size(); ++i) check_element(document_.tags[i], i);
  }

  void check_links() {
    for (const page::Page& page : document_.pages) {
      for (const page::LinkArea& area : page.links) check_link(page, area);
    }
    for (const page::Bookmark& bookmark : document_.bookmarks) {
      if (document_.destinations.count(bookmark.target) == 0) {
        add(Rule::pdf_bookmark, "the bookmark `" + bookmark.title + "` leads to " + bookmark.target + ", which is nowhere");
      }
    }
  }

 private:
  void add(Rule rule, const std::string& message) { findings_.add(rule, {}, message); }

  std::string where(std::size_t tag) const {
    for (const page::Page& page : document_.pages) {
      bool here = false;
      page::for_each_tag(page, [&](page::TagId owner) { here = here || owner == static_cast<page::TagId>(tag); });
      if (here) return " on page " + page.label;
    }
    return " (element " + std::to_string(tag) + ")";
  }

  void check_element(const page::Tag& tag, std::size_t i) {
    if (tag.role == page::Role::figure && tag.more().alt.empty())
      add(Rule::pdf_alternative_text, "a figure without words" + where(i));
    // A head cell may say what it heads by its scope, or by a name that the cells refer to.
    const bool loose = tag.role == page::Role::header_cell && tag.scope == page::Tag::Scope::none && tag.more().id.empty();
    if (loose) add(Rule::pdf_header_scope, "a head cell of neither a row nor a column" + where(i));
    for (const std::string& header : tag.more().headers) {
      if (names_.count(header) == 0)
        add(Rule::pdf_header_scope, "a cell" + where(i) + " refers to the head " + header + ", which is not there");
    }
  }

  void check_link(const page::Page& page, const page::LinkArea& area) {
    if (!is_link(document_, area)) {
      add(Rule::pdf_link,
          "a link to " + area.target + " on page " + page.label +
              (document_.destinations.count(area.target) == 0 ? " leads nowhere" : " belongs to no link element"));
    } else if (area.words.empty()) {
      add(Rule::pdf_link, "a link to " + area.target + " on page " + page.label + " says nothing");
    }
  }

  const page::Document& document_;
  report::Findings& findings_;
  std::set<std::string> names_;
};

/// ICC.1:2001-04, 7.2: version, colour space and signature stand at bytes 8, 16 and 36. PDF 1.4 reads version 2.
bool is_usable_profile(std::string_view profile) {
  return profile.size() > 128 && profile[8] == 2 && profile.substr(16, 4) == "RGB " && profile.substr(36, 4) == "acsp";
}

}  // namespace

void check_claims(const page::Document& document, std::string_view profile, report::Findings& findings) {
  ClaimCheck check(document, findings);
  check.check_head();
  check.check_elements();
  check.check_links();
  if (!is_usable_profile(profile)) {
    findings.add(Rule::pdf_profile, {}, "the colour profile is no ICC profile of version 2 for RGB",
                 "name another in schema/fonts.yaml");
  }
}

}  // namespace benchleaf::pdf
