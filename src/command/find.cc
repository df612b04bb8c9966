// find: looks words up and prints what answers them, with the page of the handbook where one was bound from this content.

#include <string>

#include "command/answer_text.h"
#include "command/commands.h"
#include "command/page_numbers.h"
#include "command/workbench.h"
#include "derive/cell_relations.h"

namespace benchleaf::command {
namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const auto& word : words) text += (text.empty() ? "" : " ") + word;
  return text;
}

}  // namespace

int run_find(const FindOptions& options, const CommonOptions& common, Terminal& terminal) {
  auto opened = open_content(common);
  if (const auto* unreadable = std::get_if<Unreadable>(&opened)) return terminal.failure(unreadable->why);
  const auto& bench = std::get<Workbench>(opened);
  if (const std::string line = left_out_line(bench); !line.empty()) terminal.progress(line);
  if (bench.base.all().empty()) return terminal.failure("no record could be read");
  const derive::Relations relations = derive::cell_relations(bench.base, bench.tables);
  const query::Answerer answerer({bench.base, bench.tables, relations}, page_numbers(common));
  const query::Answers answers = answerer.answer(joined(options.words));
  terminal.data(options.json ? query::answers_json(answers) : answers_text(answers, terminal.width()));
  return terminal.finish(answers.hits.empty() ? kExitFindings : kExitGood);
}

}  // namespace benchleaf::command
