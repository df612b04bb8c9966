// bind: checks, then writes the handbook: PDF by paper, HTML, facts, MANIFEST. All of it or none: everything is made in
// memory first, and only a run without an error touches the output folder.

#include <functional>
#include <iterator>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "base/sha256.h"
#include "bench/calculator.h"
#include "command/commands.h"
#include "command/data_package.h"
#include "command/manifest.h"
#include "command/output_folder.h"
#include "command/page_numbers.h"
#include "command/page_scripts.h"
#include "command/set_books.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/charts/chart.h"
#include "compose/charts/chart_pages.h"
#include "compose/entries/book.h"
#include "html/single.h"
#include "html/site.h"
#include "model/paper_size.h"
#include "page/crop_marks.h"
#include "pdf/writer.h"
#include "read/two_threads.h"
#include "report/print.h"
#include "ticket/intake_card.h"

namespace benchleaf::command {
namespace {

constexpr std::string_view kNumberedPaper = "a4";

/// One output of a book, made on a thread of its own: what it writes and what it has to say.
struct Piece {
  std::function<void(Piece&)> make;
  Files files;
  std::vector<std::string> remarks;  ///< lines for the manifest
  report::Findings findings;
};

/// Whose pages the look-up names.
struct Numbered {
  std::string mark;  ///< of the content
  std::vector<std::string> records;
};

Piece pdf_piece(SetBook& book, bool marks, const TypeCase& type, const Numbered& numbered) {
  Piece piece;
  piece.make = [&book, marks, &type, &numbered](Piece& own) {
    own.findings = std::move(book.findings);
    if (own.findings.has_errors()) return;
    if (book.paper == kNumberedPaper) own.files.emplace(kPageNumbersName, page_numbers_text(numbered.mark, book.pages));
    if (marks) page::add_crop_marks(book.document);
    std::string bytes = pdf::write_pdf(std::move(book.document), type.fonts, {type.bytes.profile.bytes}, own.findings);
    own.files.emplace("handbook-" + book.paper + ".pdf", std::move(bytes));
  };
  return piece;
}

Piece html_piece(const model::Book& book, const Files& scripts) {
  Piece piece;
  piece.make = [&book, &scripts](Piece& own) {
    std::vector<std::string> program;
    for (const auto& [name, text] : scripts) program.push_back(text);
    for (auto& [name, bytes] : html::render_site(book, own.findings)) own.files.emplace("html/" + name, std::move(bytes));
    own.files.emplace("handbook.html", html::render_single(book, program));
    own.files.insert(scripts.begin(), scripts.end());
  };
  return piece;
}

/// A chart or a card as `STEM-PAPER.pdf`, and how large its type came out.
using SetSheets = page::SheetDocument (*)(const model::SheetSet&, const std::string&, const TypeCase&, report::Findings&);

Piece sheet_piece(const std::string& stem, const model::SheetSet& chart, const std::string& paper, bool marks,
                  const TypeCase& type, compose::PageOf page_of, SetSheets set = set_chart_on) {
  Piece piece;
  piece.make = [stem, &chart, paper, marks, &type, page_of = std::move(page_of), set](Piece& own) {
    model::SheetSet paged = chart;
    compose::name_pages(paged, page_of, named_book(paper));
    page::SheetDocument sheets = set(paged, paper, type, own.findings);
    if (own.findings.has_errors()) return;
    if (marks) page::add_crop_marks(sheets.document);
    const std::string name = stem + "-" + paper + ".pdf";
    own.files.emplace(name, pdf::write_pdf(std::move(sheets.document), type.fonts, {type.bytes.profile.bytes}, own.findings));
    for (std::size_t side = 0; side < sheets.fits.size(); ++side)
      own.remarks.push_back(fit_text(name, side + 1, sheets.fits[side]));
  };
  return piece;
}

/// Joined in the order of the pieces, whichever was done first.
void make_pieces(std::vector<Piece> pieces, Bound& bound, report::Findings& findings) {
  read::on_two_threads(pieces.size(), [&pieces](std::size_t i) { pieces[i].make(pieces[i]); });
  for (Piece& piece : pieces) {
    bound.files.merge(piece.files);
    bound.remarks.insert(bound.remarks.end(), piece.remarks.begin(), piece.remarks.end());
    findings.append(std::move(piece.findings));
  }
}

/// The handbook as it is said on either.
struct Books {
  model::Book paper;
  model::Book screen;
};

std::vector<Piece> pieces_of(const BindOptions& options, std::vector<SetBook>& set_books, const model::Book& screen,
                             const std::vector<model::SheetSet>& charts, const Files& scripts, const TypeCase* type,
                             const Numbered& numbered) {
  std::vector<Piece> pieces;
  for (SetBook& book : set_books) {
    if (book.wanted) pieces.push_back(pdf_piece(book, options.marks, *type, numbered));
  }
  if (options.html) pieces.push_back(html_piece(screen, scripts));
  for (const model::SheetSet& chart : charts) {
    const std::string stem = chart.card ? chart.id : "chart-" + chart.id;
    for (const std::string& paper : chart.papers) {
      if (!is_wanted_on(options, paper)) continue;
      const compose::PageOf page_of = pages_for(paper, set_books);
      pieces.push_back(sheet_piece(stem, chart, paper, options.marks, *type, page_of));
      if (chart.card) pieces.push_back(sheet_piece(stem + "-a5", chart, paper, options.marks, *type, page_of, set_cards_on));
    }
  }
  return pieces;
}

/// The book and the charts, for paper and screen. Incomplete where a finding is an error.
void add_book(const BindOptions& options, const CommonOptions& common, Workbench& bench, Bound& bound) {
  Books books;
  std::vector<model::SheetSet> charts;
  report::Findings said;  // what one of the books has to say, the other would say again
  const auto book_for = [&bench](compose::Medium medium, report::Findings& findings) {
    return compose::make_book(bench.base, bench.tables, bench.derived, medium, findings);
  };
  if (options.pdf) books.paper = book_for(compose::Medium::paper, bench.findings);
  if (!options.pdf && options.charts) books.paper = book_for(compose::Medium::paper, said);
  if (options.html) books.screen = book_for(compose::Medium::screen, options.pdf ? said : bench.findings);
  if (options.charts) {
    charts = compose::make_charts(bench.base, bench.tables, bench.derived, bench.findings);
    charts.push_back(ticket::intake_card(bench.base.handbook));
  }
  const Files scripts = options.html ? page_scripts(bench) : Files();
  if (bench.findings.has_errors()) return;
  std::optional<TypeCase> type;
  if (options.pdf || options.charts) {
    type = open_type_case(bench.fonts, bench.findings);
    if (!type) return;
  }
  Numbered numbered{content_mark(common), {}};
  for (const model::Record* record : bench.base.all()) numbered.records.push_back(record->reference());
  for (const auto& calculator : bench::calculators()) numbered.records.push_back("calculator/" + std::string(calculator.name));
  std::vector<SetBook> set;
  if (type) set = set_books(options, bench.base.handbook.papers, books.paper, *type, numbered.records);
  make_pieces(pieces_of(options, set, books.screen, charts, scripts, type ? &*type : nullptr, numbered), bound, bench.findings);
  if (type) bound.fonts = std::move(type->bytes);
}

/// Everything of the run but MANIFEST.
Bound make_files(const BindOptions& options, const CommonOptions& common, Workbench& bench) {
  Bound bound;
  if (options.pdf || options.html || options.charts) add_book(options, common, bench, bound);
  if (options.facts) {
    std::string facts = derive::facts_jsonl(bench.derived.facts);
    bound.files.emplace("datapackage.json", data_package(bench.base.handbook, facts));
    bound.files.emplace("facts.jsonl", std::move(facts));
  }
  return bound;
}

/// A run that was asked for some of the files leaves the others of an earlier one in their place.
bool is_whole(const BindOptions& options, std::size_t papers) {
  return options.pdf && options.html && options.charts && options.facts && options.papers.size() == papers;
}

/// Empty, or why the files are not in their place.
std::string put_in_place(const BindOptions& options, const model::Handbook& handbook, Bound& bound) {
  OutputFolder output(options.to);
  for (const auto& [name, bytes] : bound.files) output.write(name, bytes);
  if (!output.claim()) return output.problem();
  const std::set<std::string> old = files_of_manifest(output.old_bytes(std::string(kManifestName)));
  const bool whole = is_whole(options, std::size(model::kPaperSizes));
  for (const std::string& name : old) {
    if (whole || bound.files.contains(name)) continue;
    const std::string bytes = output.old_bytes(name);
    if (!bytes.empty()) bound.kept.emplace(name, base::sha256(bytes));
  }
  output.write(std::string(kManifestName), manifest_text(handbook, bound));
  output.commit([&](const std::string& name) { return whole && old.contains(name); });
  return output.problem();
}

}  // namespace

int run_bind(const BindOptions& options, const CommonOptions& common, Terminal& terminal) {
  auto opened = open_workbench(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  Bound bound;
  if (!bench.findings.has_errors()) bound = make_files(options, common, bench);
  terminal.findings(bench.findings, bench.files);
  if (bench.findings.has_errors()) {
    terminal.progress("nothing was written: " + terminal.count(bench.findings));
    return terminal.finish(kExitFindings);
  }
  if (bound.files.empty()) {
    return terminal.failure("--only and --paper leave nothing to write: the handbook has its papers, each chart its own");
  }
  const std::string problem = put_in_place(options, bench.base.handbook, bound);
  if (!problem.empty()) return terminal.failure(problem);
  const std::string place = (std::filesystem::path(options.to) / kBookFolder).string();
  terminal.progress("bound " + record_count(bench) + " into " + place + ", " + std::to_string(bound.files.size()) +
                    " files: " + terminal.count(bench.findings));
  return terminal.finish(kExitGood);
}

}  // namespace benchleaf::command
