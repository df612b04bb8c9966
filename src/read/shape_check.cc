// In: one value and one schema. Out: how the value does not fit, and what the schema notes about it (references, values
// that need a basis). One slip for one mistake: after the first fault of a single value nothing more is said about it.
#include "read/shape_check.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

#include "base/number.h"
#include "base/utf8.h"
#include "read/canonical.h"
#include "read/quantity_check.h"
#include "read/shape_loader.h"
#include "read/shape_words.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;
using report::Rule;

template <typename T>
void append(std::vector<T>& to, std::vector<T>&& from) {
  to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

Slip slip_of(Slip::Weight weight, Rule rule, const Node& node, const std::string& path, std::string message,
             std::string hint = {}) {
  return {weight, rule, node.span, path, std::move(message), std::move(hint)};
}

bool is_whole(const Node& node) {
  std::optional<double> value = number_of(node);
  return value && std::floor(*value) == *value;
}

unsigned type_of(const Node& node) {
  switch (node.type) {
    case NodeType::null: return kNull;
    case NodeType::boolean: return kBoolean;
    case NodeType::integer: return kInteger;
    case NodeType::number: return is_whole(node) ? kInteger : kNumber;
    case NodeType::string: return kString;
    case NodeType::sequence: return kArray;
    case NodeType::mapping: return kObject;
  }
  return 0;
}

/// What to do about a value of the wrong type.
std::string type_hint(const Node& node, const Schema& schema) {
  const unsigned wanted = schema.types;
  const bool number = node.type == NodeType::integer || node.type == NodeType::number;
  if (number && !schema.quantities.empty() && schema.quantities.front() != base::Dimension::number) {
    return "write it with its unit, such as " + std::string(base::dimension_info(schema.quantities.front()).example);
  }
  bool could_quote = (wanted & kString) != 0 && node.is_scalar() && node.type != NodeType::null;
  if (could_quote) return "write it in quotes: \"" + node.text + "\"";
  if (node.type == NodeType::null) return "write a value, or delete the line";
  if (node.quoted && (wanted & (kNumber | kInteger | kBoolean)) != 0) return "take the quotes off";
  if ((wanted & kArray) != 0 && node.type == NodeType::string) return "write it in brackets: [" + node.text + "]";
  return {};
}

/// Keeps the first of equal texts.
void drop_repeats(std::vector<std::string>& texts) {
  std::set<std::string> seen;
  texts.erase(std::remove_if(texts.begin(), texts.end(), [&seen](const std::string& text) { return !seen.insert(text).second; }),
              texts.end());
}

}  // namespace

void Outcome::take(Outcome other) {
  append(slips, std::move(other.slips));
  append(unusable, std::move(other.unusable));
  append(references, std::move(other.references));
  append(basis_paths, std::move(other.basis_paths));
  append(quantities, std::move(other.quantities));
}

ShapeChecker::ShapeChecker(const Shape& shape, const std::vector<base::Span>& refused) : shape_(shape) {
  for (const base::Span& place : refused) refused_.emplace(place.line, place.column);
}

bool ShapeChecker::is_refused(const base::Span& place) const { return refused_.count({place.line, place.column}) > 0; }

Outcome ShapeChecker::check(SchemaId id, const Node& node, const std::string& path) const {
  Outcome out;
  const Schema& schema = at(id);
  if (node.is_scalar() && is_refused(node.span)) {
    out.unusable.push_back(path);
    return out;
  }
  if (schema.always) {
    if (!*schema.always) {
      out.slips.push_back(slip_of(Slip::Weight::type, Rule::shape_form, node, path, "nothing may stand here"));
    }
  } else if (schema.reference) {
    notes(schema, node, path, out);
    out.take(check(*schema.reference, node, path));
  } else if (check_type(id, node, path, out) && check_choices(schema, node, path, out)) {
    notes(schema, node, path, out);
    if (node.type == NodeType::string) check_text(id, node, path, out);
    if (node.type == NodeType::integer || node.type == NodeType::number) check_number(schema, node, path, out);
    if (node.type == NodeType::sequence) check_list(schema, node, path, out);
    if (node.type == NodeType::mapping) check_mapping(schema, node, path, out);
    if (out.fits() || !node.is_scalar()) check_combinations(id, node, path, out);
  }
  if (!out.fits() && node.is_scalar()) out.unusable.push_back(path);
  return out;
}

