// In: a record and its facts. Out: the names by which it is looked up, for the index and the search.
#include "compose/names.h"

#include <algorithm>

namespace benchleaf::compose {

namespace {

class NameList {
 public:
  void add(Name::Role role, const std::string& text) {
    const bool known = std::any_of(names_.begin(), names_.end(), [&text](const Name& name) { return name.text == text; });
    if (!text.empty() && !known) names_.push_back({role, text});
  }
  void add(Name::Role role, const std::vector<std::string>& texts) {
    for (const std::string& text : texts) add(role, text);
  }
  std::vector<Name> take() { return std::move(names_); }

 private:
  std::vector<Name> names_;
};

void add_cell(const model::Cell& cell, const model::FactBase& facts, NameList& names) {
  names.add(Name::Role::number, cell.trade_number);
  names.add(Name::Role::number, cell.consumer_number);
  names.add(Name::Role::designation, cell.designation);
  names.add(Name::Role::short_form, cell.short_form);
  for (const char* output : {"#cell-decode.short-form", "#cell-decode.long-form"}) {
    const model::Fact* fact = facts.find(cell.reference() + output);
    if (fact != nullptr) names.add(Name::Role::short_form, fact->printed);
  }
}

}  // namespace

std::vector<Name> names_of(const model::Record& record, const model::FactBase& facts) {
  NameList names;
  using Role = Name::Role;
  if (record.kind == model::Kind::cell)
    add_cell(static_cast<const model::Cell&>(record), facts, names);
  else
    names.add(Role::title, record.title);
  switch (record.kind) {
    case model::Kind::chemistry: names.add(Role::other_name, static_cast<const model::Chemistry&>(record).also_called); break;
    case model::Kind::substance: names.add(Role::other_name, static_cast<const model::Substance&>(record).also_called); break;
    case model::Kind::material: {
      const auto& material = static_cast<const model::Material&>(record);
      names.add(Role::other_name, material.short_name);
      names.add(Role::other_name, material.also_called);
      break;
    }
    case model::Kind::term: {
      const auto& term = static_cast<const model::Term&>(record);
      names.add(Role::other_name, term.also);
      names.add(Role::other_name, term.american);
      break;
    }
    default: break;
  }
  for (const model::Alias& alias : record.aliases) names.add(Role::old_id, alias.id);
  return names.take();
}

std::string unbroken(std::string words) {
  for (std::size_t at = words.find(' '); at != std::string::npos; at = words.find(' ', at)) words.replace(at, 1, "\u00A0");
  return words;
}

std::string short_name(const model::Record& record) {
  const std::string* name = nullptr;
  if (record.kind == model::Kind::chemistry) name = &static_cast<const model::Chemistry&>(record).short_name;
  if (record.kind == model::Kind::residue) name = &static_cast<const model::Residue&>(record).short_name;
  if (record.kind == model::Kind::material) name = &static_cast<const model::Material&>(record).short_name;
  return name == nullptr || name->empty() ? record.title : *name;
}

std::string inner_name(const model::Record& record) {
  std::string name = short_name(record);
  const bool capital = !name.empty() && name[0] >= 'A' && name[0] <= 'Z';
  if (capital && name.size() > 1 && name[1] >= 'a' && name[1] <= 'z') name[0] = static_cast<char>(name[0] - 'A' + 'a');
  return name;
}

}  // namespace benchleaf::compose
