// In: a record and what its kind wants to say. Out: its entry, closed with the note, the disagreements, the sources and
// the trust of what is stated.
#include "compose/entry_maker.h"

#include <algorithm>

#include "compose/provenance.h"

namespace benchleaf::compose {

EntryMaker::EntryMaker(const Desk& desk, const model::Record& record, model::Entry::Rank rank) : desk_(desk), record_(record) {
  entry_.rank = rank;
  entry_.anchor = record.reference();
  entry_.key = {model::text_run(record.title)};
  entry_.running_key = record.title;
  if (!provenance_words(desk.records, record).empty()) add(provenance_mark(desk.records, record));
}

void EntryMaker::add(model::Block block) { entry_.blocks.push_back(std::make_shared<const model::Block>(std::move(block))); }

void EntryMaker::paragraph(model::Runs runs, model::Paragraph::Role role) {
  if (!runs.empty()) add(paragraph_block(std::move(runs), role));
}

void EntryMaker::heading(std::string words) { add(heading_block(3, std::move(words))); }

void EntryMaker::subheading(std::string words) { add(heading_block(desk_.on_paper() ? 4 : 3, std::move(words))); }

void EntryMaker::run_in(std::string label, std::string text) {
  if (text.empty()) return;
  paragraph(line().label(std::move(label)).say(std::move(text)).take(), run_in_role());
}

void EntryMaker::run_in(std::string label, Line& text) {
  if (text.empty()) return;
  model::Runs runs = line().label(std::move(label)).take();
  for (model::Run& run : text.take()) runs.push_back(std::move(run));
  paragraph(std::move(runs), run_in_role());
}

/// Paper sets what has a label of its own smaller than prose.
model::Paragraph::Role EntryMaker::run_in_role() const {
  return desk_.on_paper() ? model::Paragraph::Role::dense : model::Paragraph::Role::body;
}

void EntryMaker::links(std::string label, const model::References& references) {
  Line text = line();
  run_in(std::move(label), text.links(references));
}

void EntryMaker::list(std::string title, const std::vector<std::string>& items) {
  if (items.empty()) return;
  heading(std::move(title));
  model::List list;
  for (const std::string& item : items) list.items.push_back({paragraph_block({model::text_run(item)})});
  add({std::move(list)});
}

void EntryMaker::value_lines(const std::vector<Labelled>& values) {
  Line text = line();
  for (const Labelled& value : values) {
    const model::Fact* fact = desk_.fact(record_, value.path);
    if (fact == nullptr) continue;
    text.say(text.empty() ? "" : "\u2003").say(value.label, model::Style::bold).say("\u00A0").fact(*fact);
    text.sign({fact->trust, fact->derived});
  }
  paragraph(text.take(), model::Paragraph::Role::dense);
}

void EntryMaker::values(std::string table_name, const std::vector<Labelled>& values) {
  if (desk_.on_paper()) return value_lines(values);
  model::Table made;
  made.name = std::move(table_name);
  made.columns = {column("", model::Column::Align::left, true), column(""), sign_column()};
  for (const Labelled& value : values) {
    const model::Fact* fact = desk_.fact(record_, value.path);
    if (fact == nullptr) continue;
    made.rows.push_back(
        {{cell(value.label), cell({model::fact_run(*fact)}), cell(line().sign({fact->trust, fact->derived}).take())}, {}});
  }
  table(std::move(made));
}

void EntryMaker::table(model::Table table) {
  if (!table.rows.empty()) add({without_empty_columns(std::move(table))});
}

void EntryMaker::names(std::string label, const model::References& references) {
  if (!desk_.on_paper()) return links(std::move(label), references);
  Line text = line();
  run_in(std::move(label), text.names(references));
}

void EntryMaker::back_links(std::string label, const model::References& references) {
  if (!desk_.on_paper()) links(std::move(label), references);
}

void EntryMaker::messages(const model::References& cautions, MessagePlace place) {
  for (const model::Caution* caution : gravest_first(desk_, cautions)) add({message_of(desk_, *caution, place)});
}

void EntryMaker::caution_line(const model::References& cautions) {
  model::References references;
  for (const model::Caution* caution : gravest_first(desk_, cautions)) references.push_back(caution->reference());
  links("Caution", references);
}

void EntryMaker::margin(std::string label, std::string_view path, std::string more) {
  if (desk_.on_paper()) return;
  const Sign sign = desk_.sign(record_, path);
  model::MarginNote note;
  note.label = {model::text_run(std::move(label))};
  if (const model::Fact* fact = desk_.fact(record_, path)) note.label.push_back(model::fact_run(*fact));
  note.trust = sign.trust;
  note.derived = sign.derived;
  if (!more.empty()) note.more = {model::text_run(std::move(more))};
  entry_.margin.push_back(std::move(note));
}

model::Entry EntryMaker::finish() {
  if (!record_.note.empty()) paragraph({model::text_run(record_.note)}, model::Paragraph::Role::dense);
  if (desk_.on_paper()) {
    add_source_keys();
    return std::move(entry_);
  }
  add_conflicts();
  add_sources();
  if (entry_.margin.empty()) add_margin_by_basis();
  return std::move(entry_);
}

void EntryMaker::add_conflicts() {
  for (std::size_t i = 0; i < record_.conflicts.size(); ++i) {
    const model::Conflict& conflict = record_.conflicts[i];
    Line text = line().label("Sources disagree");
    const std::size_t last = conflict.field.rfind('.');
    text.say(plain_words(last == std::string::npos ? conflict.field : conflict.field.substr(last + 1)) + ": ");
    if (!conflict.source.empty())
      text.link(conflict.source).say(" says ");
    else
      text.say("another source says ");
    if (desk_.fact(record_, "conflicts." + std::to_string(i) + ".says") != nullptr) {
      text.fact(record_, "conflicts." + std::to_string(i) + ".says");
    } else {
      text.say(conflict.says);
    }
    text.say(". " + conflict.why);
    if (!conflict.changes.empty()) text.say(" If it were right: ").say(conflict.changes);
    paragraph(text.take(), model::Paragraph::Role::note);
  }
}

namespace {

/// What a source stands behind: its fields and where in it they were found, each once.
struct SourceUse {
  model::RecordRef source;
  std::vector<std::string> fields;
  std::vector<std::string> places;
};

void add_once(std::vector<std::string>& list, std::string text) {
  if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end()) list.push_back(std::move(text));
}

/// A conflict names its source where it is printed.
bool is_conflict(std::string_view path) { return path.substr(0, path.find('.')) == "conflicts"; }

std::vector<SourceUse> source_uses(const model::Record& record) {
  std::vector<SourceUse> uses;
  for (const auto& [path, basis] : record.basis) {
    if (basis.source.empty() || is_conflict(path)) continue;
    auto use =
        std::find_if(uses.begin(), uses.end(), [&basis = basis](const SourceUse& one) { return one.source == basis.source; });
    if (use == uses.end()) use = uses.insert(uses.end(), {basis.source, {}, {}});
    add_once(use->fields, field_words(path));
    add_once(use->places, basis.where);
    if (!basis.as_of.empty()) add_once(use->places, "as of " + basis.as_of);
  }
  return uses;
}

}  // namespace

