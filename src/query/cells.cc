// In: words of a query. Out: the cells that they name.
#include "query/cells.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "base/ascii.h"
#include "standards/table_view.h"

namespace benchleaf::query {

namespace {

using model::Kind;

constexpr std::size_t kMostParts = 3;  // `sr 626 sw`

std::vector<const model::Cell*> cells_of(const std::vector<Reading>& readings) {
  std::vector<const model::Cell*> cells;
  for (const Reading& reading : readings) {
    if (reading.record->kind != Kind::cell) continue;
    const auto* cell = static_cast<const model::Cell*>(reading.record);
    if (std::find(cells.begin(), cells.end(), cell) == cells.end()) cells.push_back(cell);
  }
  return cells;
}

bool has_digit(std::string_view text) { return text.find_first_of("0123456789") != std::string_view::npos; }

/// `393` of `v393`, `d393`: a maker's letter before a trade number.
std::string without_letter(const std::string& word) {
  const bool number =
      word.size() == 4 && !base::is_digit(word[0]) && word.find_first_not_of("0123456789", 1) == std::string::npos;
  return number ? word.substr(1) : std::string();
}

/// Whether a key has the form of a name of a cell: letters that names of cells begin with, then figures.
bool is_like_a_cell(const std::string& key, const NameIndex& names) {
  const std::size_t digits = key.find_first_of("0123456789");
  if (digits == 0 || digits == std::string::npos || digits > 2) return false;
  const std::size_t end = key.find_first_not_of("0123456789", digits);
  const std::size_t figures = (end == std::string::npos ? key.size() : end) - digits;
  return figures >= 1 && names.begins_a_cell(key.substr(0, digits));
}

class CellReader {
 public:
  CellReader(const std::vector<Word>& words, const NameIndex& names) : words_(words), names_(names) {}

  NamedCells read() {
    for (std::size_t at = 0; at < words_.size();) {
      const std::size_t taken = take(at);
      if (taken == 0) found_.rest.push_back(words_[at]);
      at += std::max<std::size_t>(taken, 1);
    }
    return std::move(found_);
  }

 private:
  /// How many words from `at` name a cell; 0 where they do not.
  std::size_t take(std::size_t at) {
    for (std::size_t count = std::min(kMostParts, words_.size() - at); count > 0; --count) {
      const std::string key = joined_key(words_, at, at + count);
      if (!has_digit(key) || is_measure(at + count - 1)) continue;
      auto cells = cells_of(names_.of_key(key));
      if (cells.empty()) cells = cells_of(names_.of_key(without_letter(key)));
      if (cells.empty()) continue;
      found_.groups.push_back(std::move(cells));
      return count;
    }
    return take_unknown(at);
  }

  std::size_t take_unknown(std::size_t at) {
    for (std::size_t count = std::min<std::size_t>(2, words_.size() - at); count > 0; --count) {
      const std::string key = joined_key(words_, at, at + count);
      if (!is_like_a_cell(key, names_) || is_measure(at + count - 1)) continue;
      found_.unknown = key;
      return count;
    }
    return 0;
  }

  /// Whether the word is a figure of a size: `7.9 x`, `20 mm`.
  bool is_measure(std::size_t at) const {
    if (words_[at].sort != Word::Sort::number) return false;
    const auto is_sign = [this](std::size_t place) {
      return place < words_.size() && words_[place].sort != Word::Sort::word && words_[place].sort != Word::Sort::number;
    };
    return is_sign(at + 1) || (at > 0 && words_[at - 1].sort == Word::Sort::times);
  }

  const std::vector<Word>& words_;
  const NameIndex& names_;
  NamedCells found_;
};

/// In how many places a system may stand without a second thought.
int stands_in_for(const model::Cell& cell, const model::Tables& tables) {
  int places = 0;
  for (const auto& row : standards::rows_of(tables, "cell-substitutes")) {
    const std::size_t blank = row.key.find(' ');
    if (blank != std::string::npos && row.key.substr(blank + 1) == cell.system && standards::cell_text(row, "verdict") == "use")
      ++places;
  }
  return places;
}

}  // namespace

bool is_cell_name(const std::string& word, const NameIndex& names) {
  return !cells_of(names.of_key(word)).empty() || !cells_of(names.of_key(without_letter(word))).empty();
}

AskedTraits traits_in(const std::vector<Word>& words, const Vocabulary& vocabulary, const model::Tables& tables) {
  AskedTraits asked;
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::string& text = words[at].text;
    if ((text == "low" || text == "high") && at + 1 < words.size() && words[at + 1].text == "drain") {
      asked.drain = text == "low" ? model::Drain::low : model::Drain::high;
      ++at;
      continue;
    }
    asked.rest.push_back(words[at]);
    if (!vocabulary.is(words[at], Use::cell)) continue;
    const std::string stem = stem_of(text);
    const auto& like = vocabulary.like(stem);
    for (const auto& row : tables.cell_systems) {
      const std::string first = stem_of(row.system.substr(0, row.system.find('-')));  // `silver` of `silver-oxide`
      if (first == stem || std::find(like.begin(), like.end(), first) != like.end()) asked.systems.push_back(row.system);
    }
  }
  return asked;
}

int missed(const model::Cell& cell, const AskedTraits& asked) {
  const bool other_drain = asked.drain && cell.drain != asked.drain;
  const bool other_system =
      !asked.systems.empty() && std::find(asked.systems.begin(), asked.systems.end(), cell.system) == asked.systems.end();
  return (other_drain ? 1 : 0) + (other_system ? 1 : 0);
}

bool is_likelier(const model::Cell& one, const model::Cell& other, const model::Tables& tables) {
  const auto rank = [&tables](const model::Cell& cell) {
    const bool drain_known = cell.drain && *cell.drain != model::Drain::not_stated;
    const auto system = std::find_if(tables.cell_systems.begin(), tables.cell_systems.end(),
                                     [&cell](const auto& row) { return row.system == cell.system; });
    return std::make_tuple(cell.status == model::CellStatus::withdrawn, !drain_known, -stands_in_for(cell, tables),
                           system - tables.cell_systems.begin());
  };
  return rank(one) < rank(other);
}

NamedCells cells_in(const std::vector<Word>& words, const NameIndex& names) { return CellReader(words, names).read(); }

}  // namespace benchleaf::query
