// Expected: ISO 14289-1 (PDF/UA-1) and ISO 19005-1 (PDF/A-1); each test takes one thing away from a sound book.
#include <functional>
#include <string>
#include <vector>

#include "pdf/writer.h"
#include "support/catch.h"
#include "trial.h"

namespace benchleaf::pdf {

namespace {

using report::Rule;

/// The rules that a spoilt trial breaks, in order, and whether a file came out of it.
struct Outcome {
  std::vector<std::string> rules;
  bool written = false;
};

Outcome outcome_of(const std::function<void(Composer&)>& spoil, const std::string& profile = read_test_profile()) {
  const page::FontSet fonts = open_test_fonts();
  Composer trial = make_trial(fonts);
  spoil(trial);
  report::Findings findings;
  Outcome outcome;
  outcome.written = !write_pdf(trial.document, fonts, {profile}, findings).empty();
  for (const report::Finding& finding : findings.all()) outcome.rules.emplace_back(report::rule_info(finding.rule).id);
  return outcome;
}

page::Tag& first_tag(Composer& trial, page::Role role) {
  for (page::Tag& tag : trial.document.tags) {
    if (tag.role == role) return tag;
  }
  FAIL("the trial lacks a role");
  return trial.document.tags.front();
}

using Rules = std::vector<std::string>;

}  // namespace

TEST_CASE("a sound book gives no finding", "[pdf]") {
  const Outcome outcome = outcome_of([](Composer&) {});
  CHECK(outcome.rules.empty());
  CHECK(outcome.written);
}

TEST_CASE("what the file claims but the book lacks is found", "[pdf]") {
  CHECK(outcome_of([](Composer& trial) { trial.document.title.clear(); }).rules == Rules{"pdf.title"});
  CHECK(outcome_of([](Composer& trial) { trial.document.language.clear(); }).rules == Rules{"pdf.language"});
  CHECK(outcome_of([](Composer& trial) { trial.document.iso_date = "1 Nov 2026"; }).rules == Rules{"pdf.date"});
  CHECK(outcome_of([](Composer& trial) { first_tag(trial, page::Role::figure).set().alt.clear(); }).rules ==
        Rules{"pdf.alternative-text"});
  CHECK(outcome_of([](Composer& trial) { trial.page(1).links.at(0).words.clear(); }).rules == Rules{"pdf.link"});
  CHECK(outcome_of([](Composer& trial) { trial.page(1).links.at(0).target = "cell/nowhere"; }).rules == Rules{"pdf.link"});
  CHECK(outcome_of([](Composer& trial) { trial.page(1).links.at(0).tag = page::kPaginationArtifact; }).rules ==
        Rules{"pdf.link"});
  CHECK(outcome_of([](Composer& trial) { trial.document.bookmarks.at(0).target = "nowhere"; }).rules == Rules{"pdf.bookmark"});
}

TEST_CASE("a head cell has a scope or a name that cells refer to", "[pdf]") {
  const auto without_both = [](Composer& trial) {
    for (page::Tag& tag : trial.document.tags) {
      if (tag.role == page::Role::header_cell && tag.scope == page::Tag::Scope::row) tag.scope = page::Tag::Scope::none;
    }
  };
  CHECK(outcome_of(without_both).rules == Rules{"pdf.header-scope", "pdf.header-scope"});
  CHECK(outcome_of([](Composer& trial) { first_tag(trial, page::Role::data_cell).set().headers = {"nobody"}; }).rules ==
        Rules{"pdf.header-scope"});
  CHECK(outcome_of([](Composer& trial) { first_tag(trial, page::Role::figure).set().id = "sizes-1"; }).rules ==
        Rules{"pdf.header-scope"});
}

TEST_CASE("a profile must be one for RGB that PDF 1.4 can read", "[pdf]") {
  CHECK(outcome_of([](Composer&) {}, "").rules == Rules{"pdf.profile"});
  std::string newer = read_test_profile();
  newer.at(8) = 4;
  CHECK(outcome_of([](Composer&) {}, newer).rules == Rules{"pdf.profile"});
}

TEST_CASE("a display list that does not hang together is refused, not written", "[pdf]") {
  const std::vector<std::function<void(Composer&)>> spoils = {
      [](Composer& trial) { trial.page(0).items.at(0).tag = 100'000; },
      [](Composer& trial) { trial.page(0).items.at(0).tag = -3; },
      [](Composer& trial) { std::get<page::TextItem>(trial.page(0).items.at(1).what).font = 77; },
      [](Composer& trial) { std::get<page::TextItem>(trial.page(0).items.at(1).what).size = 0; },
      [](Composer& trial) { std::get<page::TextItem>(trial.page(0).items.at(1).what).glyphs.at(0).id = 65'535; },
      [](Composer& trial) { trial.tag(3).parent = 3; },
      [](Composer& trial) { trial.tag(3).parent = -1; },
      [](Composer& trial) { trial.document.destinations["x"].page = 9; },
      [](Composer& trial) { first_tag(trial, page::Role::figure).set().box_page = 9; },
      [](Composer& trial) { trial.page(1).links.at(0).tag = 100'000; },
      [](Composer& trial) { trial.page(1).width = 0; }};
  for (const auto& spoil : spoils) {
    const Outcome outcome = outcome_of(spoil);
    CHECK(outcome.rules == Rules{"pdf.display-list"});
    CHECK_FALSE(outcome.written);
  }
  CHECK_FALSE(outcome_of([](Composer& trial) { trial.document.tags.clear(); }).written);
  CHECK_FALSE(outcome_of([](Composer& trial) { trial.document = {}; }).written);
}

TEST_CASE("arrays longer than PDF 1.4 allows are found", "[pdf]") {
  constexpr int kAllowed = 8191;  // PDF Reference, third edition, appendix C
  const auto with_children = [](int count) {
    return [count](Composer& trial) {
      const page::TagId list = trial.add_tag(page::Role::div, 0);
      for (int i = 0; i < count; ++i) trial.add_tag(page::Role::p, list);
    };
  };
  CHECK(outcome_of(with_children(kAllowed)).rules.empty());
  CHECK(outcome_of(with_children(kAllowed + 1)).rules == Rules{"pdf.limit"});

  const auto with_pieces = [](int count) {
    return [count](Composer& trial) {
      const int page = trial.add_page("3");
      const page::TagId tags[] = {trial.add_tag(page::Role::p, 0), trial.add_tag(page::Role::p, 0)};
      for (int i = 0; i < count; ++i) trial.add_rectangle(page, tags[i % 2], {0, 0, 1'000, 1'000}, {});
    };
  };
  CHECK(outcome_of(with_pieces(kAllowed)).rules.empty());
  CHECK(outcome_of(with_pieces(kAllowed + 1)).rules == Rules{"pdf.limit"});
}

TEST_CASE("glyphs that say nonsense do no harm", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial = make_trial(fonts);
  page::TextItem& item = std::get<page::TextItem>(trial.page(0).items.at(1).what);
  item.glyphs.at(0).id = 65'000;
  item.glyphs.at(1).cluster = 4'000'000'000;
  item.glyphs.at(3).cluster = 0;
  item.glyphs.at(4).id = 60'000;
  item.quarter_turns = -1;
  const TrialFile file(written(trial.document, fonts));
  CHECK(run("qpdf --check " + file.path()).code == 0);
}

}  // namespace benchleaf::pdf
