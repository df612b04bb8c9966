// In: runs of the book. Out: inline HTML. Neighbouring runs with one target become one link; a value and its unit, and a
// short value and its trust sign, stay on one line.
#include "html/runs.h"

#include <algorithm>

#include "base/number.h"
#include "base/quantity.h"
#include "html/decimals.h"
#include "html/drawings.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

using model::Run;
using model::Runs;
using model::Style;

/// A longer piece may break: on a phone it would not fit a line.
constexpr std::size_t kLongestWhole = 24;

/// Words, with every piece that holds a thin space (a value and its unit) kept on one line.
Markup keep_values_whole(std::string_view text) {
  if (text.find(base::kThinSpace) == std::string_view::npos) return words(text);
  Markup out;
  while (!text.empty()) {
    const std::size_t length = std::min(text.find(' '), text.size());
    const std::string_view piece = text.substr(0, length);
    if (piece.find(base::kThinSpace) != std::string_view::npos && piece.size() <= kLongestWhole) {
      out += Element("span").in_class("whole").say(piece);
    } else {
      out += words(piece);
    }
    if (length < text.size()) out += words(" ");
    text.remove_prefix(std::min(length + 1, text.size()));
  }
  return out;
}

Markup in_style(Markup content, Style style) {
  if (has(style, Style::code)) content = Element("code").add(content);
  if (has(style, Style::subscript)) content = Element("sub").add(content);
  if (has(style, Style::italic)) content = Element("i").add(content);
  if (has(style, Style::bold)) content = Element("b").add(content);
  if (has(style, Style::accent)) content = Element("span").in_class("label").add(content);
  return content;
}

bool is_short(std::string_view text) { return text.size() <= kLongestWhole && text.find(' ') == std::string_view::npos; }

class Setter {
 public:
  Setter(Setting& setting, bool linked) : setting_(setting), linked_(linked) {}

  Markup set(const Runs& runs) {
    Markup out;
    for (std::size_t at = 0; at < runs.size();) {
      if (linked_ && is_link(runs.at(at))) {
        out += set_link(runs, at);
      } else if (holds_its_sign(runs, at)) {
        out += Element("span").in_class("whole").add(set_run(runs.at(at))).add(set_run(runs.at(at + 1)));
        at += 2;
      } else {
        out += set_run(runs.at(at));
        ++at;
      }
    }
    return out;
  }

 private:
  static bool is_link(const Run& run) {
    return !run.target.empty() && !run.text.empty() && (run.kind == Run::Kind::text || run.kind == Run::Kind::verdict);
  }

  bool holds_its_sign(const Runs& runs, std::size_t at) const {
    if (at + 1 >= runs.size() || runs.at(at + 1).kind != Run::Kind::trust_sign) return false;
    const Run& run = runs.at(at);
    return run.kind == Run::Kind::text && !run.fact.empty() && is_short(run.text);
  }

  Markup set_link(const Runs& runs, std::size_t& at) {
    const std::string& target = runs.at(at).target;
    Markup content;
    while (at < runs.size() && is_link(runs.at(at)) && runs.at(at).target == target) {
      content += set_run(runs.at(at));
      ++at;
    }
    const std::optional<Url> address = address_of(target, setting_);
    return address ? Element("a").href(*address).add(content).markup() : content;
  }

  Markup set_run(const Run& run) {
    switch (run.kind) {
      case Run::Kind::text: return run.fact.empty() ? in_style(keep_values_whole(run.text), run.style) : set_fact(run);
      case Run::Kind::page_of:
      case Run::Kind::source_key: return {};
      case Run::Kind::trust_sign: return trust_sign(run.trust, run.derived, setting_);
      case Run::Kind::verdict: return verdict(run.verdict, set_verdict_words(run), setting_);
      case Run::Kind::line_break: return Element("br");
      case Run::Kind::blank: return blank_line(run.blank_mm);
      case Run::Kind::tick: return tick_box();
    }
    return {};
  }

  Markup set_verdict_words(const Run& run) {
    if (run.text.empty()) return {};
    Run words_only = run;
    words_only.kind = Run::Kind::text;
    return set_run(words_only);
  }

  Markup set_fact(const Run& run) {
    Element data("data");
    data.in_class("fact");
    if (is_short(run.text)) data.in_class("whole");
    if (linked_) {
      if (const std::optional<Id> id = claim_name(run.fact, setting_)) data.id(*id);
    }
    data.set("value", plain_value(run.text)).set("data-fact", run.fact);
    return in_style(data.add(is_short(run.text) ? words(run.text) : keep_values_whole(run.text)), run.style);
  }

  Setting& setting_;
  bool linked_;
};

}  // namespace

Markup set_runs(const Runs& runs, Setting& setting) { return Setter(setting, true).set(runs); }

Markup set_runs_plainly(const Runs& runs, Setting& setting) { return Setter(setting, false).set(runs); }

std::string plain_value(std::string_view printed) {
  std::string out(printed);
  for (std::string_view pad : {kFigureSpace, kPunctuationSpace}) {
    for (std::size_t at = out.find(pad); at != std::string::npos; at = out.find(pad, at)) out.erase(at, pad.size());
  }
  return base::to_terminal(out);
}

}  // namespace benchleaf::html
