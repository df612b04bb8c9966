// In: records and their fields. Out: what several rules ask of them in the same way.

#include "prove/shared.h"

#include <algorithm>
#include <array>
#include <variant>

#include "base/ascii.h"
#include "base/number.h"

namespace benchleaf::prove {
namespace {

using model::Node;
using Visit = std::function<void(const std::string&, const Node&)>;

/// What a record says about its own provenance is no statement about the world.
constexpr std::array<std::string_view, 4> kProvenance = {"id", "aliases", "basis", "conflicts"};

void walk(const model::Record& record, const std::string& path, const Node& node, const Visit& visit) {
  if (node.is_scalar()) {
    if (record.usable(path)) visit(path, node);
    return;
  }
  for (const auto& member : node.members) walk(record, path.empty() ? member.key : path + "." + member.key, member.value, visit);
  for (std::size_t i = 0; i < node.items.size(); ++i) walk(record, path + "." + std::to_string(i), node.items[i], visit);
}

}  // namespace

std::optional<double> stated_value(const model::Record& record, std::string_view path,
                                   const std::optional<base::Quantity>& quantity, base::Unit unit) {
  if (!quantity || !record.usable(path) || !quantity->has_value()) return std::nullopt;
  const auto value = quantity->value_in(unit);
  if (!value) return std::nullopt;
  return base::tidy(*value);
}

std::optional<base::Quantity> quantity_in(std::string_view text) {
  auto parsed = base::parse_quantity(text);
  const auto* quantity = std::get_if<base::Quantity>(&parsed);
  if (quantity == nullptr || !quantity->has_value()) return std::nullopt;
  return *quantity;
}

std::optional<base::Quantity> quantity_in(const Node* node) {
  if (node == nullptr || !node->quantity || !node->quantity->has_value()) return std::nullopt;
  return *node->quantity;
}

std::string shown(const std::optional<base::Quantity>& quantity) { return quantity ? base::terminal(*quantity) : "nothing"; }

std::string shown(double value, base::Unit unit) {
  return base::to_terminal(base::printed(base::shortest_text(base::tidy(value)), unit));
}

bool has_conflict(const model::Record& record, std::string_view field) {
  return std::any_of(record.conflicts.begin(), record.conflicts.end(), [&](const model::Conflict& conflict) {
    return field.substr(0, conflict.field.size()) == conflict.field &&
           (field.size() == conflict.field.size() || field[conflict.field.size()] == '.');
  });
}

void visit_scalars(const model::Record& record, const Visit& visit) {
  for (const auto& member : record.root.members) {
    if (std::find(kProvenance.begin(), kProvenance.end(), member.key) == kProvenance.end()) {
      walk(record, member.key, member.value, visit);
    }
  }
}

std::string field_of(std::string_view path) {
  std::string field;
  while (true) {
    const std::size_t dot = path.find('.');
    const std::string_view word = path.substr(0, dot);
    const bool place = !word.empty() && std::all_of(word.begin(), word.end(), base::is_digit);
    field += place ? std::string_view("*") : word;
    if (dot == std::string_view::npos) return field;
    field += '.';
    path.remove_prefix(dot + 1);
  }
}

std::string plain_words(std::string_view text) { return base::parted_words(text, ' '); }

const model::Record* record_of(const Proof& proof, model::Kind kind, const model::RecordRef& reference) {
  const model::Record* record = proof.base.find(reference);
  return record == nullptr || record->kind != kind ? nullptr : record;
}

std::optional<base::Interval> percent_of(const model::Chemistry& liquid, std::size_t part) {
  const auto& strength = liquid.made_of[part].strength;
  if (!strength || !strength->has_value() || !liquid.usable("made-of." + std::to_string(part) + ".strength")) return std::nullopt;
  for (const auto unit : {base::Unit::percent_by_mass, base::Unit::percent_by_volume, base::Unit::percent_mass_by_volume}) {
    if (const auto value = strength->in(unit)) return value;
  }
  return std::nullopt;
}

bool is_whole_book(const Proof& proof) { return proof.base.handbook.chapters.size() > 1; }

std::string did_you_mean(const std::string& nearest) { return nearest.empty() ? std::string() : "did you mean " + nearest + "?"; }

}  // namespace benchleaf::prove
