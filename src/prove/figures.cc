// Rules about figures that stand in two places: ends of a range, a title and its record, a link and the cell it leads to, a
// record and its copy.

#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/ascii.h"
#include "base/number.h"
#include "base/quantity.h"
#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Node;
using model::Record;
using report::Rule;

/// The two names that ends of a range have in records.
constexpr std::pair<std::string_view, std::string_view> kEnds[] = {{"from", "to"}, {"from", "below"}};

void check_ends(const Proof& proof, const Record& record, const std::string& path, const Node& node) {
  for (const auto& [low_name, high_name] : kEnds) {
    const auto low = quantity_in(node.find(low_name));
    const auto high = quantity_in(node.find(high_name));
    const std::string low_path = path + "." + std::string(low_name), high_path = path + "." + std::string(high_name);
    if (!low || !high || !record.usable(low_path) || !record.usable(high_path)) continue;
    const auto high_value = high->in(low->unit);
    if (!high_value || base::tidy(low->stated.nominal) < base::tidy(high_value->nominal)) continue;
    proof.findings
        .add(Rule::range_order, record.span_of(high_path),
             "found " + base::terminal(*high) + " as the end, but the range begins at " + base::terminal(*low),
             "exchange or correct the two ends")
        .notes.push_back({record.span_of(low_path), "where the range begins"});
  }
  const auto step = quantity_in(node.find("step"));
  const auto low = quantity_in(node.find("from")), high = quantity_in(node.find("to"));
  if (!step || !low || !high || !record.usable(path + ".step")) return;
  const auto from = low->value_in(step->unit), to = high->value_in(step->unit);
  if (!from || !to || *to <= *from) return;
  const double steps = base::tidy((*to - *from) / step->stated.nominal);
  constexpr double kNoise = 1e-6;
  if (steps >= 1 && std::abs(steps - std::round(steps)) < kNoise) return;
  proof.findings.add(
      Rule::range_order, record.span_of(path + ".step"),
      "steps of " + base::terminal(*step) + " do not lead from " + base::terminal(*low) + " to " + base::terminal(*high),
      "correct the step or an end");
}

void walk_ranges(const Proof& proof, const Record& record, const std::string& path, const Node& node) {
  if (node.type == model::NodeType::mapping && !path.empty()) check_ends(proof, record, path, node);
  const std::string before = path.empty() ? std::string() : path + ".";
  for (const auto& member : node.members) walk_ranges(proof, record, before + member.key, member.value);
  for (std::size_t i = 0; i < node.items.size(); ++i) walk_ranges(proof, record, before + std::to_string(i), node.items[i]);
}

/// Figures with a unit in a title: `Round gasket, 0.3 mm`.
std::vector<base::Quantity> quantities_in_title(std::string_view title) {
  std::vector<std::string> words;
  std::string word;
  for (const char c : std::string(title) + " ") {
    if (c == ' ' || c == ',' || c == ';') {
      if (!word.empty()) words.push_back(std::move(word));
      word.clear();
    } else {
      word += c;
    }
  }
  std::vector<base::Quantity> found;
  for (std::size_t i = 0; i + 1 < words.size(); ++i) {
    if (!base::is_digit(words[i].front())) continue;
    if (const auto quantity = quantity_in(words[i] + " " + words[i + 1])) found.push_back(*quantity);
  }
  return found;
}

bool states(const Record& record, const base::Quantity& wanted) {
  for (const auto& path : record.quantity_paths) {
    const auto quantity = quantity_in(record.root.at_path(path));
    const auto value = quantity ? quantity->in(wanted.unit) : std::nullopt;
    if (!value) continue;
    const double nominal = base::tidy(wanted.stated.nominal);
    if (base::tidy(value->low) <= nominal && nominal <= base::tidy(value->high)) return true;
  }
  return false;
}

/// The field that a title speaks of where its words name one: of a gasket, else empty.
std::string field_of_title(const Record& record) {
  if (record.kind != model::Kind::gasket) return {};
  const auto says = [&](const char* word) { return record.title.find(word) != std::string::npos; };
  return says("wall") ? "wall" : says("high") ? "height" : "section";
}

/// Whether the title gives a figure of the field that its words name, and the field has another.
bool differs_from_its_field(const Record& record, const base::Quantity& wanted) {
  const std::string field = field_of_title(record);
  const auto* node = field.empty() ? nullptr : record.root.find(field);
  const auto quantity = quantity_in(node);
  if (!quantity || !record.usable(field)) return false;
  const auto value = quantity->in(wanted.unit);
  return value && base::tidy(value->nominal) != base::tidy(wanted.stated.nominal);
}