void EntryMaker::add_sources() {
  Line text = line();
  for (const SourceUse& use : source_uses(record_)) {
    if (!text.empty()) text.say("; ");
    text.link(use.source).say(" (" + listed(use.fields) + (use.places.empty() ? "" : ": " + listed(use.places)) + ")");
  }
  if (text.empty()) return;
  model::Runs runs = line().label("From").take();
  for (model::Run& run : text.say(".").take()) runs.push_back(std::move(run));
  paragraph(std::move(runs), model::Paragraph::Role::note);
}

/// Behind the other names, where they cost no line of their own.
void EntryMaker::add_source_keys() {
  std::vector<std::string> sources;
  for (const SourceUse& use : source_uses(record_)) sources.push_back(use.source);
  Line keys = line();
  for (model::Run& run : keys.source_keys(sources).take()) {
    if (!entry_.aliases.empty() && run.text.front() == '[') run.text.insert(0, "\u2002");
    entry_.aliases.push_back(std::move(run));
  }
}

namespace {

constexpr std::size_t kMostInRow = 60;  ///< letters of a value that stands beside its name
constexpr std::size_t kMostValues = 4;

/// What a record states.
std::vector<const model::Fact*> stated_facts(const Desk& desk, const model::Record& record) {
  std::vector<const model::Fact*> found = desk.derived.facts.beginning(record.reference() + "#");
  std::erase_if(found, [](const model::Fact* fact) { return fact->derived; });
  return found;
}

/// The values at a path and within it, or nothing where they are too long or too many for a row.
model::Runs row_values(const std::vector<const model::Fact*>& facts, const std::string& place) {
  std::size_t letters = 0, count = 0;
  model::Runs runs;
  for (const model::Fact* fact : facts) {
    if (fact->id != place && fact->id.compare(0, place.size() + 1, place + ".") != 0) continue;
    if (++count > kMostValues) return {};
    letters += fact->printed.size() + 2;
    if (!runs.empty()) runs.push_back(model::text_run(", "));
    runs.push_back(model::fact_run(*fact));
  }
  return letters > kMostInRow ? model::Runs() : runs;
}

}  // namespace

