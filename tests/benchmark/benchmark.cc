// benchmark [ROUNDS]: how long the program takes as ratios to named floors, all in one run on the real content. Nothing is
// asserted: machines differ, ratios less so. The floors:
//   check   yaml-cpp's parser alone over the same files, its events thrown away
//   find    the read stage alone
//   bind    libharu showing the same strings at the same places, with the same fonts embedded, no layout, no tags, compressed
// The best of the rounds counts.
// benchmark find [RECORDS]: the look-up at the terminal and in the page, on the content with so many records in it.
// benchmark dense [PAGES]: so many pages full of tables, set and written once: time as a ratio to the last floor, and memory.
#include <hpdf.h>
#include <malloc.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

#include "command/commands.h"
#include "command/disk_files.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/entries/book.h"
#include "derive/cell_relations.h"
#include "page/packed.h"
#include "pdf/writer.h"
#include "query/answer.h"
#include "read/node_lines.h"
#include "read/shapes.h"
#include "web/program.h"

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

/// The same of several works turn by turn, so that a machine that is busy for a while slows all of them.
std::vector<double> fastest_by_turns(int rounds, const std::vector<std::function<void()>>& works) {
  std::vector<double> best(works.size(), 1e9);
  for (int round = 0; round < rounds; ++round) {
    for (std::size_t i = 0; i < works.size(); ++i) best[i] = std::min(best[i], fastest(1, works[i]));
  }
  return best;
}

/// Seconds of processor time of the cheapest of so many rounds: for work on one thread, whatever else the machine does.
double cheapest(int rounds, const std::function<void()>& work) {
  double best = 1e9;
  for (int round = 0; round < rounds; ++round) {
    const std::clock_t begun = std::clock();
    work();
    best = std::min(best, static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC);
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

/// The content with made-up words of the trade added until it has so many records, in a folder of its own.
std::filesystem::path enlarged(std::size_t records) {
  namespace fs = std::filesystem;
  const fs::path folder = fs::temp_directory_path() / ("benchmark-content-" + std::to_string(records));
  fs::remove_all(folder);
  fs::copy("content", folder, fs::copy_options::recursive);
  std::size_t there = 0;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) there += entry.is_regular_file() ? 1 : 0;
  for (std::size_t i = there; i < records; ++i) {
    const std::string id = "made-up-" + std::to_string(i);
    std::ofstream(folder / "term" / (id + ".yaml"))
        << "id: " << id << "\nterm: made-up word " << i << "\nmeaning: Word " << i << " of a list that is as long as it is.\n";
  }
  return folder;
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
    for (const page::Item& item : page::items_of(sheet)) {
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

/// Memory of the process in KiB by that line of its status: VmRSS now, VmHWM at its highest.
long status_kib(const std::string& key) {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.rfind(key + ":", 0) == 0) return std::atol(line.c_str() + key.size() + 1);
  }
  return 0;
}

/// Gives back what is free and starts to watch anew; what is in use now.
long watch_memory() {
  malloc_trim(0);
  std::ofstream("/proc/self/clear_refs") << "5";
  return status_kib("VmRSS");
}

std::string number(unsigned value, unsigned below) { return std::to_string(value % below); }

/// Chapters of tables of eight columns, like lists of cells; each table is a few pages long.
model::Book dense_book(int pages) {
  constexpr int kRowsOfPage = 48;
  constexpr int kPagesOfTable = 4;
  constexpr int kTablesOfChapter = 8;
  const std::vector<std::string> heads = {"Designation", "Number", "Diameter", "Height", "Volts", "mAh", "Months", "Use"};
  const std::vector<std::string> uses = {"analogue", "digital", "with lamp", "alarm", "calculator", "not in use"};
  model::Book book;
  book.title = "Dense";
  book.iso_date = "2026-11-01";
  unsigned seed = 1;
  const auto next = [&seed] { return (seed = seed * 1664525U + 1013904223U) >> 8; };
  for (int table_number = 0; table_number * kPagesOfTable < pages; ++table_number) {
    if (table_number % kTablesOfChapter == 0) {
      model::Chapter chapter;
      chapter.number = static_cast<int>(book.chapters.size()) % 11 + 1;
      chapter.id = "c" + std::to_string(book.chapters.size());
      chapter.title = "Chapter " + std::to_string(book.chapters.size());
      chapter.tab = "Tab";
      book.chapters.push_back(std::move(chapter));
    }
    model::Table table;
    table.name = "t" + std::to_string(table_number);
    for (const std::string& head : heads) {
      model::Column column;
      column.head = {model::text_run(head)};
      column.row_head = table.columns.empty();
      column.align =
          table.columns.size() > 1 && table.columns.size() < 7 ? model::Column::Align::decimal : model::Column::Align::left;
      table.columns.push_back(std::move(column));
    }
    for (int i = 0; i < kRowsOfPage * kPagesOfTable; ++i) {
      model::TableRow row;
      const std::vector<std::string> words = {"SR" + number(next(), 2000) + "SW",
                                              number(next(), 400),
                                              number(next(), 30) + "." + number(next(), 10),
                                              number(next(), 6) + "." + number(next(), 100),
                                              "1." + number(next(), 60),
                                              number(next(), 220),
                                              number(next(), 60),
                                              uses.at(next() % uses.size())};
      for (const std::string& word : words) row.cells.push_back({{model::text_run(word)}, nullptr, false});
      table.rows.push_back(std::move(row));
    }
    book.chapters.back().blocks.push_back({std::move(table)});
  }
  return book;
}

std::vector<std::string> font_files(const command::Workbench& bench) {
  std::vector<std::string> files;
  for (const auto& entry : bench.fonts.fonts) files.push_back(entry.path);
  return files;
}

int run_dense(int wanted) {
  command::Workbench bench = opened();
  const auto type = command::open_type_case(bench.fonts, bench.findings);
  if (!type) return 2;
  const model::Book book = dense_book(wanted);
  std::string bytes;
  std::size_t pages = 0, elements = 0;
  const long before = watch_memory();
  long set = 0;
  const double own = cheapest(1, [&] {
    page::Document document = command::set_on(book, "a4", *type, bench.findings);
    pages = document.pages.size();
    elements = document.tags.size();
    set = status_kib("VmHWM") - before;
    bytes = pdf::write_pdf(std::move(document), type->fonts, {type->bytes.profile.bytes}, bench.findings);
  });
  const long peak = status_kib("VmHWM") - before;
  const page::Document again = command::set_on(book, "a4", *type, bench.findings);
  std::size_t floor_size = 0;
  const double floor = cheapest(1, [&] { floor_size = floor_pdf(again, font_files(bench)); });
  say("dense, one handbook", own, "libharu with the same strings", floor);
  std::printf(
      "%zu pages, %zu elements, %zu bytes (the floor %zu), %.1f ms and %ld KiB of memory a page (%ld before it is written)\n",
      pages, elements, bytes.size(), floor_size, own * 1e3 / static_cast<double>(pages), peak / static_cast<long>(pages),
      set / static_cast<long>(pages));
  return 0;
}

}  // namespace

