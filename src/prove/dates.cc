// Rules about dates: days that the calendar has, none after the book, and each after what it rests on.

#include <algorithm>
#include <string>
#include <string_view>

#include "base/calendar.h"
#include "prove/published_checks.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Record;
using report::Rule;

/// Whether one date lies after another, as far as both say: 2026-11-25 is not after 2026-11.
bool is_after(std::string_view one, std::string_view other) {
  const std::size_t common = std::min(one.size(), other.size());
  return one.substr(0, common) > other.substr(0, common);
}

/// A date with its place, the earliest and the latest that it can be, and what those are.
struct Dated {
  base::Span where;
  std::string date;
  std::string earliest, since;
  std::string latest, until;
};

void check_date(const Proof& proof, const Dated& one) {
  if (one.date.empty()) return;
  if (!base::is_date(one.date)) {
    proof.findings.add(Rule::date_calendar, one.where, "found " + one.date + ", which no calendar has", "write it as 2026-11-25");
  } else if (!one.earliest.empty() && is_after(one.earliest, one.date)) {
    proof.findings.add(Rule::date_order, one.where, "found " + one.date + ", before " + one.earliest + ", " + one.since,
                       "correct one of the two");
  } else if (!one.latest.empty() && is_after(one.date, one.latest)) {
    proof.findings.add(Rule::date_order, one.where, "found " + one.date + ", after " + one.latest + ", " + one.until,
                       "correct one of the two");
  }
}

// Data sheets on paper go back to the first quartz watches, rubber lies in a drawer for a working life.
constexpr const char* kFirstPage = "1880";
constexpr const char* kFirstStored = "1990";
constexpr const char* kFirstStock = "2000";

void check_basis_dates(const Proof& proof, const Record& record) {
  for (const auto& [path, basis] : record.basis) {
    const auto* found = record_of(proof, model::Kind::source, basis.source);
    const auto* source = found == nullptr ? nullptr : &proof.base.sources.at(found->id);
    const bool dated = source != nullptr && !source->date_read.empty() && source->usable("date-read");
    check_date(proof, {basis.span, basis.as_of, kFirstStored, "before which no page was stored",
                       dated ? source->date_read : proof.base.handbook.date,
                       dated ? "when its source was read" : "the date of the book"});
  }
}

std::string usable_date(const Record& record, const std::string& path, const std::string& date) {
  return record.usable(path) ? date : std::string();
}

}  // namespace

void check_dates(const Proof& proof) {
  for (const Record* record : proof.base.all()) check_basis_dates(proof, *record);
  // that sources are not read after the book is the rule source.dates
  for (const auto& [id, source] : proof.base.sources) {
    check_date(proof, {source.span_of("date-read"),
                       usable_date(source, "date-read", source.date_read),
                       kFirstStored,
                       "before which no page was stored",
                       {},
                       {}});
    check_date(
        proof,
        {source.span_of("year"), usable_date(source, "year", source.year), kFirstPage, "the oldest that is quoted", {}, {}});
  }
  for (const auto& [id, stock] : proof.base.stocks) {
    check_date(proof, {stock.span_of("date"), usable_date(stock, "date", stock.date), kFirstStock, "before any list of a drawer",
                       proof.base.handbook.date, "the date of the book"});
    for (std::size_t i = 0; i < stock.items.size(); ++i) {
      const std::string path = "items." + std::to_string(i) + ".made";
      check_date(proof, {stock.span_of(path), usable_date(stock, path, stock.items[i].made), kFirstStock,
                         "too old for any drawer", usable_date(stock, "date", stock.date), "the date of the list"});
    }
  }
}

}  // namespace benchleaf::prove
