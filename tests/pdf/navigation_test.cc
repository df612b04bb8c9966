// Expected: the pages, names and places that the trial was made of. Readers: qpdf and poppler.
#include <nlohmann/json.hpp>

#include <string>
#include <vector>

#include "support/catch.h"
#include "trial.h"

namespace benchleaf::pdf {

namespace {

using Json = nlohmann::json;

bool contains(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

Json json_of(const std::string& path) { return Json::parse(run("qpdf --json=2 " + path).text); }

/// The value of an object of the file, by its reference.
const Json& value_of(const Json& file, const std::string& reference) {
  return file.at("qpdf").at(1).at("obj:" + reference).at("value");
}

std::string page_reference(const Json& file, std::size_t page) { return file.at("pages").at(page).at("object"); }

/// The links of a page: `target name: page reference`, looked up in the tree of names.
std::vector<std::string> targets_of(const Json& file, const Json& catalog, std::size_t page) {
  const Json& names = value_of(file, catalog.at("/Names").at("/Dests")).at("/Names");
  std::vector<std::string> targets;
  for (const Json& annotation : value_of(file, page_reference(file, page)).value("/Annots", Json::array())) {
    const Json& link = value_of(file, annotation);
    for (std::size_t i = 0; i + 1 < names.size(); i += 2) {
      if (names.at(i) == link.at("/Dest"))
        targets.push_back(link.at("/Dest").get<std::string>() + ": " + names.at(i + 1).at(0).get<std::string>());
    }
  }
  return targets;
}

}  // namespace

TEST_CASE("links lead to their pages", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const Json json = json_of(file.path());
  const Json& catalog = value_of(json, json.at("qpdf").at(1).at("trailer").at("value").at("/Root"));
  CHECK(targets_of(json, catalog, 1) == std::vector<std::string>{"u:chapter/signs: " + page_reference(json, 2)});
  CHECK(targets_of(json, catalog, 2) == std::vector<std::string>{"u:table/sizes: " + page_reference(json, 3)});
}

TEST_CASE("named destinations can be told to any reader", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const std::string places = run("pdfinfo -dests " + file.path()).text;
  INFO(places);
  CHECK(contains(places, "3 [ XYZ   60  772 null      ] \"chapter/signs\""));  // 841.89 - 70
  CHECK(contains(places, "4 [ XYZ   60  762 null      ] \"table/sizes\""));
}

TEST_CASE("bookmarks nest and keep their words", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const Json outlines = json_of(file.path()).at("outlines");
  REQUIRE(outlines.size() == 2);
  CHECK(outlines.at(0).at("title") == "Signs & spaces – µ");
  CHECK(outlines.at(0).at("destpageposfrom1") == 3);
  REQUIRE(outlines.at(0).at("kids").size() == 1);
  CHECK(outlines.at(0).at("kids").at(0).at("title") == "Sizes");
  CHECK(outlines.at(0).at("kids").at(0).at("destpageposfrom1") == 4);
  CHECK(outlines.at(1).at("title") == "Sizes again");
}

TEST_CASE("a bookmark two levels down stands one level down", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial = make_trial(fonts);
  trial.document.bookmarks = {{1, "a", "table/sizes"}, {3, "b", "table/sizes"}, {2, "c", "table/sizes"}};
  const TrialFile file(written(trial.document, fonts));
  const Json outlines = json_of(file.path()).at("outlines");
  REQUIRE(outlines.size() == 1);
  CHECK(outlines.at(0).at("kids").at(0).at("title") == "b");
  CHECK(outlines.at(0).at("kids").at(1).at("title") == "c");
}

TEST_CASE("pages carry the labels that are printed on them", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  const TrialFile file(written(make_trial(fonts).document, fonts));
  const Json labels = json_of(file.path()).at("pagelabels");
  REQUIRE(labels.size() == 2);
  CHECK(labels.at(0).at("index") == 0);
  CHECK(labels.at(0).at("label").at("/S") == "/r");
  CHECK(labels.at(1).at("index") == 2);
  CHECK(labels.at(1).at("label").at("/S") == "/D");
}

TEST_CASE("many destinations share a tree with leaves", "[pdf][tools]") {
  const page::FontSet fonts = open_test_fonts();
  Composer trial = make_trial(fonts);
  for (int i = 0; i < 1000; ++i) trial.document.destinations["cell/" + std::to_string(i)] = {i % 4, 0, 0};
  const TrialFile file(written(trial.document, fonts));
  CHECK(run("qpdf --check " + file.path()).code == 0);
  const std::vector<std::string> places = lines_from("pdfinfo -dests " + file.path());
  CHECK(places.size() == 1 + 1002);
  const Json outlines = json_of(file.path()).at("outlines");
  CHECK(outlines.at(0).at("destpageposfrom1") == 3);
}

}  // namespace benchleaf::pdf
