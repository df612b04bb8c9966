// In: answers. Out: what `find` prints.

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include "base/utf8.h"
#include "command/answer_text.h"

namespace benchleaf::command {
namespace {

using query::Answer;

constexpr std::size_t kMostInFull = 3;
constexpr std::size_t kSummaryWidth = 100;
constexpr std::size_t kVerdictWidth = 15;
constexpr std::size_t kPlaceWidth = 17;
constexpr std::size_t kComparedWidth = 10;

std::string padded(std::string text, std::size_t width) {
  const auto now = static_cast<std::size_t>(base::display_width(text));
  if (now < width) text.append(width - now, ' ');
  return text;
}

void add_part(std::string& text, const std::string& part) {
  if (part.empty()) return;
  if (!text.empty()) text += ", ";
  text += part;
}

std::string page_text(const Answer& answer) { return answer.page.empty() ? std::string() : "page " + answer.page; }

/// Cut at a word, so that one answer stays one line.
std::string shortened(const std::string& text) {
  if (text.size() <= kSummaryWidth) return text;
  const std::size_t space = text.rfind(' ', kSummaryWidth);
  return text.substr(0, space == std::string::npos ? kSummaryWidth : space) + " ...";
}

std::string details(const Answer& answer) {
  if (answer.kind != "cell") return shortened(answer.summary);
  std::string text = answer.size;
  add_part(text, answer.voltage);
  add_part(text, answer.system);
  if (!answer.drain.empty()) add_part(text, answer.drain + (answer.drain == "general" ? " use" : " drain"));
  add_part(text, answer.capacity);
  return text;
}

/// What goes in the place of a cell, its own system first: verdict, cell, why.
std::string peers_text(const Answer& answer) {
  std::string text;
  for (const auto& peer : answer.peers) {
    text += "  " + padded(peer.verdict, kPlaceWidth) + peer.title;
    text +=
        std::string(", ") + (peer.same_system ? "same system" : "OTHER system") + (peer.system.empty() ? "" : ", " + peer.system);
    text += (peer.why.empty() ? "" : ": " + peer.why) + " (" + peer.trust + ")\n";
  }
  return text.empty() ? text : "  same size, in its place\n" + text;
}

/// Bans and cares with their reasons, a line each; the rest by name.
std::string verdicts_text(const Answer& answer) {
  std::string text;
  std::string plain;
  std::string plain_verdict;
  const auto flush = [&text, &plain, &plain_verdict] {
    if (!plain.empty()) text += "  " + padded(plain_verdict, kVerdictWidth) + plain + "\n";
    plain.clear();
  };
  for (const auto& verdict : answer.verdicts) {
    if (!verdict.why.empty()) {
      flush();
      text += "  " + padded(verdict.verdict, kVerdictWidth) + verdict.title + ": " + verdict.why;
      text += verdict.trust.empty() ? "\n" : " (" + verdict.trust + ")\n";
      continue;
    }
    if (verdict.verdict != plain_verdict) flush();
    plain_verdict = verdict.verdict;
    add_part(plain, verdict.trust.empty() ? verdict.title : verdict.title + " (" + verdict.trust + ")");
  }
  flush();
  return text;
}

std::string compared_text(const std::vector<query::ComparedLine>& lines) {
  if (lines.empty()) return {};
  std::string text = "side by side\n";
  for (const auto& line : lines) {
    text += "  " + padded(line.what, kComparedWidth);
    text += line.same ? line.one + ", the same\n" : line.one + " | " + line.other + "\n";
  }
  return text;
}

/// Causes of a symptom, cheap tests first.
std::string causes_text(const Answer& answer) {
  std::string text;
  for (std::size_t i = 0; i < answer.causes.size(); ++i) {
    const auto& cause = answer.causes[i];
    text += "  " + std::to_string(i + 1) + ". " + cause.cause;
    for (const std::string& part : {cause.test, cause.cure, cause.stop}) text += part.empty() ? "" : " " + part;
    text += "\n";
  }
  return text;
}

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const auto& word : words) add_part(text, word);
  return text;
}

/// One line of text in lines of at most `width` columns, those that follow set in under the first.
std::string wrapped_line(const std::string& line, std::size_t width) {
  if (static_cast<std::size_t>(base::display_width(line)) <= width) return line + "\n";
  const std::size_t inset = std::min(line.find_first_not_of(' ') + 2, width / 2);
  std::string text, now;
  std::size_t at = 0;
  while (at < line.size()) {
    std::size_t end = line.find(' ', line.find_first_not_of(' ', at));
    if (end == std::string::npos) end = line.size();
    const std::string word = line.substr(at, end - at);
    const bool full = static_cast<std::size_t>(base::display_width(now + word)) > width;
    if (full && now.find_first_not_of(' ') != std::string::npos) {
      text += now + "\n";
      now = std::string(inset, ' ') + word.substr(word.find_first_not_of(' '));
    } else {
      now += word;
    }
    at = end;
  }
  return text + now + "\n";
}

std::string wrapped(const std::string& text, std::size_t width) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at);
    out += wrapped_line(text.substr(at, end - at), width);
    at = end + 1;
  }
  return out;
}

std::string full_text(const Answer& answer) {
  const std::string kind = answer.kind == "cell" ? std::string() : " (" + answer.kind + ")";
  std::string text = answer.title + kind + "\n";
  if (!answer.provenance.empty()) text += "  " + answer.provenance + "\n";
  if (!details(answer).empty()) text += "  " + details(answer) + "\n";
  if (!answer.shown.empty() && answer.shown != answer.summary) text += "  \"" + shortened(answer.shown) + "\"\n";
  if (!answer.first_aid.empty()) text += "  first aid: " + answer.first_aid + "\n";
  text += causes_text(answer);
  text += peers_text(answer);
  text += verdicts_text(answer);
  if (!page_text(answer).empty()) text += "  handbook (A4), " + page_text(answer) + "\n";
  return text;
}

std::string lines_text(const std::vector<Answer>& answers) {
  std::size_t title_width = 0;
  std::size_t detail_width = 0;
  for (const auto& answer : answers) {
    title_width = std::max(title_width, static_cast<std::size_t>(base::display_width(answer.title)));
    detail_width = std::max(detail_width, static_cast<std::size_t>(base::display_width(details(answer))));
  }
  std::string text;
  for (const auto& answer : answers) {
    std::string line =
        "  " + padded(answer.title, title_width + 2) + padded(details(answer), detail_width + 2) + page_text(answer);
    if (!answer.provenance.empty()) line += "  (" + answer.provenance + ")";
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  return text;
}

}  // namespace

std::string answers_text(const query::Answers& answers, std::size_t width) {
  std::string text;
  if (!answers.before.empty()) text += "first\n";
  for (const auto& answer : answers.before) text += "  " + answer.title + ": " + answer.summary + "\n";
  if (answers.hits.empty()) {
    text += "No match for " + answers.query + "\n";
    if (!answers.nearest.empty()) text += "nearest:\n";
    for (const auto& name : answers.nearest) text += "  " + name + "\n";
  } else if (answers.hits.size() <= kMostInFull) {
    for (const auto& answer : answers.hits) text += full_text(answer);
    text += compared_text(answers.compared);
  } else {
    text += answers.query + "\n" + lines_text(answers.hits);
  }
  if (!answers.left_out.empty()) text += "left out: " + joined(answers.left_out) + "\n";
  if (!answers.others.empty()) text += answers.others_head + "\n" + lines_text(answers.others);
  return wrapped(text, width);
}

}  // namespace benchleaf::command
