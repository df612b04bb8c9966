// In: the kinds of back that a page names, with their procedures and tools. Out: a picture of each, beside what the records
// say of it.
#include <algorithm>
#include <utility>

#include "compose/entry_maker.h"
#include "compose/figures/back_drawing.h"
#include "compose/figures/figures.h"
#include "compose/figures/pen.h"
#include "compose/line.h"
#include "model/request_words.h"

namespace benchleaf::compose {

namespace {

using model::word_of;

/// One row of the page: what its names lead to.
class Way {
 public:
  Way(const Desk& desk, const model::Node& row, const model::Fact* section) : desk_(desk), row_(row) {
    place_.back = word_of(row, "back");
    place_.section = section;
    const auto procedure = desk.records.procedures.find(word_of(row, "procedure"));
    if (procedure != desk.records.procedures.end()) procedure_ = &procedure->second;
    const auto tool = desk.records.tools.find(word_of(row, "tool"));
    if (tool == desk.records.tools.end()) return;
    tool_ = &tool->second;
    place_.tool = desk.name(tool_->reference());
    const auto term = desk.records.terms.find(word_of(row, "place"));
    if (term != desk.records.terms.end()) place_.place = term->second.term;
    if (const std::string rule = word_of(row, "deepest"); !rule.empty())
      place_.deepest = desk.derived.facts.find("table/bench-rules#" + rule + ".value");
  }

  /// Whether the procedure says what the picture is going to: the tool, the place, the depth to stop at.
  bool is_of_one_mind() const {
    if (place_.back == "none") return !word_of(row_, "words").empty();
    if (procedure_ == nullptr || tool_ == nullptr) return false;
    const auto& tools = procedure_->tools;
    if (std::find(tools.begin(), tools.end(), tool_->reference()) == tools.end()) return false;
    const auto& steps = procedure_->steps;
    if (std::none_of(steps.begin(), steps.end(),
                     [this](const auto& step) { return step.text.find(place_.place) != std::string::npos; }))
      return false;
    const auto& stop = procedure_->stop;
    return place_.deepest == nullptr ||
           std::any_of(stop.begin(), stop.end(), [this](const auto& words) { return names_figure(words, *place_.deepest); });
  }

  std::shared_ptr<const model::Drawing> drawing() const { return back_drawing(place_); }
  const model::Fact* deepest() const { return place_.deepest; }

  model::Runs name() const {
    Line line(desk_);
    if (procedure_ == nullptr) return line.say(sentence_case(word_of(row_, "words"))).take();
    return line.link(procedure_->title, procedure_->reference()).take();
  }

  model::Runs words() const {
    Line line(desk_);
    if (procedure_ == nullptr) return line.say(word_of(row_, "then")).take();
    line.say(procedure_->purpose).line_break().link(sentence_case(place_.tool), tool_->reference()).say(". " + tool_->check);
    if (place_.deepest != nullptr)
      line.line_break().say("In the seam at most ").fact(*place_.deepest).say("\u00A0").sign({place_.deepest->trust, false});
    for (const std::string& caution : tool_->cautions) line.line_break().link(caution);
    return line.take();
  }

 private:
  const Desk& desk_;
  const model::Node& row_;
  BackPlace place_;
  const model::Procedure* procedure_ = nullptr;
  const model::Tool* tool_ = nullptr;
};

}  // namespace

std::optional<model::Table> back_places(const Desk& desk, const model::Node& body) {
  const auto series = desk.records.gaskets.find(word_of(body, "gasket"));
  const model::Node* rows = body.find("rows");
  if (series == desk.records.gaskets.end() || rows == nullptr || rows->items.empty()) return std::nullopt;
  const model::Fact* section = desk.fact(series->second, "section");
  if (section == nullptr || !section->value) return std::nullopt;
  model::Table table;
  table.name = "drawn-backs";
  table.columns = {column("back, from above and in section", model::Column::Align::left, true),
                   column("what goes in, and where")};
  model::Trust weakest = section->trust;
  for (const model::Node& row : rows->items) {
    const Way way(desk, row, section);
    const auto drawing = way.is_of_one_mind() ? way.drawing() : nullptr;
    if (!drawing) return std::nullopt;
    if (way.deepest() != nullptr) weakest = model::weaker(weakest, way.deepest()->trust);
    table.rows.push_back({{{way.name(), drawing}, cell(way.words())}, {}});
  }
  table.caption = {model::text_run(word_of(body, "words") + " "), model::trust_run(weakest, false)};
  return table;
}

}  // namespace benchleaf::compose
