// In: words, facts and anchors. Out: runs of text for the book, and the plain words of runs.
#include "model/book.h"

#include <utility>

#include "base/ascii.h"

namespace benchleaf::model {

std::string plain_text(const Runs& runs) {
  std::string text;
  for (const Run& run : runs) {
    switch (run.kind) {
      case Run::Kind::text:
      case Run::Kind::verdict: text += run.text; break;
      case Run::Kind::line_break: text += ' '; break;
      case Run::Kind::page_of:  // a page number and a sign say nothing in a bookmark or an index
      case Run::Kind::source_key:
      case Run::Kind::trust_sign:
      case Run::Kind::blank:
      case Run::Kind::tick: break;
    }
  }
  return text;
}

Run text_run(std::string text, Style style) {
  Run run;
  run.text = std::move(text);
  run.style = style;
  return run;
}

Run fact_run(const Fact& fact, Style style) {
  Run run = text_run(fact.printed, style);
  run.fact = fact.id;
  return run;
}

Run trust_run(Trust trust, bool derived) {
  Run run;
  run.kind = Run::Kind::trust_sign;
  run.trust = trust;
  run.derived = derived;
  return run;
}

Run link_run(std::string text, std::string target, Style style) {
  Run run = text_run(std::move(text), style);
  run.target = std::move(target);
  return run;
}

Run source_key_run(std::string text, std::string target) {
  Run run = link_run(std::move(text), std::move(target));
  run.kind = Run::Kind::source_key;
  return run;
}

Run page_run(std::string target) {
  Run run;
  run.kind = Run::Kind::page_of;
  run.target = std::move(target);
  return run;
}

const Runs& harm_words(const Message& message) {
  return message.length == Message::Length::brief ? message.harm_in_brief : message.hazard;
}

const Runs& avoid_words(const Message& message) {
  return message.length == Message::Length::brief ? message.avoid_in_brief : message.avoid;
}

std::string index_group(const IndexEntry& entry) {
  const std::string& key = entry.sort_key.empty() ? entry.word : entry.sort_key;
  const char first = key.empty() ? ' ' : key.front();
  if (base::is_digit(first)) return "0\u20139";
  if (first >= 'a' && first <= 'z') return std::string(1, static_cast<char>(first - 'a' + 'A'));
  return first >= 'A' && first <= 'Z' ? std::string(1, first) : "Signs";
}

}  // namespace benchleaf::model
