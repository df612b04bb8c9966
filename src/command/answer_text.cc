// In: answers. Out: what `find` prints.

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

#include "base/utf8.h"
#include "command/answer.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostInFull = 3;
constexpr std::size_t kSummaryWidth = 100;
constexpr std::size_t kVerdictWidth = 15;

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

std::string peers_text(const Answer& answer) {
  std::string text;
  for (const bool same_system : {true, false}) {
    for (const auto& peer : answer.peers) {
      if (peer.same_system != same_system) continue;
      text += std::string("  same size, ") + (same_system ? "same system:  " : "OTHER system: ") + peer.title;
      text += (peer.system.empty() ? "" : ", " + peer.system) + " (" + peer.trust + ")\n";
    }
  }
  return text;
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

std::string full_text(const Answer& answer) {
  const std::string kind = answer.kind == "cell" ? std::string() : " (" + answer.kind + ")";
  std::string text = answer.title + kind + "\n";
  if (!answer.provenance.empty()) text += "  " + answer.provenance + "\n";
  if (!details(answer).empty()) text += "  " + details(answer) + "\n";
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

Json answer_json(const Answer& answer) {
  Json json;
  json["record"] = answer.record;
  json["title"] = answer.title;
  json["kind"] = answer.kind;
  json["page"] = answer.page;
  if (!answer.provenance.empty()) json["provenance"] = answer.provenance;
  if (answer.kind == "cell") {
    json["size"] = answer.size;
    json["voltage"] = answer.voltage;
    json["system"] = answer.system;
    json["drain"] = answer.drain;
    json["capacity"] = answer.capacity;
    json["same_size"] = Json::array();
    for (const auto& peer : answer.peers) {
      json["same_size"].push_back({{"record", peer.record},
                                   {"title", peer.title},
                                   {"system", peer.system},
                                   {"same_system", peer.same_system},
                                   {"trust", peer.trust}});
    }
  } else {
    json["summary"] = answer.summary;
    json["verdicts"] = Json::array();
    for (const auto& verdict : answer.verdicts) {
      json["verdicts"].push_back({{"record", verdict.record},
                                  {"title", verdict.title},
                                  {"verdict", verdict.verdict},
                                  {"why", verdict.why},
                                  {"trust", verdict.trust}});
    }
  }
  return json;
}

}  // namespace

std::string answers_text(const Answers& answers) {
  std::string text;
  if (answers.hits.empty()) {
    text = "nothing answers to " + answers.query + "\n";
    if (!answers.nearest.empty()) text += "nearest:\n";
    for (const auto& name : answers.nearest) text += "  " + name + "\n";
  } else if (answers.hits.size() <= kMostInFull) {
    for (const auto& answer : answers.hits) text += full_text(answer);
  } else {
    text = answers.query + "\n" + lines_text(answers.hits);
  }
  if (!answers.others.empty()) text += answers.others_head + "\n" + lines_text(answers.others);
  return text;
}

std::string answers_json(const Answers& answers) {
  Json json;
  json["query"] = answers.query;
  for (const auto& [name, list] : {std::pair{"hits", &answers.hits}, std::pair{"others", &answers.others}}) {
    json[name] = Json::array();
    for (const auto& answer : *list) json[name].push_back(answer_json(answer));
  }
  json["nearest"] = answers.nearest;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::command
