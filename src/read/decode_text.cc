// In: checked trees of what is said rather than measured. Out: the parts common to all records, and the typed records of
// cautions, procedures, symptoms, terms, sources, charts, pages and the handbook's head.
#include "read/decode.h"

#include <algorithm>
#include <utility>

namespace benchleaf::read {

namespace {

model::Basis basis_of(const Fields& fields) {
  model::Basis basis;
  basis.source = fields.reference("source");
  basis.where = fields.text("where");
  basis.as_of = fields.text("as-of");
  basis.trust = model::trust_from_name(fields.text("trust")).value_or(model::Trust::memory);
  basis.span = fields.span("trust");
  return basis;
}

/// Items of a list may say for themselves where they come from.
void item_bases(const model::Node& node, const std::string& path, const DecodeContext& context, model::Record& record) {
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    const model::Node& item = node.items.at(i);
    const bool has_trust = item.find("trust") != nullptr;
    if (item.type != model::NodeType::mapping || (!has_trust && item.find("source") == nullptr)) continue;
    const std::string place = path + "." + std::to_string(i);
    model::Basis basis = basis_of(Fields(item, place, context));
    const model::Basis* whole = record.basis_for(path);
    if (!has_trust && whole != nullptr) basis.trust = whole->trust;
    record.basis.emplace(place, std::move(basis));
  }
}

}  // namespace

void decode_common(const Fields& fields, const DecodeContext& context, model::Record& record) {
  record.title = fields.text("title");
  record.note = fields.text("note");
  if (const model::Node* aliases = record.root.find("aliases")) {
    for (const model::Node& alias : aliases->items) {
      if (model::is_record_id(alias.text)) record.aliases.push_back({alias.text, alias.span});
    }
  }
  if (const model::Node* basis = record.root.find("basis")) {
    for (const model::Member& member : basis->members) {
      model::Basis one = basis_of(Fields(member.value, "basis." + member.key, context));
      one.span = member.key_span;
      record.basis.emplace(member.key, std::move(one));
    }
  }
  for (const Fields& one : fields.parts("conflicts")) {
    record.conflicts.push_back(
        {one.text("field"), one.text("says"), one.reference("source"), one.text("why"), one.text("changes"), one.span("field")});
  }
  for (const model::Member& member : record.root.members) {
    if (member.value.type == model::NodeType::sequence) item_bases(member.value, member.key, context, record);
  }
  auto covered = [&record](const std::string& path) {
    const model::Node* node = record.root.at_path(path);
    if (node == nullptr || node->type != model::NodeType::sequence || node->items.empty()) return false;
    for (std::size_t i = 0; i < node->items.size(); ++i) {
      if (record.basis.find(path + "." + std::to_string(i)) == record.basis.end()) return false;
    }
    return true;
  };
  auto& paths = record.basis_paths;
  paths.erase(std::remove_if(paths.begin(), paths.end(), covered), paths.end());
}

void decode(const Fields& fields, model::Caution& caution) {
  using Word = model::Message::Word;
  static const std::map<std::string, Word, std::less<>> kWords = {
      {"danger", Word::danger}, {"warning", Word::warning}, {"caution", Word::caution}, {"notice", Word::notice}};
  auto word = kWords.find(fields.text("word"));
  if (word != kWords.end()) caution.word = word->second;
  caution.severity = fields.word<model::Severity>("severity");
  caution.likelihood = fields.word<model::Likelihood>("likelihood");
  caution.hazard = fields.text("hazard");
  caution.harm = fields.text("harm");
  caution.avoid = fields.text("avoid");
  caution.signs = fields.texts("signs");
  caution.first_aid = fields.text("first-aid");
  caution.in_short = fields.text("in-short");
  if (const std::optional<Fields> in_brief = fields.part("short")) {
    caution.harm_in_brief = in_brief->text("harm");
    caution.avoid_in_brief = in_brief->text("avoid");
  }
  caution.call = fields.flag("call");
}

void decode(const Fields& fields, model::Procedure& procedure) {
  procedure.purpose = fields.text("purpose");
  procedure.time = fields.quantity("time");
  procedure.before = fields.texts("before");
  procedure.bought_after = fields.count("bought-after", 0);
  procedure.tools = fields.references("tools");
  procedure.inside = fields.references("inside");
  for (const Fields& slot : fields.parts("slots")) {
    procedure.slots.push_back({slot.text("name"), slot.text("asks"), slot.references("allowed")});
  }
  procedure.cautions = fields.references("cautions");
  for (const Fields& step : fields.parts("steps")) {
    procedure.steps.push_back({step.reference("caution"), step.text("do"), step.references("using"), step.references("on"),
                               step.references("with"), step.text("grade"), step.references("reaches"), step.references("meets"),
                               step.flag("rinse"), step.text("see"), step.texts("how"), step.quantity("at"), step.flag("closed"),
                               step.text("why"), step.whole()});
  }
  procedure.stop = fields.texts("stop");
  procedure.done = fields.text("done");
  procedure.next = fields.references("next");
}

