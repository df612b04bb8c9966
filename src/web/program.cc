// In: what a page asks. Out: what the terminal answers.
#include "web/program.h"

#include "bench/calculator.h"
#include "derive/bench_figures.h"
#include "derive/cell_relations.h"
#include "read/node_lines.h"
#include "web/calculator_form.h"
#include "web/label_answer.h"
#include "web/label_form.h"
#include "web/ticket_answer.h"

namespace benchleaf::web {

namespace {

std::string text_at(const model::Node& request, std::string_view key) {
  const model::Node* node = request.find(key);
  return node == nullptr ? std::string() : node->text;
}

}  // namespace

Program::Program(std::string_view lines) : library_(read_page_library(lines)) {}

const model::FactBase& Program::figures() {
  if (!figures_) figures_ = derive::bench_figures(library_.records, library_.tables);
  return *figures_;
}

const derive::Derived& Program::derived() {
  if (!derived_) {
    report::Findings told;  // `bind` has told them
    derived_ = derive::derive(library_.records, library_.tables, told);
  }
  return *derived_;
}

const query::BenchNames& Program::names() {
  if (!names_) names_.emplace(library_.records, library_.tables);
  return *names_;
}

std::string Program::found(const model::Node& request) {
  if (!answerer_) {
    relations_ = derive::cell_relations(library_.records, library_.tables);
    answerer_.emplace(query::World{library_.records, library_.tables, *relations_});
  }
  return query::answer(*answerer_, text_at(request, "query"));
}

std::string Program::reckoned(const model::Node& request) {
  const bench::Form form = text_at(request, "form") == "json" ? bench::Form::json : bench::Form::text;
  const std::string name = text_at(request, "name");
  if (name.empty()) return bench::calculators_written(form);
  bench::Inputs inputs;
  if (const model::Node* given = request.find("inputs")) {
    for (const model::Member& one : given->members)
      inputs.insert_or_assign(one.key, bench::Given{one.value.text, model::Trust::given, {}});
  }
  return bench::written(bench::reckon(name, inputs, {library_.tables, figures(), &names()}), form);
}

std::string Program::ticket(const model::Node& request, std::string_view lines) {
  return answer_ticket({library_, derived()}, request, read::node_line_paths(lines));
}

std::string Program::labels(const model::Node& request) {
  if (!uses_) uses_.emplace(library_.records);
  report::Findings told;
  return answer_labels({library_.records, library_.tables, derived(), *uses_, told}, names(), request);
}

std::string Program::answer(std::string_view request) {
  if (!library_.fault.empty()) return library_.fault + "; bind the handbook again\n";
  const auto tree = read::read_node_lines(request, kRequestFile);
  if (!tree) return "the request cannot be read\n";
  const std::string asked = text_at(*tree, "ask");
  if (asked == "reckon") return reckoned(*tree);
  if (asked == "form") return calculator_form(text_at(*tree, "name"), library_);
  if (asked == "find") return found(*tree);
  if (asked == "ticket") return ticket(*tree, request);
  if (asked == "label-form") return label_form(library_);
  if (asked == "labels") return labels(*tree);
  return "the page's program knows no \"" + asked + "\"\n";
}

}  // namespace benchleaf::web
