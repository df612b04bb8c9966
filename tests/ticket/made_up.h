// Out: watches made up from a fixed seed, each field there or not.
#pragma once

#include <random>
#include <set>
#include <string>
#include <vector>

#include "base/number.h"
#include "ticket/planned.h"

namespace benchleaf::test {

/// Watches made up at random: each field is there or not, and what is there may contradict the rest.
class MadeUp {
 public:
  explicit MadeUp(unsigned seed) : random_(seed) {}

  model::Watch watch(int number) {
    const auto& records = real_book().records;
    model::Watch made;
    made.kind = model::Kind::watch;
    made.id = "made-up-" + std::to_string(number);
    made.title = "Made up " + std::to_string(number);
    if (coin()) made.number = "M-" + std::to_string(number);
    if (coin()) made.module = one_of(records.modules);
    if (coin()) made.crystal = one_of(records.crystals);
    if (coin())
      made.crystal_size = model::Watch::CrystalSize{length(15, 36), coin() ? length(15, 36) : std::nullopt, length(0.4, 2.5)};
    if (coin()) made.scratch = length(0.002, 0.4);
    if (coin()) made.cells_found = some_of(records.cells, 2);
    if (coin()) made.back = std::vector<std::string>{"snap", "screwed", "four-screws", "none"}[below(4)];
    if (coin()) made.gasket = one_of(records.gaskets);
    if (coin()) made.gasket_seat = length(6, 42);
    if (coin()) {
      made.case_metal = model::Watch::Case{{}, {}, {}};
      if (coin()) made.case_metal->metal = one_of(records.materials);
      if (coin()) made.case_metal->surface = one_of(records.materials);
    }
    if (coin()) made.residues = some_of(records.residues, 3);
    if (coin()) made.inside = some_of(records.parts, 5);
    if (coin()) made.symptoms = some_of(records.symptoms, 2);
    if (coin()) made.lug_width = length(8, 24);
    if (coin()) made.found = "made up";
    add_sightings(made);
    if (coin()) {
      for (const model::RecordRef& procedure : some_of(records.procedures, 6)) made.jobs.push_back({procedure, {}});
      if (coin())
        made.jobs.push_back({model::RecordRef("procedure/polish-a-crystal"),
                             {{"crystal", model::RecordRef(coin() ? "part/acrylic-crystal" : "part/loose-acrylic-crystal")}}});
    }
    return made;
  }

  bool coin() { return below(3) > 0; }

 private:
  /// What the bench sees where it does not know.
  void add_sightings(model::Watch& made) {
    const auto& records = real_book().records;
    if (coin()) made.display = word({"lcd", "led", "hands"});
    if (coin()) made.crystal_signs = {word({"soft", "hard"}), word({"warm", "cool"})};
    if (coin()) made.nail = word({"catches", "seen-only"});
    if (coin()) made.cell_count = static_cast<int>(below(4)) + 1;
    if (coin()) made.cell_size = model::Watch::CellSize{length(4, 25), length(1, 6)};
    if (coin()) made.old_gasket = {length(6, 42), coin() ? length(0.7, 0.7) : length(0.71, 0.79)};
    if (coin()) made.groove = {length(0.3, 0.9), length(0.5, 1.5)};
    if (coin())
      made.crust = model::Watch::Crust{word({"white", "grey", "green", "black", "brown", "oily"}), "at the leaf",
                                       coin() ? "" : std::string(below(2) == 0 ? "1979" : "2022")};
    if (coin()) made.lume = word({"none", "some"});
    if (coin()) made.wants = "worn again";
    if (coin()) made.wishes = {word({"new-cell", "run", "clear-crystal", "clean-case", "seal", "keep-as-is"})};
    if (coin()) made.charges = word({"no", "no", "light", "motion"});
    if (coin()) made.print = word({"none", "underside"});
    if (coin()) made.pushers = model::Watch::Pushers{2, below(3) == 0 ? 1 : 0, below(3) == 0 ? 1 : 0};
    if (coin()) return;
    made.on_hand = model::Watch::OnHand{{"P400", "P1200"}, some_of(records.chemistries, 6), {}};
    made.on_hand->gaskets.push_back({one_of(records.gaskets), length(6, 42)});
  }
  std::string word(const std::vector<std::string>& words) { return words[below(words.size())]; }
  std::size_t below(std::size_t end) { return random_() % end; }
  template <class Records>
  model::RecordRef one_of(const Records& records) {
    return std::next(records.begin(), static_cast<std::ptrdiff_t>(below(records.size())))->second.reference();
  }
  template <class Records>
  model::References some_of(const Records& records, std::size_t most) {
    std::set<model::RecordRef> some;
    for (std::size_t i = below(most) + 1; i > 0; --i) some.insert(one_of(records));
    return {some.begin(), some.end()};
  }
  std::optional<base::Quantity> length(double from, double to) {
    const double share = static_cast<double>(below(1000)) / 1000;
    const auto read = base::parse_quantity(base::fixed_text(from + share * (to - from), 3, base::Trailing::cut) + " mm");
    const auto* quantity = std::get_if<base::Quantity>(&read);
    return quantity == nullptr ? std::nullopt : std::optional(*quantity);
  }

  std::mt19937 random_;
};

}  // namespace benchleaf::test
