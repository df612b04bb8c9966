#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// One watch on the bench, for a ticket. What is not known of it is empty.
struct Watch : Record {
  struct CrystalSize {
    std::optional<base::Quantity> diameter;  ///< or width
    std::optional<base::Quantity> length;
    std::optional<base::Quantity> thickness;
  };
  /// What tells acrylic from glass.
  struct CrystalSigns {
    std::string scratches;  ///< soft, hard
    std::string feels;      ///< warm, cool
  };
  struct CellSize {
    std::optional<base::Quantity> diameter;
    std::optional<base::Quantity> height;
  };
  struct OldGasket {
    std::optional<base::Quantity> inside;
    std::optional<base::Quantity> section;
  };
  struct Groove {
    std::optional<base::Quantity> depth;
    std::optional<base::Quantity> width;
  };
  struct Case {
    RecordRef metal;    ///< `material/ID`
    RecordRef surface;  ///< `material/ID`
    std::string mark;
  };
  /// A leak by its look.
  struct Crust {
    std::string colour;  ///< none, white, grey, green, black, brown, oily
    std::string place;
    std::string bought;  ///< year of the cell that leaked, or empty
  };
  struct GasketAtHand {
    RecordRef series;  ///< `gasket/ID`
    std::optional<base::Quantity> inside;
  };
  struct OnHand {
    std::vector<std::string> grades;
    References liquids;  ///< `chemistry/ID`
    std::vector<GasketAtHand> gaskets;
  };
  struct Pushers {
    std::optional<int> count;
    int missing = 0;
    int stuck = 0;
  };
  /// An earlier visit to the bench. What was not noted is empty.
  struct Visit {
    std::string date;
    RecordRef cell;  ///< `cell/ID`
    std::optional<base::Quantity> old_voltage;
    std::optional<base::Quantity> new_voltage;
    std::optional<base::Quantity> draw;
    std::string rate;    ///< seconds a day, `+0.3`
    std::string gasket;  ///< new, kept
    std::string done;
    std::string left;
  };
  /// A slot of a procedure and the record that fills it.
  struct Filling {
    std::string slot;
    RecordRef record;  ///< `kind/id`
  };
  struct Job {
    RecordRef procedure;  ///< `procedure/ID`
    std::vector<Filling> fill;
  };

  std::string number;
  RecordRef module;     ///< `module/ID`
  std::string display;  ///< lcd, led, hands
  RecordRef crystal;    ///< `crystal/ID`
  CrystalSigns crystal_signs;
  std::optional<CrystalSize> crystal_size;
  std::optional<base::Quantity> scratch;
  std::string nail;        ///< catches, seen-only
  References cells_found;  ///< `cell/ID`
  int cell_count = 0;
  std::optional<CellSize> cell_size;
  std::string back;  ///< snap, screwed, four-screws, none
  std::optional<Pushers> pushers;
  std::string charges;  ///< no, light, motion
  std::string print;    ///< on the underside of the crystal: none, underside
  RecordRef gasket;     ///< `gasket/ID`
  std::optional<base::Quantity> gasket_seat;
  OldGasket old_gasket;
  Groove groove;
  std::optional<Case> case_metal;  ///< `case`
  References residues;             ///< `residue/ID`
  std::optional<Crust> crust;
  References inside;    ///< `part/ID`
  std::string lume;     ///< none, some
  References symptoms;  ///< `symptom/ID`
  std::vector<Job> jobs;
  std::optional<base::Quantity> lug_width;
  std::string found;
  std::string wants;
  std::vector<std::string> wishes;  ///< new-cell, run, clear-crystal, clean-case, seal, keep-as-is
  std::vector<Visit> visits;        ///< the oldest first
  std::optional<OnHand> on_hand;
};

}  // namespace benchleaf::model
