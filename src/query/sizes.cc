// In: words of a query. Out: the lengths that it states.
#include "query/sizes.h"

#include <algorithm>

#include "base/number.h"
#include "base/unit.h"

namespace benchleaf::query {

namespace {

using base::kMillimetresPerInch;

constexpr double kHalfPart = kMillimetresPerInch / 128;  // half of a 64th, the finest part of a rule
constexpr std::size_t kFinestDecimals = 4;

using Sort = Word::Sort;

double slack_of_inches(const Word& number) {
  const std::size_t point = number.text.find('.');
  const std::size_t decimals = point == std::string::npos ? 0 : number.text.size() - point - 1;
  if (decimals > kFinestDecimals || decimals < 3) return kHalfPart;  // a fraction, or written as one
  double slack = kMillimetresPerInch / 2;
  for (std::size_t i = 0; i < decimals; ++i) slack /= 10;
  return slack + 1e-9;
}

class SizeReader {
 public:
  SizeReader(const std::vector<Word>& words, const Vocabulary& vocabulary) : words_(words), vocabulary_(vocabulary) {
    inches_ = std::any_of(words.begin(), words.end(), [](const Word& word) { return word.sort == Sort::inch; });
  }

  AskedSize read() {
    for (std::size_t at = 0; at < words_.size();) {
      const std::size_t taken = take(at);
      if (taken == 0) size_.rest.push_back(words_[at]);
      at += std::max<std::size_t>(taken, 1);
    }
    return std::move(size_);
  }

 private:
  bool is(std::size_t at, Sort sort) const { return at < words_.size() && words_[at].sort == sort; }
  bool is_unit(std::size_t at) const { return is(at, Sort::millimetre) || is(at, Sort::inch); }

  Measure measure(std::size_t at, bool metric) const {
    const Word& number = words_[at];
    if (metric || !inches_) return {Measure::Role::any, number.value, 0};
    return {Measure::Role::any, base::tidy(number.value * kMillimetresPerInch), slack_of_inches(number)};
  }

  std::size_t take(std::size_t at) {
    if (!is(at, Sort::number)) return take_role_first(at);
    std::size_t next = at + 1;
    if (is_unit(next)) ++next;
    if (is(next, Sort::times) && is(next + 1, Sort::number)) return take_pair(at, next + 1);
    return take_single(at, next);
  }

  std::size_t take_pair(std::size_t at, std::size_t second) {
    std::size_t next = second + 1;
    if (is_unit(next)) ++next;
    if (is(next, Sort::times)) return 0;  // three figures are no size of a round thing
    const bool metric = is(next - 1, Sort::millimetre) || is(at + 1, Sort::millimetre);
    Measure one = measure(at, metric), other = measure(second, metric);
    one.role = Measure::Role::wide;
    other.role = Measure::Role::high;
    size_.measures.push_back(one);
    size_.measures.push_back(other);
    size_.pair = true;
    return next - at;
  }

  /// A figure with a unit or with a word that says what it measures.
  std::size_t take_single(std::size_t at, std::size_t next) {
    const auto role = next < words_.size() ? role_of(words_[next]) : Measure::Role::any;
    const bool unit = next > at + 1;
    if (role == Measure::Role::any && !unit) return 0;
    Measure one = measure(at, unit && is(at + 1, Sort::millimetre));
    one.role = role;
    size_.measures.push_back(one);
    return next - at + (role == Measure::Role::any ? 0 : 1);
  }

  /// `height 2.6`, `dia. 6.8 mm`.
  std::size_t take_role_first(std::size_t at) {
    const auto role = role_of(words_[at]);
    if (role == Measure::Role::any || !is(at + 1, Sort::number)) return 0;
    std::size_t next = at + 2;
    if (is_unit(next)) ++next;
    if (is(next, Sort::times) || (next < words_.size() && role_of(words_[next]) != Measure::Role::any)) return 0;
    Measure one = measure(at + 1, is(at + 2, Sort::millimetre));
    one.role = role;
    size_.measures.push_back(one);
    return next - at;
  }

  Measure::Role role_of(const Word& word) const {
    if (word.sort != Sort::word) return Measure::Role::any;
    if (vocabulary_.is(word, Use::wide)) return Measure::Role::wide;
    return vocabulary_.is(word, Use::high) ? Measure::Role::high : Measure::Role::any;
  }

  const std::vector<Word>& words_;
  const Vocabulary& vocabulary_;
  bool inches_ = false;
  AskedSize size_;
};

/// Two lengths of which one says what it is: the other is the other. Two of which none does: the larger is the width.
void settle_roles(std::vector<Measure>& measures) {
  if (measures.size() != 2) return;
  Measure &one = measures[0], &other = measures[1];
  if (one.role == Measure::Role::any && other.role == Measure::Role::any) one.role = Measure::Role::wide;
  for (const auto& [known, open] : {std::pair{&one, &other}, std::pair{&other, &one}}) {
    if (open->role != Measure::Role::any || known->role == Measure::Role::any) continue;
    open->role = known->role == Measure::Role::wide ? Measure::Role::high : Measure::Role::wide;
  }
}

}  // namespace

AskedSize size_in(const std::vector<Word>& words, const Vocabulary& vocabulary) {
  AskedSize size = SizeReader(words, vocabulary).read();
  settle_roles(size.measures);
  return size;
}

}  // namespace benchleaf::query