/// Whether the record states anything of this dimension, so that a title can disagree with it.
bool states_dimension(const Record& record, const base::Quantity& wanted) {
  for (const auto& path : record.quantity_paths) {
    const auto quantity = quantity_in(record.root.at_path(path));
    if (!record.usable(path) || (quantity && base::convertible(quantity->unit, wanted.unit))) return record.usable(path);
  }
  return false;
}

/// Text and target of the links of a page in their order.
class Links {
 public:
  void add(const model::Runs& runs) {
    for (const auto& run : runs) {
      if (!run.target.empty() || !run.fact.empty()) all.emplace_back(run.text, run.target);
    }
  }
  void add(const model::Block& block) {
    if (const auto* paragraph = std::get_if<model::Paragraph>(&block.what)) add(paragraph->runs);
    if (const auto* heading = std::get_if<model::Heading>(&block.what)) add(heading->runs);
    if (const auto* list = std::get_if<model::List>(&block.what)) {
      for (const auto& item : list->items) {
        for (const auto& inner : item) add(inner);
      }
    }
    if (const auto* table = std::get_if<model::Table>(&block.what)) {
      for (const auto& row : table->rows) {
        for (const auto& cell : row.cells) add(cell.runs);
      }
    }
  }

  std::vector<std::pair<std::string, std::string>> all;
};

/// Whether a link's words are one of the numbers that cells are looked up by.
bool is_cell_number(const std::string& text) {
  const bool digits = text.size() == 3 && text.find_first_not_of("0123456789") == std::string::npos;
  return digits || (text.size() > 2 && text.substr(0, 2) == "AG" && base::is_digit(text[2]));
}

bool bears(const model::Cell& cell, const std::string& text) { return cell.trade_number == text || cell.consumer_number == text; }

}  // namespace

void check_ranges(const Proof& proof) {
  for (const Record* record : proof.base.all()) walk_ranges(proof, *record, {}, record->root);
}

void check_titles(const Proof& proof) {
  for (const Record* record : proof.base.all()) {
    if (!record->usable("title") || record->root.find("title") == nullptr) continue;
    for (const auto& quantity : quantities_in_title(record->title)) {
      const bool other = states_dimension(*record, quantity) && !states(*record, quantity);
      if (!other && !differs_from_its_field(*record, quantity)) continue;
      proof.findings.add(Rule::title_figure, record->span_of("title"),
                         "the title says " + base::terminal(quantity) + ", but no field of the record does",
                         "correct the title or the field");
    }
  }
}

void check_twins(const Proof& proof) {
  std::map<std::pair<model::Kind, std::string>, const Record*> first;
  for (const Record* record : proof.base.all()) {
    if (!record->usable("title") || record->kind == model::Kind::cell || record->title.empty()) continue;
    const auto [other, is_first] = first.emplace(std::pair(record->kind, plain_words(record->title)), record);
    if (is_first || plain_words(record->title).empty()) continue;
    const char* field = record->kind == model::Kind::term ? "term" : "title";
    proof.findings
        .add(Rule::record_twin, record->span_of(field), "the name " + record->title + " stands in two records",
             "take one out, or say in the names how they differ")
        .notes.push_back({other->second->span_of(field), "the other is " + other->second->reference()});
  }
}

void check_link_numbers(const Proof& proof) {
  for (const auto& [id, page] : proof.base.pages) {
    Links links;
    for (const auto& part : page.parts) {
      if (const auto* block = std::get_if<model::Block>(&part)) links.add(*block);
    }
    auto reference = page.references.begin();
    for (const auto& [text, target] : links.all) {
      while (reference != page.references.end() && reference->target != target) ++reference;
      if (reference == page.references.end()) break;
      const auto* record = record_of(proof, model::Kind::cell, model::RecordRef(target));
      const base::Span where = (reference++)->span;
      if (record == nullptr || !is_cell_number(text)) continue;
      const model::Cell& cell = proof.base.cells.at(record->id);
      if (!cell.usable("trade-number") || !cell.usable("consumer-number") || bears(cell, text)) continue;
      const std::string bare = cell.trade_number.empty() ? cell.consumer_number : cell.trade_number;
      proof.findings
          .add(Rule::link_number, where,
               "the words say " + text + ", but " + cell.designation + (bare.empty() ? " has no number" : " is " + bare),
               "correct the words, the link or the record")
          .notes.push_back({cell.span_of("trade-number"), "the record " + cell.reference()});
    }
  }
}

}  // namespace benchleaf::prove
