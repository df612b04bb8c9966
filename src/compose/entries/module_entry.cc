// In: a module. Out: its entry: how to tell it, what it asks of a cell, what it draws, what it is made of.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"

namespace benchleaf::compose {

namespace {

void add_loads(const Desk& desk, const model::Module& module, EntryMaker& maker) {
  model::Table table;
  table.name = "loads";
  using Align = model::Column::Align;
  table.columns = {column("state", Align::left, true), column("draws", Align::decimal), column("for", Align::decimal),
                   column("a day", Align::decimal), sign_column()};
  for (std::size_t i = 0; i < module.loads.size(); ++i) {
    const std::string path = "loads." + std::to_string(i);
    table.rows.push_back(
        {{cell(sentence_case(module.loads[i].state)), cell(Line(desk).fact(module, path + ".current").take()),
          cell(Line(desk).fact(module, path + ".for").take()), cell(Line(desk).fact(module, path + ".per-day").take()),
          cell(Line(desk).sign(desk.sign(module, path + ".current")).take())},
         {}});
  }
  if (table.rows.empty()) return;
  maker.subheading("What it draws");
  maker.table(std::move(table));
}

void add_supply(const Desk& desk, const model::Module& module, EntryMaker& maker) {
  Line cells(desk);
  cells.fact(module, "cell-count");
  if (module.cell_count > 1 && module.wiring != model::Wiring::not_known) cells.say(" in " + word_of(module.wiring));
  if (!module.cells.empty()) cells.say(cells.empty() ? "" : ": ").links(module.cells);
  maker.run_in(module.cell_count == 1 ? "Cell" : "Cells", cells);
  Line supply(desk);
  supply.fact(module, "supply");
  if (!supply.empty()) supply.say("\u00A0").sign(desk.sign(module, "supply"));
  maker.run_in("Supply", supply);
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Module& module) {
  EntryMaker maker(desk, module, model::Entry::Rank::short_title);
  Line second(desk);
  second.say(display_words(module.display));
  if (module.lamp != model::Lamp::none && module.lamp != model::Lamp::display_itself)
    second.say(", " + plain_words(word_of(module.lamp)));
  maker.entry().second = second.take();
  if (!module.era.empty()) maker.entry().aliases = {model::text_run(module.era)};
  maker.paragraph({model::text_run(module.recognise)}, model::Paragraph::Role::lead);
  add_supply(desk, module, maker);
  add_loads(desk, module, maker);
  maker.run_in("Healthy", module.healthy);
  maker.run_in("Reset", module.reset);
  Line joined(desk);
  for (const model::Joint way : module.joined) joined.say(joined.empty() ? "" : ", ").say(plain_words(word_of(way)));
  const bool contact = module.contact && module.contact != model::Contact::none;
  if (desk.on_paper() && contact)
    joined.say(joined.empty() ? "" : "; ").say("display on " + plain_words(word_of(module.contact)));
  maker.run_in("Held by", joined);
  if (!desk.on_paper() && contact) maker.run_in("Display contact", plain_words(word_of(module.contact)));
  maker.names("Parts", module.parts);
  maker.caution_line(module.cautions);
  return maker.finish();
}

}  // namespace benchleaf::compose
