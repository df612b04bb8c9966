// In: words, facts, references. Out: runs of one line.
#include "compose/line.h"

#include <utility>

namespace benchleaf::compose {

Line& Line::say(std::string text, model::Style style) {
  if (!text.empty()) runs_.push_back(model::text_run(std::move(text), style));
  return *this;
}

Line& Line::label(std::string text) {
  // On paper the accent is for the numbers of pages alone.
  const model::Style style = desk_.on_paper() ? model::Style::bold : model::Style::accent | model::Style::bold;
  return say(std::move(text), style).say("  ");
}

Line& Line::fact(const model::Record& record, std::string_view path, std::string before, model::Style style) {
  const model::Fact* fact = desk_.fact(record, path);
  if (fact == nullptr) return *this;
  say(std::move(before));
  runs_.push_back(model::fact_run(*fact, style));
  return *this;
}

Line& Line::fact(const model::Fact& fact, model::Style style) {
  runs_.push_back(model::fact_run(fact, style));
  return *this;
}

Line& Line::link(std::string_view reference, model::Style style) { return link(desk_.name(reference), reference, style); }

Line& Line::link(std::string words, std::string_view reference, model::Style style) {
  const model::Record* record = desk_.records.find(reference);
  if (record == nullptr) return say(std::move(words), style);
  runs_.push_back(model::link_run(std::move(words), record->reference(), style));
  runs_.push_back(page_after(record->reference()));
  return *this;
}

Line& Line::name(std::string_view reference, model::Style style) {
  const model::Record* record = desk_.records.find(reference);
  if (record == nullptr) return say(desk_.name(reference), style);
  runs_.push_back(model::link_run(desk_.name(reference), record->reference(), style));
  return *this;
}

Line& Line::links(const model::References& references) {
  bool first = true;
  for (const model::RecordRef& reference : references) {
    if (!first) say(", ");
    first = false;
    link(reference);
  }
  return *this;
}

Line& Line::verdict(model::Verdict verdict, std::string words, model::Style style) {
  model::Run run = model::text_run(std::move(words), style);
  run.kind = model::Run::Kind::verdict;
  run.verdict = verdict;
  runs_.push_back(std::move(run));
  return *this;
}

Line& Line::page(std::string_view reference) {
  runs_.push_back(model::page_run(std::string(reference)));
  return *this;
}

Line& Line::names(const model::References& references) {
  bool first = true;
  for (const std::string& reference : references) {
    if (!first) say(", ");
    first = false;
    name(reference);
  }
  return *this;
}

Line& Line::source_keys(const std::vector<std::string>& sources) {
  if (!desk_.on_paper() || desk_.source_numbers == nullptr) return *this;
  std::map<int, std::string> numbered;
  for (const std::string& source : sources) {
    const auto number = desk_.source_numbers->find(source);
    if (number != desk_.source_numbers->end()) numbered[number->second] = source;
  }
  std::string before = empty() ? "[" : "\u2002[";
  std::size_t left = numbered.size();
  for (const auto& [number, source] : numbered) {
    --left;
    runs_.push_back(model::source_key_run(before + std::to_string(number) + (left == 0 ? "]" : ""), source));
    before = "\u00A0";
  }
  return *this;
}

namespace {

bool is_published(model::Trust trust) {
  return trust == model::Trust::standard || trust == model::Trust::handbook || trust == model::Trust::dataset;
}

}  // namespace

Line& Line::sign(Sign sign) {
  if (desk_.on_paper() && is_published(sign.trust)) return *this;
  runs_.push_back(model::trust_run(sign.trust, sign.derived));
  return *this;
}

Line& Line::blank(double mm) {
  model::Run run;
  run.kind = model::Run::Kind::blank;
  run.blank_mm = mm;
  runs_.push_back(std::move(run));
  return *this;
}

Line& Line::tick() {
  model::Run run;
  run.kind = model::Run::Kind::tick;
  runs_.push_back(std::move(run));
  return *this;
}

Line& Line::line_break() {
  model::Run run;
  run.kind = model::Run::Kind::line_break;
  runs_.push_back(std::move(run));
  return *this;
}

model::Run page_after(std::string target) {
  model::Run run = model::page_run(std::move(target));
  run.text = "\u00A0";
  return run;
}

}  // namespace benchleaf::compose
