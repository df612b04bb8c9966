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

Picture picture_named(const std::string& name) {
  static const std::map<std::string, std::function<Picture()>> kOfCard = {
      {"cell", cell_picture}, {"crystal", crystal_picture}, {"groove", groove_picture},
      {"lugs", lugs_picture}, {"scratch", scratch_picture}, {"seat", seat_picture}};
  const auto of_card = kOfCard.find(name);
  return of_card == kOfCard.end() ? bench_picture(name) : of_card->second();
}

}  // namespace

std::optional<model::Table> picture_table(const model::DerivedRequest& request) {
  const model::Node* rows = request.body.find("rows");
  if (rows == nullptr || rows->items.empty()) return std::nullopt;
  model::Table table;
  table.name = "pictures";
  table.columns = {column("picture"), column("what for", model::Column::Align::left, true)};
  for (const model::Node& row : rows->items) {
    Picture picture = picture_named(word_of(row, "picture"));
    const std::string words = word_of(row, "words");
    if (!picture || words.empty()) return std::nullopt;
    table.rows.push_back({{{{}, std::move(picture)}, cell(words)}, {}});
  }
  return table;
}

}  // namespace benchleaf::compose