/// Both look-ups from nothing on: the terminal from the files, the page from the lines that it carries.
int run_find(int rounds, std::size_t records) {
  command::CommonOptions options;
  options.content = enlarged(records).string();
  const auto look_up = [&] {
    const auto opened = command::open_content(options);
    const auto& content = std::get<command::Workbench>(opened);
    const derive::Relations relations = derive::cell_relations(content.base, content.tables);
    return query::Answerer({content.base, content.tables, relations}).answer("393").hits.size();
  };
  const auto content = command::open_content(options);
  const auto& bench = std::get<command::Workbench>(content);
  const command::DiskFiles schema(bench.schema);
  const std::string lines =
      web::page_lines(bench.tables.published, bench.base, *read::shape_tree(schema, "watch"), *read::shape_tree(schema, "stock"));
  model::Node request;
  request.type = model::NodeType::mapping;
  for (const auto& [key, text] : {std::pair{"ask", "find"}, std::pair{"query", "393"}}) {
    model::Node value;
    value.type = model::NodeType::string;
    value.text = text;
    request.members.push_back({key, {}, value});
  }
  const std::string asked = read::node_lines(request);
  const auto best =
      fastest_by_turns(rounds, {[&] { command::open_records(options); }, look_up, [&] { web::Program(lines).answer(asked); }});
  std::printf("%zu records\n", bench.base.all().size());
  say("find 393, from the files on", best[1], "the read stage", best[0]);
  say("the page, from its lines on", best[2], "the read stage", best[0]);
  std::filesystem::remove_all(options.content);
  return 0;
}

int main(int count, char** words) {
  if (count > 1 && std::string(words[1]) == "find")
    return run_find(5, count > 2 ? static_cast<std::size_t>(std::max(1, std::atoi(words[2]))) : 0);
  if (count > 1 && std::string(words[1]) == "dense") return run_dense(count > 2 ? std::max(1, std::atoi(words[2])) : 1000);
  const int rounds = count > 1 ? std::max(1, std::atoi(words[1])) : 5;
  const auto texts = yaml_texts();
  const double events = fastest(rounds, [&] { parse_events(texts); });
  say("check", fastest(rounds, [] { opened(); }), "yaml-cpp's events", events);

  command::Workbench bench = opened();
  const model::Book book = compose::make_book(bench.base, bench.tables, bench.derived, compose::Medium::paper, bench.findings);
  const auto look_up = [] {
    const auto opened = command::open_content({});
    const auto& content = std::get<command::Workbench>(opened);
    const derive::Relations relations = derive::cell_relations(content.base, content.tables);
    return query::Answerer({content.base, content.tables, relations}).answer("393").hits.size();
  };
  const auto best = fastest_by_turns(rounds, {[] { command::open_records({}); }, look_up});
  const double read = best[0];
  say("find 393, from the files on", best[1], "the read stage", read);
  const derive::Relations relations = derive::cell_relations(bench.base, bench.tables);
  const query::Answerer answerer({bench.base, bench.tables, relations});
  answerer.answer("back will not close");
  say("find, once open", fastest(rounds, [&] { answerer.answer("back will not close"); }), "the read stage", read);

  const auto type = command::open_type_case(bench.fonts, bench.findings);
  if (!type) return 2;
  page::Document document;
  std::string bytes;
  long peak = 0;
  const double own = cheapest(rounds, [&] {
    document = {};
    bytes = {};
    const long before = watch_memory();
    document = command::set_on(book, "a4", *type, bench.findings);
    bytes = pdf::write_pdf(std::move(document), type->fonts, {type->bytes.profile.bytes}, bench.findings);
    peak = status_kib("VmHWM") - before;
  });
  document = command::set_on(book, "a4", *type, bench.findings);
  std::size_t floor_size = 0;
  const double floor = cheapest(rounds, [&] { floor_size = floor_pdf(document, font_files(bench)); });
  say("bind, one handbook", own, "libharu with the same strings", floor);
  const auto pages = static_cast<long>(document.pages.size());
  std::printf("%ld pages, %zu elements, %zu bytes (the floor %zu), %.1f ms and %ld KiB of memory a page\n", pages,
              document.tags.size(), bytes.size(), floor_size, own * 1e3 / static_cast<double>(pages), peak / pages);
}