void ShapeChecker::notes(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  if (schema.needs_basis) out.basis_paths.push_back(path);
  if (!schema.quantities.empty() && node.type == NodeType::string) out.quantities.push_back({path, nullptr});
  if (!schema.record_kinds.empty() && node.type == NodeType::string) {
    out.references.push_back({path, node.text, schema.record_kinds, node.span});
  }
}

bool ShapeChecker::check_type(SchemaId id, const Node& node, const std::string& path, Outcome& out) const {
  const Schema& schema = at(id);
  if (schema.types == 0 || (schema.types & type_of(node)) != 0) return true;
  out.slips.push_back(slip_of(Slip::Weight::type, Rule::shape_type, node, path,
                              "found " + describe(node) + ", expected " + expectation(shape_, id), type_hint(node, schema)));
  out.unusable.push_back(path);
  return false;
}

bool ShapeChecker::check_choices(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  std::vector<Choice> allowed = schema.choices;
  if (schema.constant) allowed = {*schema.constant};
  if (allowed.empty()) return true;
  const std::string found = canonical(node);
  std::vector<std::string> shown;
  for (const Choice& choice : allowed) {
    if (choice.canonical == found) return true;
    shown.push_back(choice.shown);
  }
  std::string nearest = node.is_scalar() ? likely_word(node.text, shown) : std::string();
  out.slips.push_back(slip_of(Slip::Weight::value, Rule::shape_choice, node, path,
                              "found " + describe(node) + ", expected " + one_of(shown),
                              nearest.empty() ? std::string() : "did you mean " + nearest + "?"));
  out.unusable.push_back(path);
  return false;
}

void ShapeChecker::check_text(SchemaId id, const Node& node, const std::string& path, Outcome& out) const {
  const Schema& schema = at(id);
  const std::size_t length = base::count_code_points(node.text);
  auto add = [&](Rule rule, std::string message, std::string hint) {
    out.slips.push_back(slip_of(Slip::Weight::value, rule, node, path, std::move(message), std::move(hint)));
  };
  if (schema.min_length && length < *schema.min_length) {
    add(Rule::shape_length,
        "found a text of " + std::to_string(length) + " characters, expected at least " + std::to_string(*schema.min_length), {});
  } else if (schema.max_length && length > *schema.max_length) {
    add(Rule::shape_length,
        "found a text of " + std::to_string(length) + " characters, expected at most " + std::to_string(*schema.max_length), {});
  } else if (!schema.quantities.empty()) {
    auto read = read_quantity(node, schema.quantities);
    if (auto* fault = std::get_if<QuantityFinding>(&read)) {
      add(fault->rule, std::move(fault->message), std::move(fault->hint));
      out.slips.back().where = fault->where;
    } else {
      out.quantities.back().value = std::make_shared<const base::Quantity>(std::move(std::get<base::Quantity>(read)));
    }
  } else if (schema.pattern && !schema.pattern->found_in(node.text)) {
    add(Rule::shape_pattern, "found " + describe(node) + ", expected " + expectation(shape_, id), schema.description);
  }
}

void ShapeChecker::check_number(const Schema& schema, const Node& node, const std::string& path, Outcome& out) const {
  const double value = number_of(node).value_or(0);
  auto outside = [&](const std::string& bound, double limit) {
    out.slips.push_back(slip_of(Slip::Weight::value, Rule::shape_range, node, path,
                                "found " + describe(node) + ", expected " + bound + " " + base::shortest_text(limit)));
  };
  if (schema.minimum && value < *schema.minimum) return outside("at least", *schema.minimum);
  if (schema.maximum && value > *schema.maximum) return outside("at most", *schema.maximum);
  if (schema.exclusive_minimum && value <= *schema.exclusive_minimum) return outside("more than", *schema.exclusive_minimum);
  if (schema.exclusive_maximum && value >= *schema.exclusive_maximum) return outside("less than", *schema.exclusive_maximum);
  if (!schema.multiple_of) return;
  // 0.0075 / 0.0001 is 75.00000000000001 in binary; a quotient that near to a whole number is one
  const double quotient = value / *schema.multiple_of;
  const double nearest = std::round(quotient);
  const bool whole = std::isfinite(quotient) && std::abs(quotient - nearest) <= 1e-9 * std::max(1.0, std::abs(nearest));
  if (!whole) outside("a multiple of", *schema.multiple_of);
}

