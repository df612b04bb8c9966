#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "compose/uses.h"
#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "report/finding.h"

namespace benchleaf::compose {

/// A trust sign: how far, and whether the value was worked out.
struct Sign {
  model::Trust trust = model::Trust::memory;
  bool derived = false;
};

/// Paper is short and leads to pages; the screen says all and is searched.
enum class Medium { screen, paper };

/// Source records to their numbers in the list of sources, from 1.
using SourceNumbers = std::map<std::string, int, std::less<>>;

/// What lies ready while the book is written; nothing in it changes but the findings.
struct Desk {
  const model::KnowledgeBase& records;
  const model::Tables& tables;
  const derive::Derived& derived;
  const Uses& uses;
  report::Findings& findings;
  Medium medium = Medium::screen;
  const SourceNumbers* source_numbers = nullptr;  ///< of paper

  bool on_paper() const { return medium == Medium::paper; }
  /// The fact of a record at a path, or nullptr.
  const model::Fact* fact(const model::Record& record, std::string_view path) const;
  /// Sign of a value: that of its fact, else of the basis stated for it, else recalled.
  Sign sign(const model::Record& record, std::string_view path) const;
  /// Sign of what a record states itself: that of its basis, else recalled.
  static Sign basis_sign(const model::Record& record, std::string_view path);
  /// `cell/ID`, or nullptr where the reference is to something else.
  const model::Cell* cell(std::string_view reference) const;
  /// What a record is called in running text: `393 SR754W`, `isopropyl alcohol`; the reference where it is none.
  std::string name(std::string_view reference) const;
};

/// `silver-oxide` to `silver oxide`.
std::string plain_words(std::string_view id);
/// As one text, a comma between them where nothing else is asked for.
std::string listed(const std::vector<std::string>& words, std::string_view between = ", ");
/// `lcd` to `liquid crystal display`.
std::string display_words(std::optional<model::Display> display);
/// What a value is called beside its sign: `size.diameter` and `size.height` are both `size`.
std::string field_words(std::string_view path);
/// With a capital at the start.
std::string sentence_case(std::string_view text);
/// What a cell is looked up by: its trade number, else its consumer number, else its designation.
const std::string& cell_key(const model::Cell& cell);
/// Lithium cells have other caps and other voltages than the rest.
bool is_lithium(const model::Cell& cell);

}  // namespace benchleaf::compose
