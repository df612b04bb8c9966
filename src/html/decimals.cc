// In: cells of a column of figures. Out: the same cells with figure spaces for the digits that are missing in front of the
// first number, after it when a second one follows, and in front of that.
#include "html/decimals.h"

#include <algorithm>

#include "base/ascii.h"
#include "base/number.h"

namespace benchleaf::html {

namespace {

/// A letter, a digit or a byte beyond ASCII.
bool is_word(char c) {
  return base::is_digit(c) || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// A digit that a word or a letter beyond ASCII does not lead into; a minus sign and a space of typesetting may.
bool starts_number(std::string_view text, std::size_t at) {
  if (!base::is_digit(text.at(at))) return false;
  const std::string_view before = text.substr(0, at);
  return before.empty() || !is_word(before.back()) || before.ends_with(base::kMinus) || before.ends_with(base::kThinSpace);
}

/// Digits from `at` on, thin spaces between them allowed as the grouping of thousands.
int count_digits(std::string_view text, std::size_t& at) {
  int digits = 0;
  while (at < text.size()) {
    if (base::is_digit(text.at(at))) {
      ++digits;
      ++at;
    } else if (text.substr(at).starts_with(base::kThinSpace) && at + 3 < text.size() && base::is_digit(text.at(at + 3))) {
      at += base::kThinSpace.size();
    } else {
      break;
    }
  }
  return digits;
}

std::string repeat(std::string_view what, int times) {
  std::string out;
  for (int i = 0; i < times; ++i) out += what;
  return out;
}

std::string missing_fraction(const Figures& widest, const Figures& own) {
  const bool no_point = own.fraction == 0 && widest.fraction > 0;
  return (no_point ? std::string(kPunctuationSpace) : std::string()) + repeat(kFigureSpace, widest.fraction - own.fraction);
}

/// Puts `pad` into the run that holds byte `at` of the text of all runs.
void insert_at(model::Runs& runs, std::size_t at, const std::string& pad) {
  if (pad.empty()) return;
  for (model::Run& run : runs) {
    if (run.kind != model::Run::Kind::text) continue;
    if (at <= run.text.size()) {
      run.text.insert(at, pad);
      return;
    }
    at -= run.text.size();
  }
}

std::string text_of(const model::Runs& runs) {
  std::string text;
  for (const model::Run& run : runs) {
    if (run.kind == model::Run::Kind::text) text += run.text;
  }
  return text;
}

}  // namespace

std::vector<Figures> find_figures(std::string_view text) {
  std::vector<Figures> found;
  for (std::size_t at = 0; at < text.size() && found.size() < 2;) {
    if (!starts_number(text, at)) {
      ++at;
      continue;
    }
    Figures figures;
    figures.from = at;
    figures.whole = count_digits(text, at);
    if (at + 1 < text.size() && text.at(at) == '.' && base::is_digit(text.at(at + 1))) {
      ++at;
      figures.fraction = count_digits(text, at);
    }
    figures.to = at;
    if (text.substr(0, figures.from).ends_with(base::kMinus)) {
      figures.from -= base::kMinus.size();
      ++figures.whole;
    }
    found.push_back(figures);
  }
  return found;
}

void DecimalColumn::widen(const model::Runs& cell) {
  const std::vector<Figures> found = find_figures(text_of(cell));
  for (std::size_t i = 0; i < found.size(); ++i) {
    widest_.at(i).whole = std::max(widest_.at(i).whole, found.at(i).whole);
    widest_.at(i).fraction = std::max(widest_.at(i).fraction, found.at(i).fraction);
  }
}

model::Runs DecimalColumn::padded(const model::Runs& cell) const {
  model::Runs out = cell;
  const std::vector<Figures> found = find_figures(text_of(cell));
  if (found.size() == 2) {
    insert_at(out, found.at(1).from, repeat(kFigureSpace, widest_.at(1).whole - found.at(1).whole));
    insert_at(out, found.at(0).to, missing_fraction(widest_.at(0), found.at(0)));
  }
  if (!found.empty() && widest_.at(0).whole > found.front().whole) {
    out.insert(out.begin(), model::text_run(repeat(kFigureSpace, widest_.at(0).whole - found.front().whole)));
  }
  return out;
}

}  // namespace benchleaf::html
