// In: what two states say differently. Out: lines for the terminal, or Markdown for a review.

#include <algorithm>
#include <array>
#include <functional>
#include <set>
#include <string>
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
std::string what_became(const Change& change, Detail detail, const std::function<std::string(const std::string&)>& set) {
  const std::string how(compose::how_name(change.how));
  const bool formula = (change.of == Of::derived || change.of == Of::chart) && detail == Detail::brief;
  const std::string rests = change.basis.empty() || formula ? std::string() : " (" + set(base::to_terminal(change.basis)) + ")";
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

constexpr std::size_t kMostOfAnEdit = 10;  // lines

/// How many changes are told: all in detail, else some for each record that was edited.
std::size_t most_told(const compose::Changes& changes, Detail detail) {
  if (detail == Detail::working) return changes.stated.size() + changes.derived.size();
  std::set<std::string> edited;
  for (const Change& change : changes.stated) edited.insert(change.id.substr(0, change.id.find('#')));
  return kMostOfAnEdit * std::max<std::size_t>(edited.size(), 1);
}

/// `12 more, which --working lists`, or empty.
std::string left_out(const compose::Changes& changes, std::size_t most) {
  const std::size_t all = changes.stated.size() + changes.derived.size();
  return all <= most ? std::string() : "and " + std::to_string(all - most) + " more (see all with --working)";
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

std::string changes_text(const compose::Changes& changes, Detail detail) {
  std::string text;
  const std::size_t most = most_told(changes, detail);
  std::size_t told = 0;
  for (const Part& part : parts_of(changes)) {
    std::string lines;
    for (const Change& change : part.list) {
      if (!part.holds(change) || told == most) continue;
      ++told;
      lines += "  " + base::to_terminal(change.id) + " " + what_became(change, detail, as_it_is) + "\n";
      if (detail == Detail::working && !change.because.empty())
        lines += "    follows from " + compose::listed(change.because) + "\n";
    }
    if (!lines.empty()) text += std::string(part.title) + "\n" + lines + "\n";
  }
  const std::string more = left_out(changes, most);
  return text + (more.empty() ? "" : more + "\n\n") + counts(changes) + "\n";
}

std::string changes_markdown(const compose::Changes& changes, Detail detail) {
  std::string text = "## What the content says differently\n\n" + counts(changes) + "\n";
  const std::size_t most = most_told(changes, detail);
  std::size_t told = 0;
  for (const Part& part : parts_of(changes)) {
    std::string lines;
    for (const Change& change : part.list) {
      if (!part.holds(change) || told == most) continue;
      ++told;
      lines += "- " + code(base::to_terminal(change.id)) + " " + what_became(change, detail, code) + "\n";
      std::string causes;
      for (const auto& cause : change.because) causes += (causes.empty() ? "" : ", ") + code(cause);
      if (detail == Detail::working && !causes.empty()) lines += "  - follows from " + causes + "\n";
    }
    if (!lines.empty()) text += "\n### " + std::string(part.title) + "\n\n" + lines;
  }
  const std::string more = left_out(changes, most);
  return text + (more.empty() ? "" : "\n" + more + "\n");
}

}  // namespace benchleaf::command
