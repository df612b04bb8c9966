// In: a fenced block `bench` of a page. Out: the line that is at fault and why: a key, a name, a refused answer.
#include "compose/entries/block_fault.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>
#include <vector>

#include "base/id.h"
#include "bench/calculator.h"
#include "compose/entries/picture_table.h"
#include "compose/figures/figure_table.h"
#include "derive/bench_figures.h"
#include "derive/page_answers.h"
#include "model/request_words.h"
#include "standards/table_view.h"

namespace benchleaf::compose {

namespace {

using model::Kind;
using model::Node;
using model::word_of;
using Fault = std::optional<BlockFault>;
using Words = std::vector<std::string>;

/// The keys of a block by what it shows. Rows of answers have the inputs of their calculator as keys.
struct BlockForm {
  std::string_view show;
  Words required, optional;
  Words row_required, row_optional;
};

const std::vector<BlockForm>& block_forms() {
  static const std::vector<BlockForm> kForms = {
      {"backs", {"words", "gasket", "rows"}, {}, {"back"}, {"procedure", "tool", "place", "deepest", "words", "then"}},
      {"crystal-fits", {"words", "rows"}, {}, {"crystal"}, {"holder", "ring", "oversize"}},
      {"message", {"record"}, {}, {}, {}},
      {"nest", {"series", "words"}, {}, {}, {}},
      {"pictures", {"rows"}, {}, {"picture", "words"}, {}},
      {"published-table", {"table"}, {}, {}, {}},
      {"reckoned", {"name", "calculator", "rows", "columns"}, {"with", "drawn", "words"}, {}, {}},
      {"size-finder", {}, {}, {}, {}},
      {"trust-signs", {}, {}, {}, {}},
      {"voltages", {"words", "rows"}, {}, {"system", "course"}, {}},
  };
  return kForms;
}

std::string hint_of(const std::string& word, const Words& known, const std::string& otherwise) {
  const std::string nearest = base::nearest_word(word, known);
  return nearest.empty() ? otherwise : "did you mean " + nearest + "?";
}

bool holds(const Words& words, const std::string& word) { return std::find(words.begin(), words.end(), word) != words.end(); }

Words joined(Words one, const Words& other) {
  one.insert(one.end(), other.begin(), other.end());
  return one;
}

/// A key that is not among those of the mapping, or one that is missing.
Fault key_fault(const Node& mapping, base::Span where, const std::string& whose, const Words& required, const Words& optional) {
  const Words all = joined(required, optional);
  for (const auto& member : mapping.members) {
    if (!holds(all, member.key))
      return BlockFault{member.key_span, whose + " has no key " + member.key,
                        hint_of(member.key, all, "keys are " + listed(all))};
  }
  for (const std::string& key : required) {
    const Node* value = mapping.find(key);
    if (value == nullptr || (value->is_scalar() && value->text.empty()))
      return BlockFault{where, whose + " needs " + key, "add `" + key + ":`"};
  }
  return std::nullopt;
}

Fault form_fault(const BlockForm& form, const model::DerivedRequest& request) {
  const std::string whose = "a block that shows " + std::string(form.show);
  if (auto fault = key_fault(request.body, request.span, whose, joined({"show"}, form.required), form.optional)) return fault;
  const Node* rows = request.body.find("rows");
  if (rows == nullptr) return std::nullopt;
  if (rows->items.empty()) return BlockFault{rows->span, "rows is empty", "list at least one row"};
  const std::string row_of = "a row of " + std::string(form.show);
  for (const Node& row : rows->items) {
    if (row.type != model::NodeType::mapping || row.members.empty())
      return BlockFault{row.span, row_of + " is not a mapping", "write the row as `{ key: value }`"};
    if (form.row_required.empty()) continue;
    if (auto fault = key_fault(row, row.span, row_of, form.row_required, form.row_optional)) return fault;
  }
  return std::nullopt;
}

/// What the value of a key names.
struct Named {
  std::string_view key;
  Kind kind;
};
constexpr std::array<Named, 8> kRecords = {{{"series", Kind::gasket},
                                            {"gasket", Kind::gasket},
                                            {"ring", Kind::gasket},
                                            {"record", Kind::caution},
                                            {"crystal", Kind::crystal},
                                            {"procedure", Kind::procedure},
                                            {"tool", Kind::tool},
                                            {"place", Kind::term}}};
constexpr std::array<std::pair<std::string_view, std::string_view>, 3> kRows = {
    {{"deepest", "bench-rules"}, {"oversize", "bench-rules"}, {"system", "cell-systems"}}};

Fault record_fault(const Desk& desk, Kind kind, const Node& value) {
  const model::RecordRef whole(value.text);
  const model::RecordRef reference = whole.kind() ? whole : model::RecordRef(kind, value.text);
  if (desk.records.find(reference) != nullptr) return std::nullopt;
  Words ids;
  for (const model::Record* record : desk.records.all()) {
    if (record->kind == kind) ids.push_back(record->id);
  }
  return BlockFault{value.span, "there is no record " + ("" + reference),
                    hint_of(value.text, ids, "name a record of kind " + std::string(model::kind_name(kind)))};
}

Fault row_of_table_fault(const Desk& desk, std::string_view name, const Node& value) {
  const model::PublishedTable* table = desk.tables.find(std::string(name));
  if (table == nullptr || standards::row_of(desk.tables, std::string(name), value.text) != nullptr) return std::nullopt;
  Words keys;
  for (const auto& row : table->rows) keys.push_back(row.key);
  return BlockFault{value.span, "table " + std::string(name) + " has no row " + value.text,
                    hint_of(value.text, keys, "rows are " + listed(keys))};
}

Fault name_fault(const Desk& desk, const std::string& key, const Node& value) {
  if (!value.is_scalar()) return std::nullopt;
  for (const Named& named : kRecords) {
    if (named.key == key) return record_fault(desk, named.kind, value);
  }
  for (const auto& [row_key, table] : kRows) {
    if (row_key == key) return row_of_table_fault(desk, table, value);
  }
  if (key == "picture" && page_picture(value.text) == nullptr)
    return BlockFault{value.span, "there is no picture " + value.text,
                      hint_of(value.text, page_picture_names(), "pictures are " + listed(page_picture_names()))};
  if (key == "table" && desk.tables.find(value.text) == nullptr)
    return BlockFault{value.span, "there is no table " + value.text, "name a file of schema/tables without its ending"};
  return std::nullopt;
}

Fault names_fault(const Desk& desk, const Node& body) {
  for (const auto& member : body.members) {
    if (auto fault = name_fault(desk, member.key, member.value)) return fault;
  }
  const Node* rows = body.find("rows");
  if (rows == nullptr) return std::nullopt;
  for (const Node& row : rows->items) {
    for (const auto& member : row.members) {
      if (auto fault = name_fault(desk, member.key, member.value)) return fault;
    }
  }
  return std::nullopt;
}

const bench::Calculator* calculator_named(const std::string& name) {
  for (const auto& one : bench::calculators()) {
    if (one.name == name) return &one;
  }
  return nullptr;
}

Words calculator_names() {
  Words names;
  for (const auto& one : bench::calculators()) names.emplace_back(one.name);
  return names;
}

/// Where an input of a row stands: in the row, in `with`, else the row.
base::Span input_span(const Node& body, const Node& row, const std::string& input) {
  if (const Node* own = row.find(input)) return own->span;
  const Node* with = body.find("with");
  const Node* shared = with == nullptr ? nullptr : with->find(input);
  return shared == nullptr ? row.span : shared->span;
}

Fault columns_fault(const Node& body, const bench::Calculator& calculator) {
  Words outputs;
  for (const auto& output : calculator.outputs) outputs.emplace_back(output.name);
  const Node* columns = body.find("columns");
  if (columns->items.empty()) return BlockFault{columns->span, "columns is not a list of outputs", "write `columns: [NAME]`"};
  for (const Node& column : columns->items) {
    if (!holds(outputs, column.text))
      return BlockFault{column.span, std::string(calculator.name) + " has no output " + column.text,
                        hint_of(column.text, outputs, "outputs are " + listed(outputs))};
  }
  return std::nullopt;
}

/// The row whose answer is not there, with what the calculator says to it.
Fault answer_fault(const Desk& desk, const model::Page& page, const Node& body, const derive::PageAnswers& asked) {
  std::optional<model::FactBase> figures;
  const auto& rows = body.find("rows")->items;
  for (std::size_t i = 0; i < asked.rows.size(); ++i) {
    const auto missing = std::find_if(asked.columns.begin(), asked.columns.end(), [&](const std::string& output) {
      return desk.derived.facts.find(asked.fact_id(page.reference(), asked.rows[i], output)) == nullptr;
    });
    if (missing == asked.columns.end()) continue;
    if (!figures) figures = derive::bench_figures(desk.records, desk.tables);
    const bench::Result result = bench::reckon(asked.calculator, asked.rows[i].inputs, {desk.tables, *figures});
    if (!result.refusal)
      return BlockFault{rows[i].span, asked.calculator + " gives no " + *missing + " for this row",
                        "take the row or the column out"};
    const bench::Refusal& why = *result.refusal;
    return BlockFault{input_span(body, rows[i], why.input),
                      asked.calculator + ": " + (why.input.empty() ? "" : why.input + ": ") + why.reason,
                      why.hint.empty() ? "change the row or take it out" : why.hint};
  }
  return std::nullopt;
}

Fault reckoned_fault(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  const Node& name = *request.body.find("calculator");
  const bench::Calculator* calculator = calculator_named(name.text);
  if (calculator == nullptr)
    return BlockFault{name.span, "there is no calculator " + name.text,
                      hint_of(name.text, calculator_names(), "`benchleaf reckon` lists them")};
  if (auto fault = columns_fault(request.body, *calculator)) return fault;
  const Node* drawn = request.body.find("drawn");
  if (drawn != nullptr && !holds(figure_names(), drawn->text))
    return BlockFault{drawn->span, "there is no drawing " + drawn->text, "drawings are " + listed(figure_names())};
  if (drawn != nullptr && word_of(request.body, "words").empty())
    return BlockFault{request.span, "a drawing needs words", "add `words:` that say what it shows"};
  const auto asked = derive::read_page_answers(request.body);
  if (!asked)
    return BlockFault{request.body.find("rows")->span, "the rows do not ask the same question",
                      "give each row the same keys in the same order, each with one value"};
  return answer_fault(desk, page, request.body, *asked);
}

Fault show_fault(const model::DerivedRequest& request) {
  Words shows;
  for (const BlockForm& form : block_forms()) shows.emplace_back(form.show);
  const Node* show = request.body.find("show");
  const std::string word = word_of(request.body, "show");
  if (word.empty()) return BlockFault{request.span, "the block does not say what it shows", "add `show:`: " + listed(shows)};
  if (holds(shows, word)) return std::nullopt;
  return BlockFault{show->span, "a block cannot show " + word, hint_of(word, shows, "it can show " + listed(shows))};
}

}  // namespace

std::optional<BlockFault> block_fault(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  if (auto fault = show_fault(request)) return fault;
  const std::string show = word_of(request.body, "show");
  for (const BlockForm& form : block_forms()) {
    if (form.show != show) continue;
    if (auto fault = form_fault(form, request)) return fault;
  }
  if (auto fault = names_fault(desk, request.body)) return fault;
  return show == "reckoned" ? reckoned_fault(desk, page, request) : std::nullopt;
}

BlockFault unmade_block(const model::DerivedRequest& request, const std::function<bool(const model::DerivedRequest&)>& is_made) {
  const std::string hint = "complete the records it names, or take the row or the block out";
  const Node* rows = request.body.find("rows");
  for (const Node& row : rows == nullptr ? std::vector<Node>() : rows->items) {
    model::DerivedRequest alone = request;
    for (auto& member : alone.body.members) {
      if (member.key == "rows") member.value.items = {row};
    }
    if (!is_made(alone)) return {row.span, "what the row names does not agree, or lacks a value", hint};
  }
  return {request.span, "the block cannot be made: what it names lacks a value", hint};
}

}  // namespace benchleaf::compose
