// In: a block of a page that asks for pictures. Out: a table of them. What a picture shows is said by its own words, for
// those who cannot see it; what it is there for, by the writer's.
#include "compose/entries/picture_table.h"

#include <functional>
#include <map>
#include <string>
#include <utility>

#include "compose/charts/panels.h"
#include "compose/entry_maker.h"
#include "compose/figures/measure_pictures.h"
#include "model/request_words.h"

namespace benchleaf::compose {

namespace {

using model::word_of;

using Picture = std::shared_ptr<const model::Drawing>;

/// Pictures of the intake card.
const std::map<std::string, std::function<Picture()>>& card_pictures() {
  static const std::map<std::string, std::function<Picture()>> kOfCard = {
      {"cell", cell_picture}, {"crystal", crystal_picture}, {"groove", groove_picture},
      {"lugs", lugs_picture}, {"scratch", scratch_picture}, {"seat", seat_picture}};
  return kOfCard;
}

}  // namespace

Picture page_picture(const std::string& name) {
  const auto of_card = card_pictures().find(name);
  return of_card == card_pictures().end() ? bench_picture(name) : of_card->second();
}

std::vector<std::string> page_picture_names() {
  std::vector<std::string> names = bench_picture_names();
  for (const auto& [name, make] : card_pictures()) names.push_back(name);
  return names;
}

std::optional<model::Table> picture_table(const model::DerivedRequest& request) {
  const model::Node* rows = request.body.find("rows");
  if (rows == nullptr || rows->items.empty()) return std::nullopt;
  model::Table table;
  table.name = "pictures";
  table.columns = {column("picture"), column("what for", model::Column::Align::left, true)};
  for (const model::Node& row : rows->items) {
    Picture picture = page_picture(word_of(row, "picture"));
    const std::string words = word_of(row, "words");
    if (!picture || words.empty()) return std::nullopt;
    table.rows.push_back({{{{}, std::move(picture)}, cell(words)}, {}});
  }
  return table;
}

}  // namespace benchleaf::compose
