#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "base/span.h"
#include "model/fact.h"
#include "model/step_tables.h"

namespace benchleaf::model {

/// A published table as its file has it: the form for facts and for the browser. All cells are words.
struct PublishedTable {
  struct Column {
    std::string name;
    std::string title;
    std::string quantity;  ///< dimension of its cells, or empty for words
  };
  struct Row {
    std::string key;
    std::map<std::string, std::string, std::less<>> cells;  ///< by column name
    Trust trust = Trust::memory;                            ///< of the row, else of the table
    std::string source;                                     ///< `source/ID`, or empty; of the row, else of the table
    std::string note;
    base::Span span;
    std::map<std::string, base::Span, std::less<>> spans;  ///< of the cells
  };

  std::string name;
  std::string title;
  std::string key;  ///< name of the key column
  std::string source;
  std::string publication;
  std::string edition;
  Trust trust = Trust::memory;
  std::string date_read;
  std::string transcription;  ///< single, double
  std::string note;
  std::vector<Column> columns;
  std::vector<Row> rows;  ///< in file order, keys unique
  base::FileId file = base::kNoFile;
};

struct CellSystem {
  std::string letter;  ///< S
  std::string system;  ///< silver-oxide
  std::string name;
  base::Quantity nominal;
  std::optional<base::Quantity> end;  ///< none where the table does not state it
  base::Quantity lowest;              ///< nominal voltages that records may state
  base::Quantity highest;
  bool withdrawn = false;
  RowOrigin origin;
};

struct CellDiameter {
  int code = 0;
  base::Quantity diameter;   ///< the largest
  base::Quantity tolerance;  ///< the same with its tolerance
  RowOrigin origin;
};

struct CellShortForm {
  std::string short_size;  ///< 48
  std::string long_size;   ///< 754
  int code = 0;
  int tenths = 0;  ///< height in tenths of a millimetre, cut off
  RowOrigin origin;
};

struct CellSuffix {
  std::string letter;
  std::string meaning;
  std::string electrolyte;
  RowOrigin origin;
};

struct CellDrain {
  std::string suffix;  ///< SW
  std::string drain;   ///< low
  RowOrigin origin;
};

struct CellSizeLimit {
  std::string size;  ///< R48
  base::Quantity diameter_max, diameter_min, height_max, height_min;
  RowOrigin origin;
};

struct SafetySign {
  std::string number;  ///< W001
  std::string title;
  std::string family;
  RowOrigin origin;
};

struct SignalWord {
  std::string word;
  std::string severity;
  std::string likelihood;
  std::string meaning;
  std::string colour;
  RowOrigin origin;
};

/// A cell of a table that does not say what its column wants, or a table that is missing (row -1).
struct TableFault {
  std::string table;
  int row = -1;
  std::string column;
  std::string message;
};

/// The published tables, typed where calculators look into them, and all of them in their general form.
struct Tables {
  std::vector<PublishedTable> published;  ///< by name
  std::vector<CellSystem> cell_systems;
  std::vector<CellDiameter> cell_diameters;
  std::vector<CellShortForm> cell_short_forms;
  std::vector<CellSuffix> cell_suffixes;
  std::vector<CellDrain> cell_drains;
  std::vector<CellSizeLimit> cell_size_limits;
  std::vector<SafetySign> safety_signs;
  std::vector<SignalWord> signal_words;
  std::vector<ReactiveGroup> reactive_groups;
  std::vector<ReactivePair> reactive_pairs;
  std::vector<HazardCaution> hazard_cautions;
  std::vector<StepWord> step_words;
  std::vector<MercuryFree> mercury_free;

  const PublishedTable* find(std::string_view name) const;
  const CellSystem* cell_system(std::string_view letter) const;
  const CellSystem* cell_system_by_id(std::string_view system) const;
  const CellDiameter* cell_diameter(int code) const;
  const CellShortForm* cell_short_form(std::string_view short_size) const;
  const CellSuffix* cell_suffix(std::string_view letter) const;
  const CellDrain* cell_drain(std::string_view suffix) const;
  const CellSizeLimit* cell_size_limit(std::string_view size) const;
  const SafetySign* safety_sign(std::string_view number) const;
  const SignalWord* signal_word(std::string_view word) const;
  const HazardCaution* hazard_caution(std::string_view hazard) const;
  const MercuryFree* mercury_free_from(std::string_view system) const;
};

/// General form to typed form; a row with a fault is left out of its typed list.
Tables make_tables(std::vector<PublishedTable> published, std::vector<TableFault>& faults);

}  // namespace benchleaf::model
