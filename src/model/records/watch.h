#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "model/record.h"

namespace benchleaf::model {

/// One watch on the bench, for a ticket.
struct Watch : Record {
  struct CrystalSize {
    std::optional<base::Quantity> diameter;  ///< or width
    std::optional<base::Quantity> length;
    std::optional<base::Quantity> thickness;
  };
  struct Case {
    std::string metal;    ///< `material/ID`
    std::string surface;  ///< `material/ID`
    std::string mark;
  };
  /// A slot of a procedure and the record that fills it.
  struct Filling {
    std::string slot;
    std::string record;  ///< `kind/id`
  };
  struct Job {
    std::string procedure;  ///< `procedure/ID`
    std::vector<Filling> fill;
  };

  std::string number;
  std::string module;   ///< `module/ID`
  std::string crystal;  ///< `crystal/ID`
  std::optional<CrystalSize> crystal_size;
  std::optional<base::Quantity> scratch;
  std::vector<std::string> cells_found;  ///< `cell/ID`
  std::string back;                      ///< snap, screwed, four-screws, none
  std::string gasket;                    ///< `gasket/ID`
  std::optional<base::Quantity> gasket_seat;
  std::optional<Case> case_metal;     ///< `case`
  std::vector<std::string> residues;  ///< `residue/ID`
  std::vector<std::string> inside;    ///< `part/ID`
  std::vector<std::string> symptoms;  ///< `symptom/ID`
  std::vector<Job> jobs;
  std::optional<base::Quantity> lug_width;
  std::string found;
};

}  // namespace benchleaf::model
