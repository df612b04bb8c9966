#pragma once

#include <string>
#include <vector>

#include "model/knowledge_base.h"
#include "model/tables.h"

namespace benchleaf::query {

/// A name that a record goes by.
struct Name {
  enum class Role {
    number,       ///< trade or consumer number: 393, AG5
    designation,  ///< SR754W
    id,
    title,
    short_name,
    short_form,  ///< SR48, SR754, SR736SW: another form of the designation
    other_name,  ///< also called
    old_id,
    everyday,  ///< a row of the table everyday-words
    beside,    ///< the same, for what the word means beside a liquid
    digits,    ///< 754, 626SW, L1154: what is left of a designation
  };
  Role role = Role::title;
  std::string text;
};

/// How firmly a role names its record: 0 its own name, 1 another name, 2 a word of everyday speech, 3 a part of a name.
int tier_of(Name::Role role);

/// Trade number, consumer number or designation: what a cell is looked up by.
const std::string& cell_key(const model::Cell& cell);
/// `393 SR754W`; of any other record its title.
std::string title_of(const model::Record& record);

/// All names of a record but the everyday ones, the strongest first, each once.
std::vector<Name> names_of(const model::Record& record, const model::Tables& tables);

/// Whether records of a kind are looked up: those that the book shows.
bool is_looked_up(model::Kind kind);

}  // namespace benchleaf::query
