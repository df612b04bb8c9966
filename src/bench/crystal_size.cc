// In: seat= or old-crystal=, crystal= with its oversize, or ring= (wall=) of an L gasket, skirt= and material=. Out: the
// diameter to order, its ring, and for a press fit the pressure and stress that the oversize puts into it.

#include "bench/crystal_size.h"

#include <cmath>
#include <optional>
#include <string>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculation.h"
#include "standards/press_fit.h"

namespace benchleaf::bench {
namespace {

using base::Unit;

constexpr std::string_view kName = "crystal-size";
constexpr Plausible kSeat{5, 80};     // mm
constexpr Plausible kWall{0.1, 3};    // mm
constexpr Plausible kSkirt{0.2, 20};  // mm
constexpr Plausible kOversize{0, 1};  // mm
constexpr double kMostNamed = 8;      // sizes of a series between the ends

class Size {
 public:
  Size(Ask& ask, Answer& answer) : ask_(ask), answer_(answer) {}

  void run() {
    if (ask_.has("seat") == ask_.has("old-crystal")) {
      ask_.fail("seat", ask_.has("seat") ? "cannot stand beside old-crystal" : "is missing, and so is old-crystal");
      return;
    }
    const bool in_ring = ask_.has("ring") || ask_.has("wall");
    if (in_ring && ask_.has("crystal")) ask_.fail("crystal", "cannot stand beside ring: a crystal in a ring is no press fit");
    if (ask_.failed()) return;
    if (in_ring) {
      of_ring();
    } else {
      of_press_fit();
    }
    if (!ask_.failed()) close();
  }

 private:
  /// D = seat - 2 wall + oversize of a glass in its ring.
  void of_ring() {
    if (ask_.has("old-crystal")) {
      ask_.fail("old-crystal", "says nothing of a ring: measure the seat, or give the old crystal alone");
      return;
    }
    std::string ring;
    if (ask_.has("ring")) ring = ask_.record("ring", {"gasket"});
    if (ask_.failed()) return;
    if (!ring.empty() && ask_.word(ring, "profile") != "l") {
      ask_.fail("ring", ask_.title(ring) + " holds no crystal: an L gasket does");
      return;
    }
    const Amount wall =
        ask_.has("wall") ? ask_.amount("wall", Unit::millimetre, kWall) : ask_.needed("ring", ring, "wall", Unit::millimetre);
    const Amount seat = ask_.amount("seat", Unit::millimetre, kSeat);
    const Amount over_ring = ask_.row("bench-rules", "glass-over-ring", "value", Unit::millimetre);
    if (ask_.failed()) return;
    const Amount inside = over<2>({seat, wall}, [](const auto& p) { return p[0] - 2 * p[1]; });
    if (inside.low <= 0) {
      ask_.fail("wall", "leaves no room for a crystal");
      return;
    }
    answer_.formula("crystal = seat - 2 wall + oversize", "guides to fitting crystals", model::Trust::trade);
    answer_.put("ring-outside", seat, Unit::millimetre);
    answer_.put("ring-inside", inside, Unit::millimetre);
    answer_.put("crystal", inside + over_ring, Unit::millimetre);
    answer_.step(shown(seat, Unit::millimetre) + " - 2 x " + shown(wall, Unit::millimetre) + " + " +
                 shown(over_ring, Unit::millimetre));
    answer_.holds("An error of 0.2 mm is enough to lose the seal: try before you press.");
    answer_.beware(ask_.caution("crystal-size press"));
  }

  void of_press_fit() {
    std::string crystal;
    if (ask_.has("crystal")) crystal = ask_.record("crystal", {"crystal"});
    if (ask_.failed()) return;
    if (crystal.empty() && !ask_.has("oversize")) {
      ask_.fail("crystal", "is missing, and so are ring and oversize: how the crystal is held decides its size");
      return;
    }
    const Amount oversize = ask_.has("oversize") ? ask_.amount("oversize", Unit::millimetre, kOversize)
                                                 : ask_.needed("crystal", crystal, "oversize", Unit::millimetre);
    if (ask_.failed()) return;
    const Amount size = ask_.has("seat") ? by_seat(oversize) : by_old(oversize);
    if (ask_.failed()) return;
    answer_.put("crystal", size, Unit::millimetre);
    if (!crystal.empty()) name_sizes(crystal, size);
    if (ask_.has("skirt")) squeezed(crystal, size, oversize);
  }

  Amount by_seat(const Amount& oversize) {
    seat_ = ask_.amount("seat", Unit::millimetre, kSeat);
    answer_.formula("crystal = seat + oversize", "guides to fitting crystals; the oversize as the record has it",
                    model::Trust::trade);
    answer_.step("seat " + shown(*seat_, Unit::millimetre) + ", oversize " + shown(oversize, Unit::millimetre));
    return *seat_ + oversize;
  }

  /// An old crystal was its seat and its oversize when new, and has yielded since by no more than that.
  Amount by_old(const Amount& oversize) {
    const Amount old = ask_.amount("old-crystal", Unit::millimetre, kSeat);
    answer_.formula("crystal = old crystal, or as much more as it has yielded", "usage of the bench", model::Trust::memory);
    answer_.caution("", "An old crystal has yielded, and may have been the wrong one: measure the seat in three directions.");
    answer_.lacks("seat");
    Amount size = detail::resting_on({old, oversize});
    size.nominal = size.low = old.nominal;
    size.high = base::tidy(old.nominal + oversize.high);
    size.has_ends = true;
    return size;
  }

