// In: the words of a ticket. Out: its lines for the terminal.
#include "ticket/plan_text.h"

#include <algorithm>

#include "base/quantity.h"
#include "model/signs.h"

namespace benchleaf::ticket {
namespace {

constexpr std::size_t kWidth = 80;
constexpr double kBlankMm = 2;  // of a line to write on, for one sign

/// A run as a terminal shows it: a sign by its word, a line to write on as one.
std::string run_text(const model::Run& run) {
  using Kind = model::Run::Kind;
  switch (run.kind) {
    case Kind::text:
    case Kind::verdict: return run.text;
    case Kind::trust_sign: return "(" + std::string(model::trust_name(run.trust)) + ")";
    case Kind::blank: return std::string(static_cast<std::size_t>(run.blank_mm / kBlankMm), '_');
    case Kind::line_break: return " ";
    case Kind::page_of:
    case Kind::source_key:
    case Kind::tick: break;
  }
  return {};
}

std::string runs_text(const model::Runs& runs) {
  std::string text;
  for (const model::Run& run : runs) text += run_text(run);
  return text;
}

/// Words in lines of kWidth, the later ones set in; a value stays beside its unit, whose thin space is no place to break.
std::string wrapped(const std::string& words, std::size_t indent) {
  std::string out;
  std::size_t column = 0;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t end = std::min(words.find(' ', at), words.size());
    const std::string word = base::to_terminal(words.substr(at, end - at));
    if (column > indent && column + word.size() + 1 > kWidth) {
      out += "\n" + std::string(indent, ' ');
      column = indent;
    } else if (column > 0) {
      out += ' ';
      ++column;
    }
    out += word;
    column += word.size();
    at = end + 1;
  }
  return out + "\n";
}

std::string caution_text(const SheetLine& line, const model::KnowledgeBase& records) {
  const auto* caution = records.find<model::Caution>(line.record);
  if (caution == nullptr) return "! " + line.record;
  std::string text = "!! " + std::string(model::message_word(caution->word)) + ": " + caution->hazard;
  if (line.again) return text;
  return text + " " + caution->avoid + (caution->first_aid.empty() ? "" : " If it happens: " + caution->first_aid);
}

std::string paper_text(const SheetLine& line, const model::KnowledgeBase& records) {
  if (line.kind == SheetLine::Kind::caution) return caution_text(line, records);
  std::string text;
  for (const model::Runs& cell : line.cells) {
    const std::string words = runs_text(cell);
    if (!words.empty()) text += (text.empty() ? "" : "  ") + words;
  }
  return text;
}

}  // namespace

std::string line_text(const SheetLine& line, const model::KnowledgeBase& records) {
  return base::to_terminal(paper_text(line, records));
}

std::string sheets_text(const Plan& plan, const Sheets& sheets, const model::KnowledgeBase& records) {
  std::string text = plan.title + "\n";
  for (const SheetSection& section : sheets.all()) {
    text += "\n" + section.title + (section.note.empty() ? "" : " (" + section.note + ")") + "\n";
    for (const SheetLine& line : section.lines) {
      const bool boxed = line.kind == SheetLine::Kind::tick || line.kind == SheetLine::Kind::step;
      text += wrapped((boxed ? "[ ] " : "") + paper_text(line, records), 4);
    }
  }
  return text;
}

std::string order_text(const compose::Desk& desk, const std::vector<PlanNeed>& list, std::size_t watches) {
  std::string text = "\nTo get for " + std::to_string(watches) + (watches == 1 ? " watch\n" : " watches\n");
  if (list.empty()) return text + "nothing: all of it is in stock\n";
  for (const PlanNeed& need : list)
    text += wrapped(
        "[ ] " + std::to_string(need.count) + " x " + need_words(desk, need) + (need.to_measure ? ", measured first" : ""), 4);
  return text;
}

}  // namespace benchleaf::ticket
