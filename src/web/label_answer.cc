// In: what the page's form for labels has. Out: the labels that the command `label` makes of the same words, as HTML to be laid
// on a sheet.
#include "web/label_answer.h"

#include <array>
#include <cstddef>
#include <utility>
#include <vector>

#include "bench/json_text.h"
#include "html/label_words.h"
#include "label/labels.h"
#include "model/paper_size.h"

namespace benchleaf::web {

namespace {

std::string text_at(const model::Node& node, std::string_view key) {
  const model::Node* found = node.find(key);
  return found == nullptr ? std::string() : found->text;
}

std::variant<model::LabelGrid, label::Refused> grid_of(const model::Node& request, const model::Tables& tables) {
  const std::string name = text_at(request, "grid");
  if (!name.empty()) return label::read_grid(tables, name);
  return label::read_grid(label::GridWords{text_at(request, "paper"), text_at(request, "label"), text_at(request, "pitch"),
                                           text_at(request, "corner"), text_at(request, "columns"), text_at(request, "rows")});
}

std::string or_one(std::string count) { return count.empty() ? "1" : count; }

label::OrderWords words_of(const model::Node& order) {
  label::OrderWords words{text_at(order, "thing"), text_at(order, "part"),          text_at(order, "name"), {},
                          text_at(order, "date"),  or_one(text_at(order, "copies"))};
  const std::string size = text_at(order, "size");
  if (!size.empty()) words.thing += ":" + size;
  for (const char* input : {"ph", "flash", "boiling"}) {
    const std::string value = text_at(order, input);
    if (!value.empty()) words.measured.emplace_back(input, value);
  }
  return words;
}

/// The sheets, and of which order each label is.
struct Laid {
  model::LabelSheets sheets;
  std::vector<std::size_t> orders;
};

std::variant<Laid, label::Refused> lay(const compose::Desk& desk, const query::BenchNames& names, const model::Node& request) {
  auto grid = grid_of(request, desk.tables);
  if (auto* refused = std::get_if<label::Refused>(&grid)) return std::move(*refused);
  std::vector<label::Order> orders;
  Laid laid;
  if (const model::Node* asked = request.find("orders")) {
    for (const model::Node& one : asked->items) {
      auto order = label::read_order(desk, names, words_of(one));
      if (auto* refused = std::get_if<label::Refused>(&order)) return std::move(*refused);
      laid.orders.insert(laid.orders.end(), static_cast<std::size_t>(std::get<label::Order>(order).copies), orders.size());
      orders.push_back(std::get<label::Order>(std::move(order)));
    }
  }
  auto sheets = label::sheets_of(desk, std::get<model::LabelGrid>(std::move(grid)), or_one(text_at(request, "start")), orders);
  if (auto* refused = std::get_if<label::Refused>(&sheets)) return std::move(*refused);
  laid.sheets = std::get<model::LabelSheets>(std::move(sheets));
  return laid;
}

void write_label(const Laid& laid, std::size_t at, bench::JsonText& json) {
  const model::LabelSheets& sheets = laid.sheets;
  const model::Label& label = sheets.labels[at];
  const int run = sheets.first + static_cast<int>(at);
  const int place = run % sheets.grid.count();
  const model::Mm corner = sheets.grid.corner(place);
  json.open_object().key("order").number(static_cast<double>(laid.orders[at])).member("title", label.title);
  json.key("sheet").number(run / sheets.grid.count()).key("place").number(place);
  json.key("left").number(corner.x).key("top").number(corner.y);
  json.key("scale").number(label.head_scale);
  json.member("full", html::set_label(label, label.lines));
  json.member("brief", label.brief.empty() ? std::string() : html::set_label(label, label.brief));
  json.close();
}

void write_sheets(const Laid& laid, const model::Tables& tables, bench::JsonText& json) {
  const model::LabelGrid& grid = laid.sheets.grid;
  const model::PaperSize& paper = *model::paper_size(grid.paper);
  const model::LabelInset inset = model::inset_of(grid);
  json.member("paper", paper.name).member("larger", label::larger_grids(grid, tables));
  const std::array<std::pair<const char*, double>, 9> figures = {{{"wide", grid.width_mm},
                                                                  {"high", grid.height_mm},
                                                                  {"side", inset.side_mm},
                                                                  {"end", inset.end_mm},
                                                                  {"most", model::kMostLabelPt},
                                                                  {"least", model::kLeastLabelPt},
                                                                  {"step", model::kLabelStepPt},
                                                                  {"count", grid.count()},
                                                                  {"first", laid.sheets.first}}};
  for (const auto& [name, value] : figures) json.key(name).number(value);
  json.key("labels").open_array();
  for (std::size_t at = 0; at < laid.sheets.labels.size(); ++at) write_label(laid, at, json);
  json.close();
}

}  // namespace

std::string answer_labels(const compose::Desk& desk, const query::BenchNames& names, const model::Node& request) {
  const auto laid = lay(desk, names, request);
  bench::JsonText json;
  json.open_object().key("refusal");
  if (const auto* refused = std::get_if<label::Refused>(&laid)) {
    json.open_object().member("field", refused->field).member("reason", refused->why).member("hint", refused->hint).close();
  } else {
    write_sheets(std::get<Laid>(laid), desk.tables, json.null());
  }
  return json.close().done();
}

}  // namespace benchleaf::web
