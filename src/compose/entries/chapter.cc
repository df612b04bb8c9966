// In: what handbook.yaml says of a chapter. Out: the chapter: title, pages, a section for each kind with its entries.
#include "compose/entries/chapter.h"

#include <algorithm>

#include "compose/entries/entries.h"
#include "compose/entries/paper_lists.h"
#include "compose/entries/prose.h"
#include "compose/entry_maker.h"
#include "compose/index_order.h"

namespace benchleaf::compose {

namespace {

double measure(const Desk& desk, const model::Cell& cell, const char* path) {
  const model::Fact* fact = desk.fact(cell, path);
  return fact == nullptr ? 0 : fact->value.value_or(fact->high.value_or(0));
}

std::vector<const model::Cell*> cells_in_order(const Desk& desk) {
  std::vector<const model::Cell*> cells;
  for (const auto& [id, cell] : desk.records.cells) cells.push_back(&cell);
  std::stable_sort(cells.begin(), cells.end(), [&desk](const model::Cell* one, const model::Cell* other) {
    for (const char* path : {"size.diameter", "size.height"}) {
      const double mine = measure(desk, *one, path);
      const double its = measure(desk, *other, path);
      if (mine < its || its < mine) return mine < its;
    }
    if (cell_key(*one) != cell_key(*other)) return index_before(cell_key(*one), cell_key(*other));
    return index_before(one->designation, other->designation);
  });
  return cells;
}

/// A section for each diameter: the first thing that a reader without a number measures.
void add_cells(const Desk& desk, model::Blocks& blocks) {
  const model::Fact* last = nullptr;
  for (const model::Cell* cell : cells_in_order(desk)) {
    const model::Fact* across = desk.fact(*cell, "size.diameter");
    if (across != nullptr && (last == nullptr || across->value != last->value)) {
      blocks.push_back({model::Heading{2, {model::fact_run(*across), model::text_run(" across")}, "group/diameter-" + cell->id}});
      last = across;
    }
    blocks.push_back({make_entry(desk, *cell)});
  }
}

/// Paper leaves the invented records of the demonstration out.
bool is_invented(const model::Record& record) {
  return std::any_of(record.basis.begin(), record.basis.end(),
                     [](const auto& one) { return one.second.trust == model::Trust::invented; });
}

template <typename Records, typename Wanted>
void add_wanted(const Desk& desk, const Records& records, const Wanted& is_wanted, model::Blocks& blocks) {
  std::vector<const typename Records::mapped_type*> ordered;
  for (const auto& [id, record] : records) {
    if (is_wanted(record)) ordered.push_back(&record);
  }
  std::stable_sort(ordered.begin(), ordered.end(), [](const auto* one, const auto* other) {
    return one->title == other->title ? one->id < other->id : index_before(one->title, other->title);
  });
  for (const auto* record : ordered) blocks.push_back({make_entry(desk, *record)});
}

template <typename Records>
void add_titled(const Desk& desk, const Records& records, model::Blocks& blocks) {
  add_wanted(
      desk, records, [&desk](const auto& record) { return !desk.on_paper() || !is_invented(record); }, blocks);
}

/// The liquids that a job uses, or all the others: on paper these stand in part B.
void add_liquids(const Desk& desk, bool of_the_bench, model::Blocks& blocks) {
  const auto is_wanted = [&](const model::Chemistry& liquid) {
    return !desk.on_paper() || is_of_the_bench(desk, liquid) == of_the_bench;
  };
  add_wanted(desk, desk.records.chemistries, is_wanted, blocks);
}

/// What paper says in one table of a kind; nothing where it has an entry for each record, like the screen.
model::Blocks paper_list(const Desk& desk, model::Kind kind) {
  switch (kind) {
    case model::Kind::cell: return cells_by_size(desk);
    case model::Kind::substance: return substance_table(desk);
    default: return {};
  }
}

model::Blocks entries_of(const Desk& desk, model::Kind kind) {
  model::Blocks blocks;
  if (desk.on_paper()) blocks = paper_list(desk, kind);
  if (!blocks.empty()) return blocks;
  const model::KnowledgeBase& records = desk.records;
  switch (kind) {
    case model::Kind::cell: add_cells(desk, blocks); break;
    case model::Kind::module: add_titled(desk, records.modules, blocks); break;
    case model::Kind::gasket: add_titled(desk, records.gaskets, blocks); break;
    case model::Kind::crystal: add_titled(desk, records.crystals, blocks); break;
    case model::Kind::material: add_titled(desk, records.materials, blocks); break;
    case model::Kind::part: add_titled(desk, records.parts, blocks); break;
    case model::Kind::tool: add_titled(desk, records.tools, blocks); break;
    case model::Kind::substance: add_titled(desk, records.substances, blocks); break;
    case model::Kind::residue: add_titled(desk, records.residues, blocks); break;
    case model::Kind::chemistry: add_liquids(desk, true, blocks); break;
    case model::Kind::abrasive: add_titled(desk, records.abrasives, blocks); break;
    case model::Kind::caution: add_titled(desk, records.cautions, blocks); break;
    case model::Kind::procedure: add_titled(desk, records.procedures, blocks); break;
    case model::Kind::symptom: add_titled(desk, records.symptoms, blocks); break;
    case model::Kind::term: add_titled(desk, records.terms, blocks); break;
    case model::Kind::source: add_titled(desk, records.sources, blocks); break;
    case model::Kind::chart: add_titled(desk, records.charts, blocks); break;
    case model::Kind::watch: add_titled(desk, records.watches, blocks); break;
    case model::Kind::stock: add_titled(desk, records.stocks, blocks); break;
    case model::Kind::job:
    case model::Kind::hold:
    case model::Kind::question:
    case model::Kind::look: break;  // of the ticket alone
    case model::Kind::page: break;  // set by name, before the entries
  }
  return blocks;
}

/// `Crystals`, or `All crystals` where a page of the chapter is called that.
model::Block kind_heading(model::Kind kind, const std::vector<const model::Page*>& pages) {
  std::string words = sentence_case(model::kind_plural(kind));
  const bool taken = std::any_of(pages.begin(), pages.end(), [&words](const model::Page* page) { return page->title == words; });
  if (taken) words = "All " + std::string(model::kind_plural(kind));
  return heading_block(2, std::move(words), "group/" + std::string(model::kind_name(kind)));
}

/// What paper says once behind the entries of a kind.
void add_after(const Desk& desk, model::Kind kind, model::Blocks& blocks) {
  model::Blocks more;
  if (kind == model::Kind::abrasive) more = abrasives_on_materials(desk);
  if (kind == model::Kind::source) more = conflict_list(desk);
  if (kind == model::Kind::material) {
    more.push_back(heading_block(2, "Liquids that no job here uses"));
    add_liquids(desk, false, more);
  }
  for (model::Block& block : more) blocks.push_back(std::move(block));
}

}  // namespace

model::Chapter make_chapter(const Desk& desk, const model::Handbook::Chapter& wanted) {
  model::Chapter chapter;
  chapter.number = wanted.number;
  chapter.id = wanted.id;
  chapter.title = wanted.title;
  chapter.tab = wanted.tab;
  chapter.part = wanted.part == "B" ? model::BookPart::b : model::BookPart::a;
  chapter.door.thing = wanted.door;
  if (!wanted.door_line.empty()) chapter.door.line = {model::text_run(wanted.door_line)};
  std::vector<const model::Page*> pages;
  for (const model::RecordRef& reference : wanted.pages) {
    if (const auto* page = desk.records.find<model::Page>(reference)) pages.push_back(page);
  }
  const bool page_opens = !pages.empty() && pages.front()->title == wanted.title;
  if (!page_opens) chapter.blocks.push_back(heading_block(1, wanted.title, "chapter/" + wanted.id));
  for (const model::Page* page : pages) {
    for (model::Block& block : page_blocks(desk, *page, page_opens && page == pages.front()))
      chapter.blocks.push_back(std::move(block));
  }
  for (const model::Kind kind : wanted.kinds) {
    model::Blocks entries = entries_of(desk, kind);
    if (entries.empty()) continue;
    if (desk.on_paper() && kind == model::Kind::chemistry) {
      for (model::Block& block : liquids_on_materials(desk)) chapter.blocks.push_back(std::move(block));
    }
    const bool heads_itself = kind == model::Kind::cell;
    if (!heads_itself && (!desk.on_paper() || wanted.kinds.size() > 1 || !pages.empty()))
      chapter.blocks.push_back(kind_heading(kind, pages));
    for (model::Block& block : entries) chapter.blocks.push_back(std::move(block));
    if (desk.on_paper()) add_after(desk, kind, chapter.blocks);
  }
  return chapter;
}

}  // namespace benchleaf::compose
