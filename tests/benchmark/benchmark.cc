// benchmark [ROUNDS]: how long the program takes as ratios to named floors, all in one run on the real content. Nothing is
// asserted: machines differ, ratios less so. The floors:
//   check   yaml-cpp's parser alone over the same files, its events thrown away
//   find    the read stage alone
//   bind    libharu showing the same strings at the same places, with the same fonts embedded, no layout, no tags, compressed
// The best of the rounds counts.
#include <hpdf.h>
#include <sys/resource.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

#include "command/commands.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/book.h"
#include "compose/search.h"
#include "pdf/writer.h"

using namespace benchleaf;

namespace {

/// Seconds of the fastest of so many rounds.
double fastest(int rounds, const std::function<void()>& work) {
  double best = 1e9;
  for (int round = 0; round < rounds; ++round) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count());
  }
  return best;
}

void say(const char* what, double own, const char* floor, double floor_time) {
  std::printf("%-28s %8.1f ms, %6.2f times %s (%.1f ms)\n", what, own * 1e3, own / floor_time, floor, floor_time * 1e3);
}

/// Takes every event and keeps nothing.
class Nothing : public YAML::EventHandler {
 public:
  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
  void OnAlias(const YAML::Mark&, YAML::anchor_t) override {}
  void OnScalar(const YAML::Mark&, const std::string&, YAML::anchor_t, const std::string&) override {}
  void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {}
  void OnSequenceEnd() override {}
  void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {}
  void OnMapEnd() override {}
};

std::vector<std::string> yaml_texts() {
  std::vector<std::string> texts;
  for (const auto& entry : std::filesystem::recursive_directory_iterator("content")) {
    if (entry.path().extension() != ".yaml") continue;
    std::ifstream file(entry.path(), std::ios::binary);
    texts.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
  }
  return texts;
}

void parse_events(const std::vector<std::string>& texts) {
  for (const std::string& text : texts) {
    std::istringstream stream(text);
    YAML::Parser parser(stream);
    Nothing nothing;
    while (parser.HandleNextDocument(nothing)) continue;
  }
}

command::Workbench opened() {
  auto bench = command::open_workbench({});
  if (!std::holds_alternative<command::Workbench>(bench)) std::exit(2);
  return std::move(std::get<command::Workbench>(bench));
}

/// The same strings at the same places.
std::size_t floor_pdf(const page::Document& document, const std::vector<std::string>& files) {
  HPDF_Doc doc = HPDF_New([](HPDF_STATUS, HPDF_STATUS, void*) {}, nullptr);
  HPDF_SetCompressionMode(doc, HPDF_COMP_ALL);
  HPDF_UseUTFEncodings(doc);
  std::vector<HPDF_Font> fonts;
  for (const std::string& file : files)
    fonts.push_back(HPDF_GetFont(doc, HPDF_LoadTTFontFromFile(doc, file.c_str(), HPDF_TRUE), "UTF-8"));
  for (const page::Page& sheet : document.pages) {
    HPDF_Page page = HPDF_AddPage(doc);
    const auto points = [](page::Length length) { return static_cast<float>(length) / static_cast<float>(page::kPt); };
    HPDF_Page_SetWidth(page, points(sheet.width));
    HPDF_Page_SetHeight(page, points(sheet.height));
    for (const page::Item& item : sheet.items) {
      const auto* text = std::get_if<page::TextItem>(&item.what);
      if (text == nullptr) continue;
      HPDF_Page_BeginText(page);
      HPDF_Page_SetFontAndSize(page, fonts.at(static_cast<std::size_t>(text->font) % fonts.size()), points(text->size));
      HPDF_Page_TextOut(page, points(text->at.x), points(sheet.height - text->at.y), text->text.c_str());
      HPDF_Page_EndText(page);
    }
  }
  HPDF_SaveToStream(doc);
  const std::size_t size = HPDF_GetStreamSize(doc);
  HPDF_Free(doc);
  return size;
}

long peak_kib() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return usage.ru_maxrss;
}

}  // namespace

int main(int count, char** words) {
  const int rounds = count > 1 ? std::max(1, std::atoi(words[1])) : 5;
  const auto texts = yaml_texts();
  const double events = fastest(rounds, [&] { parse_events(texts); });
  say("check", fastest(rounds, [] { opened(); }), "yaml-cpp's events", events);

  command::Workbench bench = opened();
  const double read = fastest(rounds, [] { command::open_records({}); });
  const model::Book book = compose::make_book(bench.base, bench.tables, bench.derived, bench.findings);
  const compose::SearchIndex index(book.search);
  say("find, once open", fastest(rounds, [&] { index.look_up("7.9x5.4"); }), "the read stage", read);
  say("find, index made anew", fastest(rounds, [&] { compose::SearchIndex(book.search).look_up("393"); }), "the read stage",
      read);

  const auto type = command::open_type_case(bench.fonts, bench.findings);
  if (!type) return 2;
  const long before = peak_kib();
  page::Document document;
  std::string bytes;
  const double own = fastest(rounds, [&] {
    document = command::set_on(book, "a4", *type, bench.findings);
    bytes = pdf::write_pdf(document, type->fonts, {type->bytes.profile.bytes}, bench.findings);
  });
  const long after = peak_kib();
  std::vector<std::string> files;
  for (const auto& entry : bench.fonts.fonts) files.push_back(entry.path);
  std::size_t floor_size = 0;
  const double floor = fastest(rounds, [&] { floor_size = floor_pdf(document, files); });
  say("bind, one handbook", own, "libharu with the same strings", floor);
  const auto pages = static_cast<long>(document.pages.size());
  std::printf("%ld pages, %zu bytes (the floor %zu), %.1f ms and %ld KiB of memory a page\n", pages, bytes.size(), floor_size,
              own * 1e3 / static_cast<double>(pages), (after - before) / pages);
}
