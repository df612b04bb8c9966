// In and out: figures of records and their line format.
//   benchleaf-figures 1
//   id  trust  unit  value  low  high  printed        (an empty part: none)
// Parts stand between tabs, as base/line_parts.h writes them.

#include "bench/figure_lines.h"

#include <cstddef>
#include <utility>

#include "base/line_parts.h"
#include "base/number.h"

namespace benchleaf::bench {
namespace {

constexpr std::string_view kHead = "benchleaf-figures 1\n";
constexpr std::size_t kParts = 7;

std::string number_text(const std::optional<double>& number) { return number ? base::shortest_text(*number) : std::string(); }

/// An empty part is no number and no fault.
bool read_number_part(const std::string& part, std::optional<double>& number) {
  if (part.empty()) return true;
  number = base::parse_decimal(part);
  return number.has_value();
}

std::optional<model::Fact> fact_of(std::string_view line) {
  const auto parts = base::parts_of(line);
  if (parts.size() != kParts) return std::nullopt;
  const auto trust = model::trust_from_name(parts[1]);
  model::Fact fact;
  const bool numbers =
      read_number_part(parts[3], fact.value) && read_number_part(parts[4], fact.low) && read_number_part(parts[5], fact.high);
  if (!trust || !numbers) return std::nullopt;
  fact.id = parts[0];
  fact.trust = *trust;
  fact.unit = parts[2];
  fact.printed = parts[6];
  return fact;
}

}  // namespace

std::string figure_lines(const model::FactBase& figures) {
  std::string text(kHead);
  for (const auto& fact : figures.all()) {
    text += base::line_of({fact.id, model::trust_name(fact.trust), fact.unit, number_text(fact.value), number_text(fact.low),
                           number_text(fact.high), fact.printed});
    text += '\n';
  }
  return text;
}

std::optional<model::FactBase> read_figure_lines(std::string_view text) {
  if (text.substr(0, kHead.size()) != kHead) return std::nullopt;
  text.remove_prefix(kHead.size());
  model::FactBase figures;
  while (!text.empty()) {
    auto fact = fact_of(base::take_line(text));
    if (!fact) return std::nullopt;
    figures.add(std::move(*fact));
  }
  return figures;
}

std::size_t figures_start(std::string_view text) {
  if (text.substr(0, kHead.size()) == kHead) return 0;
  const std::size_t at = text.find("\n" + std::string(kHead));
  return at == std::string_view::npos ? text.size() : at + 1;
}

}  // namespace benchleaf::bench