  /// The sizes of the series between the ends.
  void name_sizes(const std::string& crystal, const Amount& size) {
    const auto from = ask_.stated(crystal, "sizes.from", Unit::millimetre);
    const auto to = ask_.stated(crystal, "sizes.to", Unit::millimetre);
    const auto step = ask_.stated(crystal, "sizes.step", Unit::millimetre);
    if (!from || !to || !step || step->nominal <= 0) return;
    const double first = std::max(0.0, std::ceil((size.low - from->nominal) / step->nominal - 1e-6));
    std::string names;
    int named = 0;
    for (int i = 0; i < kMostNamed; ++i) {
      const double one = base::tidy(from->nominal + (first + i) * step->nominal);
      if (one > size.high + 1e-9 || one > to->nominal + 1e-9) break;
      Amount amount = detail::resting_on({*from, *step, size});
      amount.nominal = amount.low = amount.high = one;
      amount.has_ends = false;
      Amount over_seat = amount;
      if (seat_) over_seat.nominal = base::tidy(one - seat_->nominal);
      SizeItem item{crystal, figure_of(amount, 2, Unit::millimetre), Code::interference, {}, Code::within_band, false};
      if (seat_) item.share = figure_of(over_seat, 2, Unit::millimetre);
      answer_.add(std::move(item));
      names += (named++ == 0 ? "" : ", ") + shown(one, Unit::millimetre);
    }
    if (named == 0) {
      answer_.holds("No size of " + ask_.title(crystal) + " lies there: it is made from " + shown(*from, Unit::millimetre) +
                    " to " + shown(*to, Unit::millimetre) + ".");
      return;
    }
    answer_.decide("sizes", Code::within_band, names, detail::resting_on({*from, *to, *step, size})).record = crystal;
  }

  /// Pressure and hoop stress of a skirt that a stiff seat holds smaller than it is.
  void squeezed(const std::string& crystal, const Amount& size, const Amount& oversize) {
    const Amount skirt = ask_.amount("skirt", Unit::millimetre, kSkirt);
    std::string material;
    if (ask_.has("material")) material = ask_.record("material", {"material"});
    if (!ask_.has("material") && !crystal.empty()) material = ask_.word(crystal, "material");
    if (ask_.failed()) return;
    if (material.empty()) {
      ask_.fail("material", "is missing");
      return;
    }
    const Amount modulus = ask_.needed("material", material, "modulus", Unit::megapascal);
    const Amount poisson = ask_.needed("material", material, "poisson", Unit::one);
    const Amount strength = ask_.needed("material", material, "strength", Unit::megapascal);
    if (ask_.failed()) return;
    if (skirt.high > size.low / 2) {
      ask_.fail("skirt", "is thicker than half the crystal");
      return;
    }
    const auto fit = [](const auto& p) { return standards::press_fit(p[0], p[1], p[2], p[3], p[4]); };
    const std::array<Amount, 5> inputs = {size, skirt, oversize, modulus, poisson};
    const Amount pressure = over<5>(inputs, [&fit](const auto& p) { return fit(p).pressure; });
    const Amount hoop = over<5>(inputs, [&fit](const auto& p) { return fit(p).hoop; });
    answer_.formula("p = E d / (D ((D² + i²) / (D² - i²) - nu)), hoop = 2 p D² / (D² - i²), i = D - 2 skirt",
                    "Lamé's cylinder in a seat that does not yield", model::Trust::handbook);
    answer_.put("pressure", pressure, Unit::megapascal);
    answer_.put("hoop", hoop, Unit::megapascal);
    Output& output = answer_.put("safety", strength / hoop, Unit::one);
    output.printed += " times the stress";
    answer_.holds(
        "The stress at once. It yields to part of it within days, and the rest is what seals. The dome stiffens the rim.");
  }

  void close() {
    answer_.holds("Seats are bare, clean and measured in three directions; a bent bezel has three measures.");
    answer_.beware(ask_.caution("crystal-size water"));
  }

  Ask& ask_;
  Answer& answer_;
  std::optional<Amount> seat_;
};

Result crystal_size(const Inputs& inputs, const Context& context) {
  return calculate<Size>(crystal_size_calculator(), inputs, context);
}

}  // namespace

Calculator crystal_size_calculator() {
  return {kName,
          "which crystal a seat asks for, alone or in its ring",
          {{"seat", "bare seat in the bezel, inside", "30.2 mm", false},
           {"old-crystal", "outside of the old crystal, instead of the seat", "30.4 mm", false},
           {"crystal", "a press-fit crystal of the handbook", "acrylic-press-fit", false},
           {"oversize", "instead of that of a crystal", "0.2 mm", false},
           {"ring", "an L gasket of the handbook that holds it", "crystal-l-0-4", false},
           {"wall", "of an L gasket, where none is named", "0.4 mm", false},
           {"skirt", "thickness of the rim of a press-fit crystal, for its stress", "1.2 mm", false},
           {"material", "of the crystal, for its stress", "acrylic", false}},
          crystal_size,
          {{"crystal", "crystal", 2},
           {"sizes", "sizes of the series"},
           {"ring-outside", "ring, outside", 2},
           {"ring-inside", "ring, inside", 2},
           {"pressure", "presses on the seat with", 2, base::Rounding::up},
           {"hoop", "hoop stress", 1, base::Rounding::up},
           {"safety", "strength", 1, base::Rounding::down}},
          "seat or old-crystal; and crystal, oversize, ring or wall"};
}

}  // namespace benchleaf::bench
