// In: the knowledge base and the tables. Out: what the calculators say of each record, asked as at the bench.

#include "derive/usual_answers.h"

#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bench/calculator.h"
#include "derive/bench_figures.h"
#include "derive/fact_of_output.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "standards/table_view.h"

namespace benchleaf::derive {
namespace {

using Words = std::vector<std::pair<std::string, std::string>>;

/// Inputs that name a record, and its kind.
constexpr std::array<std::pair<std::string_view, model::Kind>, 6> kRecordInputs = {{{"cell", model::Kind::cell},
                                                                                    {"module", model::Kind::module},
                                                                                    {"series", model::Kind::gasket},
                                                                                    {"residue", model::Kind::residue},
                                                                                    {"liquid", model::Kind::chemistry},
                                                                                    {"material", model::Kind::material}}};

/// Asks and keeps the answers.
class Asker {
 public:
  Asker(const model::KnowledgeBase& base, const model::Tables& tables) : figures_(bench_figures(base, tables)), tables_(tables) {}

  /// `asked` parts several questions to one calculator about one record; empty where there is one.
  void ask(const model::Record& about, const std::string& calculator, const std::string& asked, const Words& words,
           bench::Inputs inputs = {}) {
    for (const auto& [key, value] : words) inputs.emplace(key, bench::Given{value, model::Trust::given, {}});
    bench::Result result = bench::reckon(calculator, inputs, {tables_, figures_});
    const std::string name = asked.empty() ? calculator : calculator + "." + asked;
    for (auto& output : result.outputs) add(fact_of_output(std::move(output), about.reference(), name), words);
    if (result.refusal) add(refusal(*result.refusal, about.reference() + "#" + name), words);
  }

  /// A figure that is reckoned with where nobody measured one, as the table of bench rules has it.
  bench::Given usual(const char* rule) const {
    const model::PublishedTable::Row* row = standards::row_of(tables_, "bench-rules", rule);
    if (row == nullptr) return {};
    return {standards::cell_text(*row, "value"), row->trust, "table/bench-rules#" + std::string(rule) + ".value"};
  }

  model::FactBase take() { return std::move(answers_); }

 private:
  /// An answer rests on the records it was asked about, whatever of them it names.
  void add(model::Fact fact, const Words& words) {
    for (const auto& [input, kind] : kRecordInputs) {
      for (const auto& [key, value] : words) {
        if (key == input) fact.inputs.push_back(model::RecordRef(kind, value));
      }
    }
    answers_.add(std::move(fact));
  }

  static model::Fact refusal(const bench::Refusal& why, const std::string& asked) {
    model::Fact fact;
    fact.id = asked + ".refused";
    fact.printed = why.input.empty() ? why.reason : why.input + ": " + why.reason;
    fact.trust = model::Trust::given;
    fact.derived = true;
    return fact;
  }

  model::FactBase figures_;
  const model::Tables& tables_;
  model::FactBase answers_;
};

void ask_cells(const model::KnowledgeBase& base, Asker& asker) {
  for (const auto& [id, cell] : base.cells) asker.ask(cell, "cell-swap", {}, {{"cell", id}});
  for (const auto& [id, module] : base.modules) {
    for (const auto& cell : module.cells) {
      asker.ask(module, "cell-life", cell.id(), {{"cell", cell.id()}, {"module", id}});
    }
  }
}

void ask_gaskets(const model::KnowledgeBase& base, Asker& asker) {
  for (const auto& [id, gasket] : base.gaskets) {
    const auto& largest = gasket.inside.to;
    if (largest && largest->has_value()) asker.ask(gasket, "gasket-fit", {}, {{"series", id}, {"seat", largest->written}});
  }
}

void ask_watches(const model::KnowledgeBase& base, Asker& asker) {
  for (const auto& [id, watch] : base.watches) {
    if (watch.gasket_seat && !watch.gasket.empty()) {
      asker.ask(watch, "gasket-fit", {}, {{"series", watch.gasket.id()}, {"seat", watch.gasket_seat->written}});
    }
    if (watch.scratch && watch.crystal_size && watch.crystal_size->thickness) {
      asker.ask(watch, "scratch-ladder", {},
                {{"scratch", watch.scratch->written}, {"thickness", watch.crystal_size->thickness->written}});
    }
  }
}

void ask_liquids(const model::KnowledgeBase& base, Asker& asker) {
  for (const auto& [id, residue] : base.residues) {
    for (const auto& liquid : residue.answers) {
      asker.ask(residue, "crust-dose", liquid.id(), {{"residue", id}, {"liquid", liquid.id()}},
                {{"mass", asker.usual("usual-crust")}});
    }
  }
  for (const auto& [id, liquid] : base.chemistries)
    asker.ask(liquid, "fumes", {}, {{"liquid", id}}, {{"volume", asker.usual("usual-spill")}});
}

void ask_crystals(const model::KnowledgeBase& base, Asker& asker) {
  for (const auto& [id, material] : base.materials) {
    if (!material.strength) continue;
    asker.ask(material, "crystal-thickness", {}, {{"shape", "disc"}, {"load", "thumb"}, {"edge", "simple"}, {"material", id}},
              {{"diameter", asker.usual("usual-span")}});
  }
}

}  // namespace

model::FactBase usual_answers(const model::KnowledgeBase& base, const model::Tables& tables) {
  Asker asker(base, tables);
  ask_cells(base, asker);
  ask_gaskets(base, asker);
  ask_watches(base, asker);
  ask_liquids(base, asker);
  ask_crystals(base, asker);
  return asker.take();
}

}  // namespace benchleaf::derive
