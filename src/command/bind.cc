// bind: checks, then writes the handbook: PDF by paper, HTML, facts, MANIFEST. All of it or none: everything is made in
// memory first, and only a run without an error touches the output folder.

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "command/commands.h"
#include "command/manifest.h"
#include "command/output_folder.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/book.h"
#include "html/site.h"
#include "pdf/writer.h"
#include "read/two_threads.h"
#include "report/print.h"

namespace benchleaf::command {
namespace {

using Files = std::map<std::string, std::string>;

const char* paper_name(Paper paper) { return paper == Paper::a4 ? "a4" : "letter"; }

/// One output of a book, made on a thread of its own: what it writes and what it has to say.
struct Piece {
  std::function<void(Piece&)> make;
  Files files;
  report::Findings findings;
};

Piece pdf_piece(Paper paper, const model::Book& book, const TypeCase& type) {
  Piece piece;
  piece.make = [paper, &book, &type](Piece& own) {
    const page::Document document = set_on(book, paper_name(paper), type, own.findings);
    if (own.findings.has_errors()) return;
    std::string bytes = pdf::write_pdf(document, type.fonts, {type.bytes.profile.bytes}, own.findings);
    own.files.emplace(std::string("handbook-") + paper_name(paper) + ".pdf", std::move(bytes));
  };
  return piece;
}

Piece html_piece(const model::Book& book) {
  Piece piece;
  piece.make = [&book](Piece& own) {
    for (auto& [name, bytes] : html::render_site(book, own.findings)) own.files.emplace("html/" + name, std::move(bytes));
  };
  return piece;
}

/// Joined in the order of the pieces, whichever was done first.
void make_pieces(std::vector<Piece> pieces, Files& files, report::Findings& findings) {
  read::on_two_threads(pieces.size(), [&pieces](std::size_t i) { pieces[i].make(pieces[i]); });
  for (Piece& piece : pieces) {
    files.merge(piece.files);
    findings.append(std::move(piece.findings));
  }
}

/// The files of the book, for paper and screen. Incomplete where a finding is an error.
void add_book(const BindOptions& options, Workbench& bench, FontBytes& fonts, Files& files) {
  const model::Book book = compose::make_book(bench.base, bench.tables, bench.derived, bench.findings);
  if (bench.findings.has_errors()) return;
  std::optional<TypeCase> type;
  if (options.pdf) {
    type = open_type_case(bench.fonts, bench.findings);
    if (!type) return;
  }
  std::vector<Piece> pieces;
  if (options.pdf) {
    for (const Paper paper : options.papers) pieces.push_back(pdf_piece(paper, book, *type));
  }
  if (options.html) pieces.push_back(html_piece(book));
  make_pieces(std::move(pieces), files, bench.findings);
  if (type) fonts = std::move(type->bytes);
}

/// Every file of the run but MANIFEST.
Files make_files(const BindOptions& options, Workbench& bench, FontBytes& fonts) {
  Files files;
  if (options.pdf || options.html) add_book(options, bench, fonts, files);
  if (options.facts) files.emplace("facts.jsonl", derive::facts_jsonl(bench.derived.facts));
  return files;
}

/// Empty, or why the files are not in their place.
std::string put_in_place(const std::string& folder, const Files& files, const std::string& manifest) {
  OutputFolder output(folder);
  for (const auto& [name, bytes] : files) output.write(name, bytes);
  output.write(std::string(kManifestName), manifest);
  output.commit();
  return output.problem();
}

}  // namespace

int run_bind(const BindOptions& options, const CommonOptions& common, Terminal& terminal) {
  auto opened = open_workbench(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  Files files;
  FontBytes fonts;
  if (!bench.findings.has_errors()) files = make_files(options, bench, fonts);
  terminal.findings(bench.findings, bench.files);
  if (bench.findings.has_errors()) {
    terminal.progress("nothing was written: " + report::count_text(bench.findings));
    return terminal.finish(kExitFindings);
  }
  const std::string problem = put_in_place(options.to, files, manifest_text(bench.base.handbook, fonts, files));
  if (!problem.empty()) return terminal.failure(problem);
  terminal.progress("bound " + record_count(bench) + " into " + options.to + ", " + std::to_string(files.size()) +
                    " files: " + report::count_text(bench.findings));
  return terminal.finish(kExitGood);
}

}  // namespace benchleaf::command
