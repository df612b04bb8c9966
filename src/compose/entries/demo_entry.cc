// In: a chart, a demonstration watch, a demonstration drawer. Out: their short entries; what is invented says so.
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "model/paper_size.h"

namespace benchleaf::compose {

namespace {

std::string paper_words(const std::string& paper) {
  const model::PaperSize* size = model::paper_size(paper);
  return size == nullptr ? paper : std::string(size->title);
}

void mark_invented(EntryMaker& maker) {
  Line line = maker.line();
  maker.entry().second = line.say("invented, for the demonstration ").sign({model::Trust::invented, false}).take();
}

void add_jobs(const Desk& desk, const model::Watch& watch, EntryMaker& maker) {
  if (watch.jobs.empty()) return;
  maker.heading("Work to do");
  model::List list;
  list.ordered = true;
  for (const model::Watch::Job& job : watch.jobs) {
    Line line(desk);
    line.link(job.procedure);
    for (const model::Watch::Filling& filling : job.fill) line.say("; " + plain_words(filling.slot) + ": ").link(filling.record);
    list.items.push_back({paragraph_block(line.take())});
  }
  maker.add({std::move(list)});
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Chart& chart) {
  EntryMaker maker(desk, chart, model::Entry::Rank::small);
  if (!chart.subtitle.empty()) maker.entry().second = {model::text_run(chart.subtitle)};
  Line papers(desk);
  for (const std::string& paper : chart.papers) papers.say(papers.empty() ? "one sheet, " : " or ").say(paper_words(paper));
  maker.entry().aliases = papers.say(", " + word_of(chart.orientation)).take();
  model::List list;
  Line bare(desk);  // panels of which there is no more to say than their titles
  for (const model::Chart::Panel& panel : chart.panels) {
    if (panel.words.empty() && panel.records.empty()) {
      bare.say(bare.empty() ? "Also " : "; ").say(panel.title, model::Style::bold);
      continue;
    }
    Line line(desk);
    line.say(panel.title, model::Style::bold);
    if (!panel.words.empty()) line.say(": " + panel.words);
    if (!panel.records.empty()) line.say(": ").links(panel.records);
    list.items.push_back({paragraph_block(line.take())});
  }
  if (!bare.empty()) list.items.push_back({paragraph_block(bare.take())});
  if (!list.items.empty()) maker.add({std::move(list)});
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Watch& watch) {
  EntryMaker maker(desk, watch, model::Entry::Rank::small);
  mark_invented(maker);
  if (!watch.number.empty()) maker.entry().aliases = {model::text_run(watch.number)};
  maker.paragraph({model::text_run(watch.found)});
  maker.links("Module", {watch.module});
  maker.links("Cells found", watch.cells_found);
  Line back(desk);
  maker.run_in("Back", back.say(plain_words(watch.back)));
  Line gasket(desk);
  if (!watch.gasket.empty()) gasket.link(watch.gasket).fact(watch, "gasket-seat", ", seat ");
  maker.run_in("Gasket", gasket);
  Line crystal(desk);
  if (!watch.crystal.empty()) crystal.link(watch.crystal);
  crystal.fact(watch, "crystal-size.diameter", ", ")
      .fact(watch, "crystal-size.length", " × ")
      .fact(watch, "crystal-size.thickness", ", thickness ");
  crystal.fact(watch, "scratch", "; scratch ");
  maker.run_in("Crystal", crystal);
  Line metal(desk);
  if (watch.case_metal && !watch.case_metal->metal.empty()) metal.link(watch.case_metal->metal);
  if (watch.case_metal && !watch.case_metal->surface.empty())
    metal.say(metal.empty() ? "surface " : ", surface ").link(watch.case_metal->surface);
  maker.run_in("Case", metal);
  maker.links("Residues", watch.residues);
  maker.links("Symptoms", watch.symptoms);
  maker.links("Stays in the case", watch.inside);
  Line lugs(desk);
  maker.run_in("Between the lugs", lugs.fact(watch, "lug-width"));
  add_jobs(desk, watch, maker);
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Stock& stock) {
  EntryMaker maker(desk, stock, model::Entry::Rank::small);
  mark_invented(maker);
  maker.entry().aliases = {model::text_run("counted " + stock.date)};
  model::Table table;
  table.name = "stock";
  using Align = model::Column::Align;
  table.columns = {column("item", Align::left, true),
                   column("size", Align::decimal),
                   column("grade"),
                   column("count", Align::right),
                   column("made"),
                   column("place"),
                   sign_column()};
  for (std::size_t i = 0; i < stock.items.size(); ++i) {
    const std::string path = "items." + std::to_string(i);
    const model::Stock::Item& item = stock.items[i];
    table.rows.push_back({{cell(Line(desk).link(item.item).take()), cell(Line(desk).fact(stock, path + ".size").take()),
                           cell(item.grade), cell(Line(desk).fact(stock, path + ".count").take()), cell(item.made),
                           cell(item.place), cell(Line(desk).sign(desk.sign(stock, path + ".count")).take())},
                          {}});
  }
  maker.table(std::move(table));
  return maker.finish();
}

}  // namespace benchleaf::compose
