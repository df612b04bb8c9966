// find: looks words up in the search index and prints the facts with the page of the handbook.

#include <string>

#include "command/answer.h"
#include "command/commands.h"
#include "command/setting.h"
#include "command/workbench.h"
#include "compose/entries/book.h"
#include "page/set_book.h"
#include "query/search.h"

namespace benchleaf::command {
namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : " ") + word;
  return text;
}

int give_up(Workbench& bench, Terminal& terminal) {
  terminal.findings(bench.findings, bench.files);
  return terminal.failure("the content has errors, so nothing was looked up in it");
}

}  // namespace

int run_find(const FindOptions& options, const CommonOptions& common, Terminal& terminal) {
  auto opened = open_workbench(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  auto& bench = std::get<Workbench>(opened);
  if (bench.findings.has_errors()) return give_up(bench, terminal);
  const model::Book book = compose::make_book(bench.base, bench.tables, bench.derived, compose::Medium::paper, bench.findings);
  const auto type = open_type_case(bench.fonts, bench.findings);
  if (!type) return give_up(bench, terminal);
  const page::Document pages = set_on(book, "a4", *type, bench.findings);

  const compose::SearchIndex index(book.search);
  const Answers answers = look_up(bench, index, joined(options.words),
                                  [&pages](const std::string& anchor) { return page::page_label(pages, anchor); });
  terminal.data(options.json ? answers_json(answers) : answers_text(answers));
  return terminal.finish(answers.hits.empty() ? kExitFindings : kExitGood);
}

}  // namespace benchleaf::command
