// In: entries with their keys; a query. Out: the records that fit, the best first, or the names nearest to the query.
#include "compose/search/search.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "base/id.h"
#include "base/number.h"
#include "base/utf8.h"
#include "compose/search/search_key.h"

namespace benchleaf::compose {

namespace {

constexpr std::size_t kShortestBeginning = 2;
constexpr std::size_t kMostOthers = 8;
constexpr std::string_view kSeatCalculator = "calculator/gasket-fit";
constexpr double kMillimetresPerInch = 25.4;
constexpr std::size_t kShortQuery = 4;  // of which all but one letter may differ in a name that is offered

template <typename Found>
void keep_better(std::map<std::size_t, Found>& all, std::size_t entry, Found found) {
  const auto [place, added] = all.try_emplace(entry, found);
  Found& old = place->second;
  if (!added && (found.fit < old.fit || (found.fit == old.fit && found.score > old.score))) old = found;
}

bool starts_with(std::string_view text, std::string_view beginning) { return text.substr(0, beginning.size()) == beginning; }

bool is_plain_number(std::string_view word) { return word.find_first_not_of("0123456789") == std::string_view::npos; }

bool is_figures(std::string_view word) {
  return !word.empty() && word.find_first_not_of("0123456789.") == std::string_view::npos;
}

/// `7.9`, `5.4` of `7.9x5.4`; nothing of another word.
std::optional<std::pair<std::string_view, std::string_view>> figures_of_size(std::string_view word) {
  const std::size_t times = word.find('x');
  if (times == std::string_view::npos) return std::nullopt;
  const std::pair<std::string_view, std::string_view> figures{word.substr(0, times), word.substr(times + 1)};
  if (!is_figures(figures.first) || !is_figures(figures.second)) return std::nullopt;
  return figures;
}

/// The figures before a unit of two letters, or nothing.
std::string_view figures_before(std::string_view word, std::string_view unit) {
  if (word.size() <= unit.size() || word.substr(word.size() - unit.size()) != unit) return {};
  return word.substr(0, word.size() - unit.size());
}

double number_of(std::string_view figures) { return base::parse_decimal(figures).value_or(0); }

}  // namespace

SearchIndex::SearchIndex(model::SearchList list) : entries_(std::move(list.entries)), swelling_mm_(list.swelling_mm) {
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    for (const model::SearchKey& key : entries_[i].keys) places_[key.key].push_back({i, key.weight});
  }
  for (const auto& [key, places] : places_) {
    const std::string_view figures = figures_before(key, "mm");
    if (is_figures(figures)) measures_.push_back(number_of(figures));
  }
  std::sort(measures_.begin(), measures_.end());
  for (const auto& [key, places] : places_) {
    if (key.find(' ') != std::string::npos) continue;  // a slip is forgiven in a word, not in a whole name
    for (std::string& form : one_slip_forms(key)) slips_[std::move(form)].push_back(key);
  }
}

FoundRecords SearchIndex::look_up(std::string_view query) const {
  FoundRecords found;
  const std::vector<Hit> hits = find(query);
  const bool exact = !hits.empty() && hits.front().fit == Fit::exact;
  for (const Hit& hit : hits) {
    // A name that is the query word for word comes before those that only hold it.
    const bool best = exact ? hit.fit == Fit::exact && hit.score == hits.front().score : hit.fit == hits.front().fit;
    (best ? found.hits : found.others).push_back(hit);
  }
  found.others_head = "also";
  const std::vector<std::string> words = search_words(query);
  if (words.size() == 1 && figures_of_size(metric(words.front()))) {
    found.others_head = "a little smaller, in case the old cell has swollen";
    found.others = a_little_smaller(metric(words.front()));
  }
  if (found.hits.empty() && words.size() == 1 && is_figures(figures_before(metric(words.front()), "mm")))
    found.hits = of_a_seat();
  if (found.others.size() > kMostOthers) found.others.resize(kMostOthers);
  if (found.hits.empty()) found.nearest = nearest(query);
  return found;
}

/// A length that nothing on file has is most likely that of a seat.
std::vector<Hit> SearchIndex::of_a_seat() const {
  for (const model::SearchEntry& entry : entries_) {
    if (entry.record == kSeatCalculator) return {{entry.record, entry.anchor, entry.title, Fit::beginning, 0}};
  }
  return {};
}

/// A word in inches as the same in millimetres; any other as it is.
std::string SearchIndex::metric(const std::string& word) const {
  const std::string_view inches = figures_before(word, "in");
  if (is_figures(inches)) return base::shortest_text(in_millimetres(inches)) + "mm";
  const auto size = figures_of_size(inches);
  if (!size) return word;
  return base::shortest_text(in_millimetres(size->first)) + "x" + base::shortest_text(in_millimetres(size->second));
}

/// The known measure that a figure in inches can mean, by its last digit; else what it is, to 0.01 mm.
double SearchIndex::in_millimetres(std::string_view inches) const {
  const std::size_t point = inches.find('.');
  const std::size_t decimals = point == std::string_view::npos ? 0 : inches.size() - point - 1;
  double slack = kMillimetresPerInch / 2 + 1e-9;
  for (std::size_t i = 0; i < decimals; ++i) slack /= 10;
  const double meant = number_of(inches) * kMillimetresPerInch;
  std::optional<double> best;
  for (const double known : measures_) {
    const double apart = std::abs(known - meant);
    if (apart <= slack && (!best || apart < std::abs(*best - meant))) best = known;
  }
  return best.value_or(std::round(meant * 100) / 100);
}

