// In: the crystals that a page names. Out: a picture of the edge of each in its seat, beside what the records say of it.
#include <utility>

#include "compose/entry_maker.h"
#include "compose/figures/crystal_section.h"
#include "compose/figures/figures.h"
#include "compose/figures/pen.h"
#include "compose/line.h"
#include "model/request_words.h"

namespace benchleaf::compose {

namespace {

using model::word_of;

/// One row of the page: the crystal and the figures that it is drawn from.
class FitRow {
 public:
  FitRow(const Desk& desk, const model::Node& row, const model::Crystal& crystal) : desk_(desk), crystal_(crystal) {
    fit_.fixing = crystal.fixing;
    fit_.thickness = desk.fact(crystal, "thickness");
    fit_.oversize = desk.fact(crystal, "oversize");
    const auto term = desk.records.terms.find(word_of(row, "holder"));
    if (term != desk.records.terms.end()) fit_.holder = term->second.term;
    const auto ring = desk.records.gaskets.find(word_of(row, "ring"));
    if (ring == desk.records.gaskets.end()) return;
    ring_ = &ring->second;
    fit_.wall = desk.fact(*ring_, "wall");
    fit_.height = desk.fact(*ring_, "height");
    fit_.oversize = desk.derived.facts.find("table/bench-rules#" + word_of(row, "oversize") + ".value");
  }

  /// Whether the crystal, where it is fitted into a ring, is by its own record as much larger as is drawn.
  bool is_of_one_mind() const {
    return ring_ == nullptr || (fit_.oversize != nullptr && names_figure(crystal_.fit, *fit_.oversize));
  }

  std::shared_ptr<const model::Drawing> drawing() const { return crystal_section(fit_); }

  model::Trust weakest() const {
    model::Trust trust = model::Trust::given;
    for (const model::Fact* fact : {fit_.thickness, fit_.oversize, fit_.wall, fit_.height}) {
      if (fact != nullptr) trust = model::weaker(trust, fact->trust);
    }
    return trust;
  }

  model::Runs name() const { return Line(desk_).link(crystal_.title, crystal_.reference()).take(); }

  model::Runs words() const {
    Line line(desk_);
    line.say(crystal_.recognise);
    if (fit_.oversize != nullptr) {
      line.line_break().say(ring_ == nullptr ? "Over its seat by " : "Over the inside of its ring by ");
      line.fact(*fit_.oversize).say("\u00A0").sign({fit_.oversize->trust, false});
    }
    if (ring_ != nullptr) line.line_break().link(ring_->reference());
    if (const auto others = held_alike(); !others.empty()) line.line_break().say("So too: ").links(others);
    return line.take();
  }

 private:
  model::References held_alike() const {
    model::References others;
    for (const auto& [id, other] : desk_.records.crystals) {
      if (other.fixing == crystal_.fixing && id != crystal_.id) others.push_back(other.reference());
    }
    return others;
  }

  const Desk& desk_;
  const model::Crystal& crystal_;
  const model::Gasket* ring_ = nullptr;
  CrystalFit fit_;
};

}  // namespace

std::optional<model::Table> crystal_fits(const Desk& desk, const model::Node& body) {
  const model::Node* rows = body.find("rows");
  if (rows == nullptr || rows->items.empty()) return std::nullopt;
  model::Table table;
  table.name = "drawn-crystal-fits";
  table.columns = {column("crystal, its edge in section", model::Column::Align::left, true), column("told by")};
  model::Trust weakest = model::Trust::given;
  for (const model::Node& row : rows->items) {
    const auto crystal = desk.records.crystals.find(word_of(row, "crystal"));
    if (crystal == desk.records.crystals.end()) return std::nullopt;
    const FitRow fit(desk, row, crystal->second);
    const auto drawing = fit.is_of_one_mind() ? fit.drawing() : nullptr;
    if (!drawing) return std::nullopt;
    weakest = model::weaker(weakest, fit.weakest());
    table.rows.push_back({{{fit.name(), drawing}, cell(fit.words())}, {}});
  }
  table.caption = {model::text_run(word_of(body, "words") + " "), model::trust_run(weakest, false)};
  return table;
}

}  // namespace benchleaf::compose
