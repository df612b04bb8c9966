#pragma once

#include <string>
#include <vector>

#include "derive/derive.h"
#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// A name by which a record is looked up.
struct Name {
  enum class Role {
    number,  ///< trade or consumer number
    designation,
    short_form,
    title,
    other_name,  ///< also called
    old_id,
  };
  Role role = Role::title;
  std::string text;
};

/// All names of a record, the strongest first, each once.
std::vector<Name> names_of(const model::Record& record, const model::FactBase& facts);

/// Words that stay on one line.
std::string unbroken(std::string words);

/// A name that fits the head of a column: the short one, else the title.
std::string short_name(const model::Record& record);
/// The same in the middle of a line; `EPDM` stays as it is.
std::string inner_name(const model::Record& record);

}  // namespace benchleaf::compose