/// Cells a little smaller than what was measured, the largest first: the old cell may have swollen.
std::vector<Hit> SearchIndex::a_little_smaller(const std::string& size) const {
  const auto figures = figures_of_size(size);
  const double across = number_of(figures->first), high = number_of(figures->second);
  std::vector<const model::SearchEntry*> smaller;
  for (const model::SearchEntry& entry : entries_) {
    if (entry.diameter_mm <= 0) continue;
    const double narrower = base::tidy(across - entry.diameter_mm), flatter = base::tidy(high - entry.height_mm);
    const bool same = narrower == 0 && flatter == 0;
    if (!same && narrower >= 0 && flatter >= 0 && narrower <= swelling_mm_ && flatter <= swelling_mm_) smaller.push_back(&entry);
  }
  std::stable_sort(smaller.begin(), smaller.end(), [](const auto* one, const auto* other) {
    return one->diameter_mm == other->diameter_mm ? one->height_mm > other->height_mm : one->diameter_mm > other->diameter_mm;
  });
  std::vector<Hit> hits;
  for (const auto* entry : smaller) hits.push_back({entry->record, entry->anchor, entry->title, Fit::exact, 0});
  return hits;
}

std::vector<Hit> SearchIndex::find(std::string_view query) const {
  std::vector<std::string> words = search_words(query);
  for (std::string& word : words) word = metric(word);
  const auto whole = places_.find(joined_words(words));
  const auto whole_words = static_cast<int>(words.size());
  // `no figures at all`: small words are no keys, so they ask for nothing beside others that are.
  if (std::any_of(words.begin(), words.end(), says_something))
    std::erase_if(words, [](const std::string& word) { return !says_something(word); });
  if (words.empty()) return {};
  FoundByEntry found = look_up_word(words.front());
  for (std::size_t i = 1; i < words.size(); ++i) {
    const FoundByEntry next = look_up_word(words[i]);
    FoundByEntry both;
    for (const auto& [entry, one] : found) {
      const auto other = next.find(entry);
      if (other == next.end()) continue;
      both[entry] = {std::max(one.fit, other->second.fit), one.score + other->second.score};
    }
    found = std::move(both);
  }
  if (whole_words > 1 && whole != places_.end()) {
    for (const Place& place : whole->second) keep_better(found, place.entry, Found{Fit::exact, place.weight * (whole_words + 1)});
  }
  const bool only_slips = std::all_of(found.begin(), found.end(), [](const auto& one) { return one.second.fit == Fit::slip; });
  std::vector<Hit> hits;
  for (const auto& [entry, one] : found) {
    if (one.fit == Fit::slip && !only_slips) continue;
    hits.push_back({entries_[entry].record, entries_[entry].anchor, entries_[entry].title, one.fit, one.score});
  }
  std::stable_sort(hits.begin(), hits.end(), [](const Hit& one, const Hit& other) {
    return one.fit == other.fit ? one.score > other.score : one.fit < other.fit;
  });
  return hits;
}

/// Best fit of one word in every entry that has it.
SearchIndex::FoundByEntry SearchIndex::look_up_word(const std::string& word) const {
  FoundByEntry found;
  const bool by_beginning = word.size() >= kShortestBeginning && !is_plain_number(word);
  for (auto place = places_.lower_bound(word); place != places_.end() && starts_with(place->first, word); ++place) {
    const bool exact = place->first == word;
    if (!exact && !by_beginning) break;
    for (const Place& one : place->second) keep_better(found, one.entry, Found{exact ? Fit::exact : Fit::beginning, one.weight});
  }
  look_up_slips(word, found);
  return found;
}

/// One letter more, less or other: what both words become when they lose one letter is the same.
void SearchIndex::look_up_slips(const std::string& word, FoundByEntry& found) const {
  std::vector<std::string> forms = one_slip_forms(word);
  if (forms.empty()) return;
  forms.push_back(word);
  for (const std::string& form : forms) {
    std::vector<std::string> keys;
    if (const auto lost = slips_.find(form); lost != slips_.end()) keys = lost->second;
    if (form != word && places_.contains(form)) keys.push_back(form);
    for (const std::string& key : keys) {
      if (key == word || base::edit_distance(key, word) > 1) continue;
      for (const Place& place : places_.find(key)->second) keep_better(found, place.entry, Found{Fit::slip, place.weight});
    }
  }
}

std::vector<std::string> SearchIndex::nearest(std::string_view query, std::size_t most) const {
  struct Near {
    std::size_t slips = 0;
    std::string order;
    std::string name;
  };
  const std::string folded = joined_words(search_words(query));
  const std::size_t length = base::count_code_points(folded);
  const std::size_t allowed = length <= kShortQuery ? length - std::min<std::size_t>(length, 1) : length / 2;
  std::vector<Near> near;
  for (const model::SearchEntry& entry : entries_) {
    for (const std::string& name : entry.names) {
      const std::size_t slips = base::edit_distance(folded, joined_words(search_words(name)));
      if (slips <= allowed) near.push_back({slips, joined_words(search_words(name)), name});
    }
  }
  std::sort(near.begin(), near.end(), [](const Near& one, const Near& other) {
    if (one.slips != other.slips) return one.slips < other.slips;
    return one.order == other.order ? one.name < other.name : one.order < other.order;
  });
  std::vector<std::string> names;
  for (const Near& one : near) {
    if (names.size() == most) break;
    if (std::find(names.begin(), names.end(), one.name) == names.end()) names.push_back(one.name);
  }
  return names;
}

}  // namespace benchleaf::compose
