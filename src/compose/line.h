#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "compose/desk.h"
#include "model/book.h"

namespace benchleaf::compose {

/// Builds one line of running text. What is empty or unknown leaves no trace.
class Line {
 public:
  explicit Line(const Desk& desk) : desk_(desk) {}

  Line& say(std::string text, model::Style style = model::Style::plain);
  /// A run-in label in the accent, with a space after it.
  Line& label(std::string text);
  /// The fact of a record as it is printed; `before` stands in front of it where there is one.
  Line& fact(const model::Record& record, std::string_view path, std::string before = {},
             model::Style style = model::Style::plain);
  Line& fact(const model::Fact& fact, model::Style style = model::Style::plain);
  /// The name of a record as a link, in print with its page.
  Line& link(std::string_view reference, model::Style style = model::Style::plain);
  /// The same with other words.
  Line& link(std::string words, std::string_view reference, model::Style style = model::Style::plain);
  /// The name of a record as a link without its page, where the page stands nearby or names follow close.
  Line& name(std::string_view reference, model::Style style = model::Style::plain);
  /// The page of a record alone.
  Line& page(std::string_view reference);
  /// Names of records as links without pages, `, ` between them.
  Line& names(const model::References& references);
  /// Links with `, ` between them.
  Line& links(const model::References& references);
  Line& verdict(model::Verdict verdict, std::string words, model::Style style = model::Style::plain);
  /// A sign of trust; on paper what was published goes without.
  Line& sign(Sign sign);
  /// `[12 30]`, the numbers of sources: on paper alone.
  Line& source_keys(const std::vector<std::string>& sources);
  Line& blank(double mm);
  Line& tick();
  Line& line_break();

  bool empty() const { return runs_.empty(); }
  model::Runs take() { return std::move(runs_); }

 private:
  const Desk& desk_;
  model::Runs runs_;
};

/// The page of a target, led by a space that only print sets.
model::Run page_after(std::string target);

}  // namespace benchleaf::compose
