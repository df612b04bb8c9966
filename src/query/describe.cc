// In: a record or a pair. Out: the answer with what a restorer asks for first.
#include "query/describe.h"

#include <algorithm>

#include "base/number.h"
#include "base/quantity.h"
#include "bench/calculator.h"
#include "bench/cell_candidates.h"
#include "query/names.h"
#include "query/record_text.h"

namespace benchleaf::query {

namespace {

using model::Kind;

bool is_agent(const model::Record& record) { return record.kind == Kind::chemistry || record.kind == Kind::abrasive; }

std::string stated(const std::optional<base::Quantity>& quantity) {
  return quantity && quantity->has_value() ? base::terminal(*quantity) : std::string();
}

std::string provenance_of(const model::KnowledgeBase& records, const model::Record& record) {
  const model::Overlay* overlay = records.overlay_of(record);
  if (overlay == nullptr) return {};
  return (record.replaced ? "Replaced by " : "Added by ") + overlay->name;
}

AnswerVerdict answer_verdict(const PairVerdict& verdict, const model::Record& other, const std::string& about = {}) {
  return {other.reference(), other.title + about, std::string(code_name(verdict.code)),
          verdict.words,     verdict.why,         verdict.trust};
}

int rank(const AnswerVerdict& verdict) {
  if (verdict.code == code_name(Code::never)) return 0;
  if (verdict.code == code_name(Code::with_care)) return 1;
  return verdict.code == code_name(Code::not_known) ? 2 : 3;
}

std::string lowered(std::string title) {
  const bool name = title.size() > 1 && title[1] >= 'A' && title[1] <= 'Z';
  if (!name && !title.empty() && title[0] >= 'A' && title[0] <= 'Z') title[0] = static_cast<char>(title[0] - 'A' + 'a');
  return title;
}

}  // namespace

Answer Describer::record(const model::Record& record) const {
  Answer out;
  out.record = record.reference();
  out.title = title_of(record);
  out.kind = std::string(model::kind_name(record.kind));
  out.provenance = provenance_of(world_.records, record);
  if (page_of_) out.page = page_of_(out.record);
  if (record.kind == Kind::cell) {
    add_cell(static_cast<const model::Cell&>(record), out);
    return out;
  }
  out.summary = base::to_terminal(summary_of(record));
  out.verdicts = verdicts_about(record);
  if (record.kind == Kind::symptom) {
    for (const auto& cause : static_cast<const model::Symptom&>(record).causes)
      out.causes.push_back({cause.cause, cause.test, cause.cure, cause.procedure, cause.stop});
  }
  if (record.kind == Kind::caution) out.first_aid = static_cast<const model::Caution&>(record).first_aid;
  return out;
}

std::string Describer::system_name(const model::Cell& cell) const {
  const model::CellSystem* system = world_.tables.cell_system_by_id(cell.system);
  return system == nullptr ? std::string() : system->name;
}

void Describer::add_cell(const model::Cell& cell, Answer& out) const {
  const std::string height = stated(cell.size.height);
  if (cell.size.diameter && cell.size.diameter->has_value() && !height.empty()) {
    const auto across = cell.size.diameter->value_in(base::Unit::millimetre);
    out.size = base::shortest_text(base::tidy(across.value_or(0))) + " x " + height;
  }
  out.voltage = stated(cell.nominal);
  out.system = system_name(cell);
  if (cell.drain != model::Drain::not_stated) out.drain = model::word_of(cell.drain);
  if (cell.capacity) out.capacity = stated(cell.capacity->value);
  for (const auto& peer : world_.relations.same_size(cell.reference())) {
    const auto* other = static_cast<const model::Cell*>(world_.records.find(peer.cell));
    if (other == nullptr) continue;
    const bool fits = peer.verdict != bench::Code::none;
    out.peers.push_back({peer.cell, title_of(*other), system_name(*other), peer.same_system,
                         std::string(model::trust_name(fits ? peer.verdict_trust : peer.trust)),
                         std::string(bench::code_word(peer.verdict)), bench::place_words(peer.verdict), peer.why});
  }
}

std::vector<AnswerVerdict> Describer::verdicts_about(const model::Record& record) const {
  const bench::StepWorld world{world_.records, world_.tables};
  std::vector<AnswerVerdict> list;
  if (is_agent(record)) {
    for (const auto& [id, material] : world_.records.materials)
      list.push_back(answer_verdict(verdict_on(world, record, material), material));
  } else if (record.kind == Kind::material || record.kind == Kind::part) {
    const model::References materials = bench::materials_of(world, record.reference());
    for (const model::RecordRef& name : materials) {
      const model::Record* material = world_.records.find(name);
      if (material == nullptr) continue;
      // A part of several materials says which of them a verdict is about.
      const std::string about = materials.size() > 1 ? " on " + bench::words_for(world, name) : std::string();
      for (const auto& [id, liquid] : world_.records.chemistries)
        list.push_back(answer_verdict(verdict_on(world, liquid, *material), liquid, about));
      for (const auto& [id, abrasive] : world_.records.abrasives)
        list.push_back(answer_verdict(verdict_on(world, abrasive, *material), abrasive, about));
    }
  }
  std::stable_sort(list.begin(), list.end(), [](const auto& one, const auto& other) { return rank(one) < rank(other); });
  return list;
}

std::vector<Answer> Describer::pair(const AskedPair& pair) const {
  std::vector<Answer> answers;
  if (!pair.unlisted.empty()) answers.push_back(unlisted(pair));
  std::vector<std::size_t> places;
  std::vector<const model::Record*> agents;
  for (const PairVerdict& verdict : pair.verdicts) {
    if (verdict.agent == nullptr) continue;
    const auto known = std::find(agents.begin(), agents.end(), verdict.agent);
    if (known == agents.end()) {
      agents.push_back(verdict.agent);
      places.push_back(answers.size());
      Answer one = record(*verdict.agent);
      one.title += (verdict.mixing ? " and " : " on ") + lowered(verdict.target->title);
      one.pair = true;
      one.verdicts = {answer_verdict(verdict, *verdict.target)};
      answers.push_back(std::move(one));
      continue;
    }
    Answer& one = answers[places[static_cast<std::size_t>(known - agents.begin())]];
    one.verdicts.push_back(answer_verdict(verdict, *verdict.target));
    one.title += ", " + lowered(verdict.target->title);
  }
  return answers;
}

/// `Not known, do not`, for a liquid that no record is about.
Answer Describer::unlisted(const AskedPair& pair) const {
  Answer out;
  out.title = pair.unlisted;
  out.pair = true;
  for (const PairVerdict& verdict : pair.verdicts) {
    if (verdict.agent != nullptr) continue;
    out.title += (out.verdicts.empty() ? " on " : ", ") + lowered(verdict.target->title);
    AnswerVerdict one = answer_verdict(verdict, *verdict.target);
    one.verdict = "not known";
    one.why = "Not on file: do not use it." + (pair.kind.empty() ? std::string() : " It is " + pair.kind + ".");
    out.verdicts.push_back(std::move(one));
  }
  return out;
}

Answer Describer::calculator(std::string_view name) const {
  Answer out;
  for (const bench::Calculator& calculator : bench::calculators()) {
    if (calculator.name == name) out.summary = calculator.does;
  }
  out.title = std::string(name);
  out.record = "calculator/" + out.title;
  out.kind = "calculator";
  if (page_of_) out.page = page_of_(out.record);
  return out;
}

std::vector<ComparedLine> Describer::compared(const Answer& one, const Answer& other) const {
  std::vector<ComparedLine> lines;
  const auto add = [&lines](const char* what, const std::string& a, const std::string& b) {
    if (!a.empty() || !b.empty())
      lines.push_back({what, a.empty() ? "not known" : a, b.empty() ? "not known" : b, a == b && !a.empty()});
  };
  add("size", one.size, other.size);
  add("system", one.system, other.system);
  add("voltage", one.voltage, other.voltage);
  add("drain", one.drain, other.drain);
  add("charge", one.capacity, other.capacity);
  return lines;
}

}  // namespace benchleaf::query
