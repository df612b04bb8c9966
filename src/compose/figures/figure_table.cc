// In: a block of a page that asks for a picture drawn from facts. Out: the picture in a table, with a caption and a sign.
#include "compose/figures/figure_table.h"

#include <map>
#include <utility>

#include "compose/entry_maker.h"
#include "compose/figures/figures.h"
#include "model/request_words.h"

namespace benchleaf::compose {

namespace {

using model::word_of;

/// So many nests of 41 mm stand side by side in the text block.
constexpr std::size_t kNestColumns = 3;

model::Runs caption(std::string words, Sign sign) {
  return {model::text_run(std::move(words) + " "), model::trust_run(sign.trust, sign.derived)};
}

std::optional<model::Table> nest_table(const Desk& desk, const model::DerivedRequest& request) {
  const auto series = desk.records.gaskets.find(word_of(request.body, "series"));
  if (series == desk.records.gaskets.end()) return std::nullopt;
  const auto nests = nests_of(series->second);
  if (nests.empty()) return std::nullopt;
  model::Table table;
  table.name = "nest";
  table.caption = caption(word_of(request.body, "words"), desk.sign(series->second, "inside"));
  for (std::size_t i = 0; i < kNestColumns; ++i) table.columns.push_back(column("inside in mm"));
  for (std::size_t i = 0; i < nests.size(); ++i) {
    if (i % kNestColumns == 0) table.rows.push_back({std::vector<model::TableCell>(kNestColumns), {}});
    table.rows.back().cells[i % kNestColumns].drawing = nests[i];
  }
  return table;
}

std::optional<model::Table> alone(const std::string& name, const std::string& words, const std::optional<Figure>& figure) {
  if (!figure) return std::nullopt;
  model::Table table;
  table.name = "drawn-" + name;
  table.caption = caption(words, figure->sign);
  table.columns = {column("to scale")};
  table.rows.push_back({{{{}, figure->drawing}}, {}});
  return table;
}

using Draw = std::optional<Figure> (*)(const Asked&);

const std::map<std::string, Draw>& draws() {
  static const std::map<std::string, Draw> kDraws = {{"depth-profile", depth_profile}, {"gasket-groove", gasket_groove}};
  return kDraws;
}

std::optional<Figure> drawn(const Asked& asked, const std::string& how) {
  const auto found = draws().find(how);
  return found == draws().end() ? std::nullopt : found->second(asked);
}

}  // namespace

const model::Fact* Asked::fact(std::size_t row, const std::string& output) const {
  return desk.derived.facts.find(answers.fact_id(page.reference(), answers.rows.at(row), output));
}

std::string Asked::given(std::size_t row, const std::string& input) const {
  const auto found = answers.rows.at(row).inputs.find(input);
  return found == answers.rows.at(row).inputs.end() ? std::string() : found->second.text;
}

std::vector<std::string> figure_names() {
  std::vector<std::string> names;
  for (const auto& [name, draw] : draws()) names.push_back(name);
  return names;
}

bool is_drawn(const model::DerivedRequest& request) { return !word_of(request.body, "drawn").empty(); }

std::optional<model::Table> figure_table(const Desk& desk, const model::Page& page, const model::DerivedRequest& request) {
  const std::string words = word_of(request.body, "words");
  if (words.empty()) return std::nullopt;
  if (word_of(request.body, "show") == "nest") return nest_table(desk, request);
  if (word_of(request.body, "show") == "voltages") {
    const model::Node* rows = request.body.find("rows");
    return rows == nullptr ? std::nullopt : alone("voltages", words, voltage_bands(desk, *rows));
  }
  if (word_of(request.body, "show") == "backs") return back_places(desk, request.body);
  if (word_of(request.body, "show") == "crystal-fits") return crystal_fits(desk, request.body);
  const auto answers = derive::read_page_answers(request.body);
  if (!answers) return std::nullopt;
  return alone(answers->name, words, drawn({desk, page, *answers}, word_of(request.body, "drawn")));
}

}  // namespace benchleaf::compose
