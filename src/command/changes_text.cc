// In: what two states say differently. Out: lines for the terminal, or Markdown for a review.

#include <algorithm>
#include <array>
#include <functional>
#include <string_view>

#include "base/quantity.h"
#include "command/changes_written.h"
#include "compose/desk.h"

namespace benchleaf::command {
namespace {

using compose::Change;
using Of = Change::Of;
using How = Change::How;

/// The parts in which both forms tell.
struct Part {
  const char* title;
  const std::vector<Change>& list;
  std::function<bool(const Change&)> holds;
};

std::array<Part, 4> parts_of(const compose::Changes& changes) {
  const auto is_chart = [](const Change& change) { return change.of == Of::chart; };
  const auto is_basis = [](const Change& change) { return change.how == How::basis; };
  return {{{"Stated", changes.stated, [=](const Change& change) { return !is_basis(change); }},
           {"Stated, another basis", changes.stated, is_basis},
           {"Derived", changes.derived, [=](const Change& change) { return !is_chart(change); }},
           {"Rows of charts", changes.derived, is_chart}}};
}

std::string or_nothing(const std::string& text) { return text.empty() ? "nothing" : base::to_terminal(text); }

/// `altered: 5.4 mm -> 5.5 mm`, the two ends as `set` sets them.
std::string what_became(const Change& change, const std::function<std::string(const std::string&)>& set) {
  const std::string how(compose::how_name(change.how));
  const std::string rests = change.basis.empty() ? std::string() : " (" + set(base::to_terminal(change.basis)) + ")";
  if (change.how == How::added) return how + ": " + set(or_nothing(change.after)) + rests;
  if (change.how == How::removed) return how + ": " + set(or_nothing(change.before)) + rests;
  std::string of;
  if (change.how == How::basis && !change.fields.empty()) of = " of " + compose::listed(change.fields);
  return how + of + ": " + set(or_nothing(change.before)) + " -> " + set(or_nothing(change.after));
}

std::string plural(std::size_t count, const char* what) {
  return std::to_string(count) + " " + what + (count == 1 ? " change" : " changes");
}

std::string counts(const compose::Changes& changes) {
  if (changes.empty()) return "The two say the same.";
  return plural(changes.stated.size(), "stated") + ", " + plural(changes.derived.size(), "derived") + ".";
}

std::string as_it_is(const std::string& text) { return text; }

/// Within a code span nothing is markup but the fence, which is longer than any in the text.
std::string code(const std::string& text) {
  std::size_t longest = 0, run = 0;
  for (const char c : text) {
    run = c == '`' ? run + 1 : 0;
    longest = std::max(longest, run);
  }
  const std::string fence(longest + 1, '`');
  const std::string space = longest > 0 ? " " : "";
  return fence + space + text + space + fence;
}

}  // namespace

std::string changes_text(const compose::Changes& changes) {
  std::string text;
  for (const Part& part : parts_of(changes)) {
    std::string lines;
    for (const Change& change : part.list) {
      if (!part.holds(change)) continue;
      lines += "  " + base::to_terminal(change.id) + "\n    " + what_became(change, as_it_is) + "\n";
      if (!change.because.empty()) lines += "    follows from " + compose::listed(change.because) + "\n";
    }
    if (!lines.empty()) text += std::string(part.title) + "\n" + lines + "\n";
  }
  return text + counts(changes) + "\n";
}

std::string changes_markdown(const compose::Changes& changes) {
  std::string text = "## What the content says differently\n\n" + counts(changes) + "\n";
  for (const Part& part : parts_of(changes)) {
    std::string lines;
    for (const Change& change : part.list) {
      if (!part.holds(change)) continue;
      lines += "- " + code(base::to_terminal(change.id)) + " " + what_became(change, code) + "\n";
      std::string causes;
      for (const auto& cause : change.because) causes += (causes.empty() ? "" : ", ") + code(cause);
      if (!causes.empty()) lines += "  - follows from " + causes + "\n";
    }
    if (!lines.empty()) text += "\n### " + std::string(part.title) + "\n\n" + lines;
  }
  return text;
}

}  // namespace benchleaf::command
