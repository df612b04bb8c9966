// In: a page of prose. Out: its blocks with the links led to records, the facts printed and the derived blocks made.
#include "compose/entries/prose.h"

#include "compose/entry_maker.h"
#include "compose/line.h"
#include "compose/provenance.h"

namespace benchleaf::compose {

namespace {

/// A row of low lines in the text is a place to write on with a pen.
bool is_blank_to_fill(const model::Run& run) {
  constexpr std::size_t kLeast = 10;
  return run.kind == model::Run::Kind::text && run.text.size() >= kLeast && run.text.find_first_not_of('_') == std::string::npos;
}

/// Long enough for a number with its country code, in a hand that shakes.
model::Run blank_to_fill() {
  constexpr double kLongMm = 80;
  model::Run run;
  run.kind = model::Run::Kind::blank;
  run.blank_mm = kLongMm;
  return run;
}

/// Walks through the blocks of one part and finishes their runs.
class ProseSetter {
 public:
  ProseSetter(const Desk& desk, int deeper) : desk_(desk), deeper_(deeper) {}

  model::Block set(const model::Block& block) const {
    return {std::visit([this](const auto& what) { return Made(set_one(what)); }, block.what)};
  }

 private:
  using Made = decltype(model::Block::what);

  model::Heading set_one(model::Heading heading) const {
    heading.level = std::min(heading.level + deeper_, 4);
    heading.runs = finished(heading.runs, false);
    return heading;
  }
  model::Paragraph set_one(model::Paragraph paragraph) const {
    paragraph.runs = finished(paragraph.runs, true);
    return paragraph;
  }
  model::List set_one(model::List list) const {
    for (model::Blocks& item : list.items) {
      for (model::Block& block : item) block = set(block);
    }
    return list;
  }
  model::Table set_one(model::Table table) const {
    table.caption = finished(table.caption, false);
    for (model::Column& column : table.columns) column.head = finished(column.head, false);
    for (model::TableRow& row : table.rows) {
      for (model::TableCell& cell : row.cells) cell.runs = finished(cell.runs, true);
    }
    return table;
  }
  template <typename Other>
  Other set_one(Other other) const {
    return other;
  }

  /// A link that leads nowhere loses its target, not its words; prove has spoken of it.
  model::Runs finished(const model::Runs& runs, bool pages) const {
    model::Runs done;
    for (std::size_t i = 0; i < runs.size(); ++i) {
      model::Run run = runs[i];
      if (!run.fact.empty()) print_fact(run);
      if (desk_.on_paper() && is_blank_to_fill(run)) run = blank_to_fill();
      if (run.kind != model::Run::Kind::text || run.target.empty()) {
        done.push_back(std::move(run));
        continue;
      }
      const model::RecordRef record(model::FactId(run.target).record);
      const bool leads = desk_.records.find(record) != nullptr;
      const bool link_ends = i + 1 == runs.size() || runs[i + 1].target != runs[i].target;
      run.target = leads ? desk_.records.resolved(record) + run.target.substr(record.text().size()) : std::string();
      const std::string target(model::FactId(run.target).record);
      done.push_back(std::move(run));
      if (leads && link_ends && pages) done.push_back(page_after(target));
    }
    return done;
  }

  /// Words of the writer's own stay words; only a run that prints the fact carries its id.
  void print_fact(model::Run& run) const {
    const model::Fact* fact = desk_.derived.facts.find(run.fact);
    if (fact != nullptr && run.text.empty()) run.text = fact->printed;
    if (fact == nullptr || run.text != fact->printed) run.fact.clear();
  }

  const Desk& desk_;
  int deeper_;
};

}  // namespace

model::Blocks page_blocks(const Desk& desk, const model::Page& page, bool opens_chapter) {
  model::Blocks blocks;
  blocks.push_back(heading_block(opens_chapter ? 1 : 2, page.title, page.reference()));
  Line lead(desk);
  lead.say(page.lead + (desk.on_paper() ? "" : " "))
      .sign({page.trust, false})
      .source_keys({page.sources.begin(), page.sources.end()});
  blocks.push_back(paragraph_block(lead.take(), model::Paragraph::Role::lead));
  if (!provenance_words(desk.records, page).empty()) blocks.push_back(provenance_mark(desk.records, page));
  const ProseSetter setter(desk, opens_chapter ? 0 : 1);
  for (const model::PagePart& part : page.parts) {
    if (const auto* block = std::get_if<model::Block>(&part)) {
      blocks.push_back(setter.set(*block));
    } else {
      for (model::Block& made : derived_blocks(desk, page, std::get<model::DerivedRequest>(part)))
        blocks.push_back(std::move(made));
    }
  }
  if (page.sources.empty() || desk.on_paper()) return blocks;
  model::Runs from = Line(desk).label("From").take();
  for (model::Run& run : Line(desk).links(page.sources).say(".").take()) from.push_back(std::move(run));
  blocks.push_back(paragraph_block(std::move(from), model::Paragraph::Role::note));
  return blocks;
}

}  // namespace benchleaf::compose
