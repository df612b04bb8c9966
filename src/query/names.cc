// In: a record. Out: the names that it goes by.
#include "query/names.h"

#include <algorithm>

#include "standards/cell_code.h"
#include "standards/designation.h"

namespace benchleaf::query {

namespace {

using Role = Name::Role;

class NameList {
 public:
  void add(Role role, const std::string& text) {
    const bool known = std::any_of(names_.begin(), names_.end(), [&text](const Name& name) { return name.text == text; });
    if (!text.empty() && !known) names_.push_back({role, text});
  }
  void add(Role role, const std::vector<std::string>& texts) {
    for (const std::string& text : texts) add(role, text);
  }
  std::vector<Name> take() { return std::move(names_); }

 private:
  std::vector<Name> names_;
};

/// Short and long form of a designation, with and without the letters behind the figures, and what is left of it.
void add_forms(const model::Cell& cell, const model::Tables& tables, NameList& names) {
  const auto parsed = standards::parse_designation(cell.designation);
  const auto* designation = std::get_if<standards::Designation>(&parsed);
  if (designation == nullptr) return;
  std::vector<std::string> sizes{designation->size};
  const auto read = standards::read_cell_code(*designation, tables);
  if (const auto* code = std::get_if<standards::CellCode>(&read)) {
    sizes.push_back(code->long_size);
    if (code->short_form != nullptr) sizes.push_back(code->short_form->short_size);
  }
  for (const std::string& size : sizes) {
    names.add(Role::short_form, designation->with_size(size) + designation->suffix);
    names.add(Role::short_form, designation->with_size(size));
  }
  if (designation->size.size() < 3) sizes.erase(sizes.begin());
  for (const std::string& size : sizes) {
    if (size.size() < 3) continue;  // `44` alone says nothing
    names.add(Role::digits, size + designation->suffix);
    names.add(Role::digits, size);
    names.add(Role::digits, designation->system + size + designation->suffix);
  }
}

void add_cell(const model::Cell& cell, const model::Tables& tables, NameList& names) {
  names.add(Role::number, cell.trade_number);
  names.add(Role::number, cell.consumer_number);
  names.add(Role::designation, cell.designation);
  names.add(Role::short_form, cell.short_form);
  add_forms(cell, tables, names);
}

}  // namespace

int tier_of(Role role) {
  switch (role) {
    case Role::number:
    case Role::designation:
    case Role::id:
    case Role::title:
    case Role::short_name: return 0;
    case Role::short_form:
    case Role::other_name:
    case Role::old_id: return 1;
    case Role::everyday:
    case Role::beside: return 2;
    case Role::digits: break;
  }
  return 3;
}

const std::string& cell_key(const model::Cell& cell) {
  if (!cell.trade_number.empty()) return cell.trade_number;
  return cell.consumer_number.empty() ? cell.designation : cell.consumer_number;
}

std::string title_of(const model::Record& record) {
  if (record.kind != model::Kind::cell) return record.title;
  const auto& cell = static_cast<const model::Cell&>(record);
  return cell_key(cell) == cell.designation ? cell.designation : cell_key(cell) + " " + cell.designation;
}

bool is_looked_up(model::Kind kind) {
  const bool has_no_name = kind == model::Kind::source || kind == model::Kind::watch || kind == model::Kind::stock;
  return !has_no_name && !model::is_of_ticket(kind);
}

std::vector<Name> names_of(const model::Record& record, const model::Tables& tables) {
  NameList names;
  if (record.kind == model::Kind::cell)
    add_cell(static_cast<const model::Cell&>(record), tables, names);
  else
    names.add(Role::title, record.title);
  names.add(Role::id, record.id);
  switch (record.kind) {
    case model::Kind::chemistry: {
      const auto& liquid = static_cast<const model::Chemistry&>(record);
      names.add(Role::short_name, liquid.short_name);
      names.add(Role::other_name, liquid.also_called);
      break;
    }
    case model::Kind::abrasive: {
      const auto& abrasive = static_cast<const model::Abrasive&>(record);
      for (const auto& grade : abrasive.grades) {
        const std::size_t figures = grade.grade.find_first_of("0123456789");
        if (figures != 0) names.add(Role::other_name, grade.grade);  // a bare number is of no scale
        if (figures != std::string::npos) names.add(Role::other_name, abrasive.scale + " " + grade.grade.substr(figures));
      }
      break;
    }
    case model::Kind::residue: names.add(Role::short_name, static_cast<const model::Residue&>(record).short_name); break;
    case model::Kind::substance: names.add(Role::other_name, static_cast<const model::Substance&>(record).also_called); break;
    case model::Kind::material: {
      const auto& material = static_cast<const model::Material&>(record);
      names.add(Role::short_name, material.short_name);
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

}  // namespace benchleaf::query