void ShapeChecker::check_combinations(SchemaId id, const Node& node, const std::string& path, Outcome& out) const {
  const Schema& schema = at(id);
  for (SchemaId inner : schema.all_of) out.take(check(inner, node, path));
  if (!schema.any_of.empty()) any_form(id, schema.any_of, false, node, path, out);
  if (!schema.one_of.empty()) any_form(id, schema.one_of, true, node, path, out);
  if (schema.negated && fits(*schema.negated, node)) {
    out.slips.push_back(slip_of(Slip::Weight::value, Rule::shape_form, node, path,
                                "found " + describe(node) + ", which may not stand here", schema.description));
  }
  if (!schema.condition) return;
  const std::optional<SchemaId>& branch = fits(*schema.condition, node) ? schema.consequence : schema.alternative;
  if (branch) out.take(check(*branch, node, path));
}

void ShapeChecker::any_form(SchemaId id, const std::vector<SchemaId>& forms, bool only_one, const Node& node,
                            const std::string& path, Outcome& out) const {
  std::vector<Outcome> outcomes;
  std::size_t fitting = 0;
  for (SchemaId form : forms) {
    outcomes.push_back(check(form, node, path));
    if (!outcomes.back().fits()) continue;
    ++fitting;
    if (fitting == 1 || !only_one) out.take(outcomes.back());
  }
  if (fitting == 0) return best_form(id, std::move(outcomes), node, path, out);
  if (!only_one || fitting == 1) return;
  out.slips.push_back(slip_of(Slip::Weight::value, Rule::shape_form, node, path,
                              "found " + describe(node) + ", which fits more than one of the forms allowed here"));
}

/// Speaks of the form that was meant: the one whose type fits, else the one whose value does; where several are left,
/// the one with the fewest slips inside; where only the value itself is wrong, of all forms at once.
void ShapeChecker::best_form(SchemaId id, std::vector<Outcome> outcomes, const Node& node, const std::string& path,
                             Outcome& out) const {
  auto worst = [&path](const Outcome& outcome) {
    Slip::Weight weight = Slip::Weight::inside;
    for (const Slip& slip : outcome.slips) {
      if (slip.path == path) weight = std::min(weight, slip.weight);
    }
    return weight;
  };
  Slip::Weight best = Slip::Weight::type;
  for (const Outcome& outcome : outcomes) best = std::max(best, worst(outcome));
  outcomes.erase(std::remove_if(outcomes.begin(), outcomes.end(), [&](const Outcome& one) { return worst(one) != best; }),
                 outcomes.end());
  if (outcomes.size() > 1 && best != Slip::Weight::inside) {
    out.slips.push_back(
        slip_of(best, Rule::shape_form, node, path, "found " + describe(node) + ", expected " + expectation(shape_, id)));
    out.unusable.push_back(path);
    return;
  }
  auto fewest = std::min_element(outcomes.begin(), outcomes.end(),
                                 [](const Outcome& a, const Outcome& b) { return a.slips.size() < b.slips.size(); });
  out.take(std::move(*fewest));
}

Shape::Shape() = default;
Shape::Shape(Shape&&) noexcept = default;
Shape& Shape::operator=(Shape&&) noexcept = default;
Shape::~Shape() = default;

std::optional<Shape> Shape::compile(const Node& root, report::Findings& findings) { return ShapeLoader(root, findings).load(); }

ShapeReport check_shape(const Shape& shape, const Node& root, const std::vector<base::Span>& refused,
                        report::Findings& findings) {
  Outcome outcome = ShapeChecker(shape, refused).check(0, root, {});
  std::set<std::tuple<int, int, std::string>> told;
  for (Slip& slip : outcome.slips) {
    const bool is_new = told.emplace(slip.where.line, slip.where.column, slip.message).second;
    if (!is_new) continue;  // two parts of the shape said the same
    findings.add(slip.rule, slip.where, std::move(slip.message), std::move(slip.hint));
  }
  drop_repeats(outcome.unusable);
  return {std::move(outcome.unusable), std::move(outcome.references), std::move(outcome.basis_paths),
          std::move(outcome.quantities)};
}

}  // namespace benchleaf::read