void decode(const Fields& fields, model::Symptom& symptom) {
  symptom.shown_by = fields.words<model::Display>("shown-by");
  symptom.looks = fields.text("looks");
  for (const Fields& one : fields.parts("causes")) {
    symptom.causes.push_back(
        {one.text("cause"), one.text("test"), one.text("cure"), one.reference("procedure"), one.text("stop")});
  }
  symptom.never = fields.texts("never");
}

void decode(const Fields& fields, model::Term& term) {
  term.term = fields.text("term");
  term.title = term.term;
  term.also = fields.texts("also");
  term.american = fields.text("american");
  term.meaning = fields.text("meaning");
  term.not_to_confuse = fields.text("not-to-confuse");
  term.see = fields.references("see");
}

void decode(const Fields& fields, model::Source& source) {
  source.work = fields.word<model::Work>("kind");
  source.publication = fields.text("publication");
  source.publisher = fields.text("publisher");
  source.edition = fields.text("edition");
  source.year = fields.text("year");
  source.licence = fields.text("licence");
  source.address = fields.text("address");
  source.read = fields.text("read");
  source.date_read = fields.text("date-read");
  source.covers = fields.texts("covers");
}

namespace {

model::Chart::Panel chart_panel(const Fields& fields) {
  model::Chart::Panel panel;
  panel.title = fields.text("title");
  panel.note = fields.text("note");
  panel.shows = fields.text("shows");
  panel.records = fields.references("records");
  panel.words = fields.text("words");
  for (const Fields& row : fields.parts("rows")) panel.rows.push_back({row.text("key"), row.text("words")});
  for (const Fields& one : fields.parts("pictures")) panel.pictures.push_back({one.text("picture"), one.text("words")});
  panel.keep = fields.count("keep", 1);
  panel.side = fields.count("side", 1);
  panel.small_side = fields.count("side-when-small", panel.side);
  panel.spare = fields.flag("spare");
  panel.wide = fields.flag("wide");
  return panel;
}

}  // namespace

void decode(const Fields& fields, model::Chart& chart) {
  chart.subtitle = fields.text("subtitle");
  chart.papers = fields.texts("papers");
  chart.orientation = fields.word<model::Orientation>("orientation");
  for (const Fields& panel : fields.parts("panels")) {
    chart.panels.push_back(chart_panel(panel));
  }
}

void decode(const Fields& fields, model::Page& page) {
  page.lead = fields.text("lead");
  page.trust = model::trust_from_name(fields.text("trust")).value_or(model::Trust::memory);
  page.sources = fields.references("sources");
}

void decode(const Fields& fields, model::Handbook& handbook) {
  handbook.span = fields.span("title");
  handbook.title = fields.text("title");
  handbook.subtitle = fields.text("subtitle");
  handbook.edition = fields.text("edition");
  handbook.date = fields.text("date");
  if (fields.has("language")) handbook.language = fields.text("language");
  handbook.format = fields.count("format", 1);
  handbook.papers = fields.texts("papers");
  handbook.standing_line = fields.text("standing-line");
  handbook.scope = fields.text("scope");
  handbook.promise = fields.text("promise");
  handbook.not_replaced = fields.text("not-replaced");
  handbook.answers = fields.text("answers");
  handbook.signs = fields.text("signs");
  if (auto verdicts = fields.part("verdicts")) {
    handbook.verdicts = {{model::Verdict::never, verdicts->text("never")},
                         {model::Verdict::with_limits, verdicts->text("with-care")},
                         {model::Verdict::use, verdicts->text("ok")}};
  }
  handbook.signal_words = fields.text("signal-words");
  for (const Fields& chapter : fields.parts("chapters")) {
    model::Handbook::Chapter one{
        chapter.text("id"),   chapter.count("number", 0), chapter.text("title"),       chapter.text("tab"),
        chapter.text("door"), chapter.text("door-line"),  chapter.references("pages"), {},
        chapter.text("part"), chapter.span("id")};
    for (const std::string& name : chapter.texts("kinds")) {
      if (std::optional<model::Kind> kind = model::kind_from_name(name)) one.kinds.push_back(*kind);
    }
    handbook.chapters.push_back(std::move(one));
  }
}

void decode(const Fields& fields, model::Overlay& overlay) {
  overlay.span = fields.span("name");
  overlay.name = fields.text("name");
  overlay.imprint = fields.text("imprint");
  overlay.date = fields.text("date");
  overlay.note = fields.text("note");
  for (const Fields& chapter : fields.parts("chapters"))
    overlay.chapters.push_back({chapter.text("id"), chapter.references("pages"), chapter.span("id")});
}

}  // namespace benchleaf::read
