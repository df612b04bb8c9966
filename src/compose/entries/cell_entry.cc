// In: a cell, its facts and those of its size. Out: its entry: number, name, size, the cell at true size, what it is, what
// has the same size.
#include "bench/cell_candidates.h"
#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/figures/cell_drawing.h"
#include "compose/verdict_table.h"

namespace benchleaf::compose {

namespace {

using model::Style;

model::Runs size_line(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  line.fact(cell, "size.diameter", {}, Style::bold);
  line.fact(cell, "size.height", line.empty() ? "" : " × ", Style::bold);
  if (!cell.short_form.empty()) line.say("  ").fact(cell, "short");
  if (!cell.consumer_number.empty() && !cell.trade_number.empty()) line.say("  ").fact(cell, "consumer-number");
  return line.take();
}

bool has_capacity(const model::Cell& cell) { return cell.capacity && cell.capacity->value && cell.capacity->value->has_value(); }

/// `Silver oxide, high drain. 1.55 V, 80 mAh, load not stated.` and what it is used for.
model::Runs lead_line(const Desk& desk, const model::Cell& cell) {
  Line line(desk);
  line.say(sentence_case(plain_words(cell.system)));
  if (cell.drain && cell.drain != model::Drain::not_stated)
    line.say(", " + word_of(cell.drain) + (cell.drain == model::Drain::general ? " use" : " drain"));
  line.say(".");
  line.fact(cell, "nominal", " ");
  if (cell.cells_in_series > 1) line.fact(cell, "cells-in-series", ", cells in series: ");
  if (has_capacity(cell)) {
    line.fact(cell, "capacity", ", ");
    line.fact(cell, "capacity.load", ", load ");
  }
  line.say(".");
  if (cell.status == model::CellStatus::withdrawn) line.say(" No longer made.", Style::bold);
  if (!cell.uses.empty()) line.say(" " + cell.uses);
  return line.take();
}

std::string drain_words(const model::Cell& cell) {
  if (cell.drain == model::Drain::low || cell.drain == model::Drain::high) return word_of(cell.drain) + " drain";
  return {};
}

/// `309 SR754SW | with care | it sags under a lamp`, with the system where it is another.
model::TableRow place_row(const Desk& desk, const derive::Peer& peer, const model::Cell& other) {
  const bool fits = peer.verdict != bench::Code::none;
  Line why(desk);
  if (!peer.same_system) why.say("OTHER system, " + plain_words(other.system), Style::bold).say(peer.why.empty() ? "" : "; ");
  why.say(peer.why);
  return {{cell(Line(desk).link(peer.cell).take()),
           cell(Line(desk).verdict(place_verdict(peer.verdict), bench::place_words(peer.verdict), Style::bold).take()),
           cell(why.take()), cell(Line(desk).sign({fits ? peer.verdict_trust : peer.trust, true}).take())},
          {}};
}

/// What goes in the place of the cell, its own system first.
void add_in_place(const Desk& desk, const model::Cell& cell, EntryMaker& maker) {
  model::Table table;
  table.name = "in-place";
  table.columns = {column("in its place", model::Column::Align::left, true), column("verdict"), column("why"), sign_column()};
  for (const derive::Peer& peer : desk.derived.relations.same_size(cell.reference())) {
    if (const model::Cell* other = desk.cell(peer.cell)) table.rows.push_back(place_row(desk, peer, *other));
  }
  maker.heading("In its place");
  if (table.rows.empty())
    maker.paragraph({model::text_run("No other cell of this size is on file.")}, model::Paragraph::Role::dense);
  else
    maker.table(std::move(table));
}

/// What the letters and digits of the designation say by themselves.
void add_name_reading(const Desk& desk, const model::Cell& cell, EntryMaker& maker) {
  const model::Fact* height = desk.fact(cell, "cell-decode.height");
  if (height == nullptr) return;
  Line line(desk);
  line.label("The name says");
  line.fact(cell, "cell-decode.diameter", "diameter ").fact(cell, "cell-decode.height", ", height ");
  line.fact(cell, "cell-decode.end-voltage", "; spent at ");
  line.say("\u00A0").sign({height->trust, height->derived}).say(".");
  maker.paragraph(line.take(), model::Paragraph::Role::dense);
}

void add_margin(const Desk& desk, const model::Cell& cell, EntryMaker& maker) {
  if (!cell.trade_number.empty())
    maker.margin("number", "trade-number");
  else if (!cell.consumer_number.empty())
    maker.margin("number", "consumer-number");
  maker.margin("diameter", "size.diameter");
  maker.margin("height", "size.height");
  if (cell.nominal) maker.margin("voltage", "nominal");
  if (!drain_words(cell).empty()) maker.margin("drain", "drain");
  if (has_capacity(cell)) maker.margin("capacity", "capacity", "load " + cell.capacity->load);
  if (desk.fact(cell, "mass") != nullptr) maker.margin("mass", "mass");
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Cell& cell) {
  EntryMaker maker(desk, cell, model::Entry::Rank::key);
  model::Entry& entry = maker.entry();
  Line key(desk);
  const bool numbered = !cell.trade_number.empty();
  if (numbered)
    key.fact(cell, "trade-number");
  else if (!cell.consumer_number.empty())
    key.fact(cell, "consumer-number");
  if (!key.empty()) {
    entry.key = key.take();
    entry.second = Line(desk).fact(cell, "designation").take();
    if (entry.second.empty()) entry.second = {model::text_run(cell.designation)};
  }
  entry.running_key = model::plain_text(entry.key);
  entry.aliases = size_line(desk, cell);
  entry.drawing = cell_drawing(desk, cell);
  maker.paragraph(lead_line(desk, cell), model::Paragraph::Role::lead);
  add_name_reading(desk, cell, maker);
  if (cell.electrolyte && cell.electrolyte != model::Electrolyte::not_stated) {
    Line line(desk);
    line.say(plain_words(word_of(cell.electrolyte))).fact(cell, "mass", "; mass ").say(".");
    maker.run_in("Holds", line);
  }
  add_in_place(desk, cell, maker);
  add_margin(desk, cell, maker);
  return maker.finish();
}

}  // namespace benchleaf::compose