/// A value that is short stands in a row of its own. Fields of the same trust whose words stand above share one.
void EntryMaker::add_margin_by_basis() {
  const std::vector<const model::Fact*> stated = stated_facts(desk_, record_);
  std::map<model::Trust, std::vector<std::string>> above;
  for (const auto& [path, basis] : record_.basis) {
    if (is_conflict(path)) continue;
    model::Runs values = row_values(stated, record_.reference() + "#" + path);
    if (values.empty()) {
      add_once(above[basis.trust], field_words(path));
      continue;
    }
    model::MarginNote note;
    note.label = {model::text_run(field_words(path))};
    note.label.insert(note.label.end(), values.begin(), values.end());
    note.trust = basis.trust;
    entry_.margin.push_back(std::move(note));
  }
  for (const auto& [trust, fields] : above) {
    model::MarginNote note;
    note.label = {model::text_run(listed(fields)), model::text_run("as written above")};
    note.trust = trust;
    entry_.margin.push_back(std::move(note));
  }
}

model::Column column(std::string head, model::Column::Align align, bool row_head, double width_mm) {
  model::Column made;
  if (!head.empty()) made.head = {model::text_run(std::move(head))};
  made.align = align;
  made.row_head = row_head;
  made.width_mm = width_mm;
  return made;
}

model::Table without_empty_columns(model::Table table) {
  for (std::size_t i = table.columns.size(); i-- > 0;) {
    const bool filled = std::any_of(table.rows.begin(), table.rows.end(), [i](const model::TableRow& row) {
      return !row.cells.at(i).runs.empty() || row.cells.at(i).drawing != nullptr;
    });
    if (filled) continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (model::TableRow& row : table.rows) row.cells.erase(row.cells.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return table;
}

model::Column sign_column() { return column("", model::Column::Align::right, false, 3.4); }

model::TableCell cell(model::Runs runs) { return {std::move(runs), nullptr}; }

model::TableCell cell(std::string text) {
  return text.empty() ? model::TableCell{} : cell(model::Runs{model::text_run(std::move(text))});
}

model::Block paragraph_block(model::Runs runs, model::Paragraph::Role role) { return {model::Paragraph{std::move(runs), role}}; }

model::Block heading_block(int level, std::string words, std::string anchor) {
  return {model::Heading{level, {model::text_run(std::move(words))}, std::move(anchor)}};
}

model::Message::Length length_at(const Desk& desk, const model::Caution& caution, MessagePlace place) {
  using Length = model::Message::Length;
  if (place == MessagePlace::own_entry || caution.harm_in_brief.empty() || caution.avoid_in_brief.empty()) return Length::full;
  if (place == MessagePlace::head) return Length::brief;
  const auto& hazards = desk.tables.hazard_cautions;
  const auto row =
      std::find_if(hazards.begin(), hazards.end(), [&caution](const auto& one) { return one.caution == caution.id; });
  const bool notice = caution.word == model::Message::Word::notice;
  if (row == hazards.end()) return notice ? Length::brief : Length::full;  // not known whose hazard it is
  return row->own ? Length::full : Length::brief;
}

model::Message message_of(const Desk& desk, const model::Caution& caution, MessagePlace place) {
  model::Message message;
  message.length = length_at(desk, caution, place);
  message.harm_in_brief = {model::text_run(caution.harm_in_brief)};
  message.avoid_in_brief = {model::text_run(caution.avoid_in_brief)};
  message.word = caution.word;
  message.hazard = {model::text_run(caution.hazard)};
  if (!caution.harm.empty()) message.hazard.push_back(model::text_run(" " + caution.harm));
  message.avoid = {model::text_run(caution.avoid)};
  message.record = caution.reference();
  for (const std::string& number : caution.signs) {
    message.signs.push_back(number);
    const model::SafetySign* sign = desk.tables.safety_sign(number);
    message.sign_titles.push_back(sign == nullptr ? number : sentence_case(sign->title));
  }
  return message;
}

std::vector<const model::Caution*> gravest_first(const Desk& desk, const model::References& cautions) {
  std::vector<const model::Caution*> found;
  for (const model::RecordRef& reference : cautions) {
    if (const auto* caution = desk.records.find<model::Caution>(reference)) found.push_back(caution);
  }
  std::stable_sort(found.begin(), found.end(), [](const auto* one, const auto* other) { return one->word < other->word; });
  return found;
}

}  // namespace benchleaf::compose
