// In: the pages and what they ask of calculators. Out: each answer as a fact of its page. What is refused gives none; where the
// page is set, the book says so.

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "derive/bench_figures.h"
#include "derive/fact_of_output.h"
#include "derive/makers.h"
#include "derive/page_answers.h"

namespace benchleaf::derive {
namespace {

void answer(Making& making, const model::Page& page, const PageAnswers& asked, const model::FactBase& figures) {
  for (const auto& row : asked.rows) {
    bench::Result result = bench::reckon(asked.calculator, row.inputs, {making.tables, figures});
    for (auto& output : result.outputs) {
      const std::string name = output.name;
      if (std::find(asked.columns.begin(), asked.columns.end(), name) == asked.columns.end()) continue;
      model::Fact fact = fact_of_output(std::move(output), page.reference(), asked.calculator);
      fact.id = asked.fact_id(page.reference(), row, name);
      making.facts.add(std::move(fact));
    }
  }
}

}  // namespace

void make_page_answer_facts(Making& making) {
  std::optional<model::FactBase> figures;
  for (const auto& [id, page] : making.base.pages) {
    for (const auto& part : page.parts) {
      const auto* request = std::get_if<model::DerivedRequest>(&part);
      const auto asked = request == nullptr ? std::nullopt : read_page_answers(request->body);
      if (!asked) continue;
      if (!figures) figures = bench_figures(making.base, making.tables);
      answer(making, page, *asked, *figures);
    }
  }
}

}  // namespace benchleaf::derive
