// In: checked trees of what a watch is made of. Out: the typed records of cells, modules, gaskets, crystals, parts,
// tools, watches and stock lists.
#include <utility>

#include "read/decode.h"

namespace benchleaf::read {

namespace {

model::SizeRange size_range(const Fields& fields) {
  return {fields.quantity("from"), fields.quantity("to"), fields.quantity("step")};
}

}  // namespace

void decode(const Fields& fields, model::Cell& cell) {
  cell.designation = fields.text("designation");
  cell.title = cell.designation;
  cell.short_form = fields.text("short");
  cell.trade_number = fields.text("trade-number");
  cell.consumer_number = fields.text("consumer-number");
  cell.system = fields.text("system");
  cell.cells_in_series = fields.count("cells-in-series", 1);
  if (auto size = fields.part("size")) cell.size = {size->quantity("diameter"), size->quantity("height")};
  cell.nominal = fields.quantity("nominal");
  cell.drain = fields.word<model::Drain>("drain");
  if (auto capacity = fields.part("capacity")) {
    cell.capacity = model::Cell::Capacity{capacity->quantity("value"), capacity->text("load")};
  }
  cell.mass = fields.quantity("mass");
  cell.electrolyte = fields.word<model::Electrolyte>("electrolyte");
  cell.status = fields.word<model::CellStatus>("status").value_or(model::CellStatus::current);
  cell.uses = fields.text("uses");
}

void decode(const Fields& fields, model::Module& module) {
  module.display = fields.word<model::Display>("display");
  module.lamp = fields.word<model::Lamp>("lamp");
  module.recognise = fields.text("recognise");
  module.era = fields.text("era");
  module.cell_count = fields.count("cell-count", 0);
  module.wiring = fields.word<model::Wiring>("wiring");
  module.cells = fields.references("cells");
  module.supply = fields.quantity("supply");
  for (const Fields& load : fields.parts("loads")) {
    module.loads.push_back({load.text("state"), load.quantity("current"), load.quantity("for"), load.quantity("per-day")});
  }
  module.joined = fields.words<model::Joint>("joined");
  module.contact = fields.word<model::Contact>("contact");
  module.charging = fields.text("charging");
  module.reset = fields.text("reset");
  module.parts = fields.references("parts");
  module.healthy = fields.text("healthy");
  module.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Gasket& gasket) {
  gasket.profile = fields.word<model::Profile>("profile");
  gasket.section = fields.quantity("section");
  gasket.section_tolerance = fields.quantity("section-tolerance");
  gasket.wall = fields.quantity("wall");
  gasket.height = fields.quantity("height");
  if (auto inside = fields.part("inside")) gasket.inside = size_range(*inside);
  gasket.inside_tolerance = fields.quantity("inside-tolerance");
  gasket.material = fields.reference("material");
  gasket.seats = fields.words<model::Seat>("seats");
  if (fields.has("moving")) gasket.moving = fields.flag("moving");
  gasket.recognise = fields.text("recognise");
}

void decode(const Fields& fields, model::Crystal& crystal) {
  crystal.material = fields.reference("material");
  crystal.form = fields.word<model::CrystalForm>("form");
  crystal.fixing = fields.word<model::Fixing>("fixing");
  if (auto sizes = fields.part("sizes")) crystal.sizes = size_range(*sizes);
  crystal.thickness = fields.quantity("thickness");
  crystal.oversize = fields.quantity("oversize");
  crystal.recognise = fields.text("recognise");
  crystal.remove = fields.text("remove");
  crystal.fit = fields.text("fit");
  crystal.polish = fields.word<model::Polish>("polish");
  crystal.grades = fields.references("grades");
  crystal.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Part& part) {
  part.made_of = fields.references("made-of");
  part.role = fields.text("role");
  part.where = fields.text("where");
  part.recognise = fields.text("recognise");
  part.if_damaged = fields.text("if-damaged");
  part.again = fields.word<model::Again>("again");
  part.why_again = fields.text("why-again");
  part.care = fields.text("care");
  part.seam = fields.flag("seam");
  for (const Fields& one : fields.parts("limits")) part.limits.push_back({one.text("never"), one.text("why")});
  part.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Tool& tool) {
  tool.use = fields.text("use");
  tool.instead = fields.text("instead");
  tool.size = fields.text("size");
  tool.works = fields.texts("works");
  tool.touches = fields.reference("touches");
  tool.check = fields.text("check");
  tool.cautions = fields.references("cautions");
}

namespace {

void decode_crystal(const Fields& fields, model::Watch& watch) {
  watch.crystal = fields.reference("crystal");
  if (auto signs = fields.part("crystal-signs")) watch.crystal_signs = {signs->text("scratches"), signs->text("feels")};
  if (auto size = fields.part("crystal-size")) {
    watch.crystal_size =
        model::Watch::CrystalSize{size->quantity("diameter"), size->quantity("length"), size->quantity("thickness")};
  }
  watch.scratch = fields.quantity("scratch");
  watch.nail = fields.text("nail");
}

void decode_gasket(const Fields& fields, model::Watch& watch) {
  watch.gasket = fields.reference("gasket");
  watch.gasket_seat = fields.quantity("gasket-seat");
  if (auto old = fields.part("old-gasket")) watch.old_gasket = {old->quantity("inside"), old->quantity("section")};
  if (auto groove = fields.part("groove")) watch.groove = {groove->quantity("depth"), groove->quantity("width")};
}

/// Pushers, print, wishes and what was done before.
void decode_bench(const Fields& fields, model::Watch& watch) {
  if (auto part = fields.part("pushers")) {
    watch.pushers = model::Watch::Pushers{{}, part->count("missing", 0), part->count("stuck", 0)};
    if (part->has("count")) watch.pushers->count = part->count("count", 0);
  }
  watch.charges = fields.text("charges");
  watch.print = fields.text("print");
  watch.wishes = fields.texts("wishes");
  for (const Fields& one : fields.parts("visits")) {
    watch.visits.push_back({one.text("date"), one.reference("cell"), one.quantity("old-voltage"), one.quantity("new-voltage"),
                            one.quantity("draw"), one.text("rate"), one.text("gasket"), one.text("done"), one.text("left")});
  }
}

void decode_on_hand(const Fields& fields, model::Watch& watch) {
  auto part = fields.part("on-hand");
  if (!part) return;
  model::Watch::OnHand on_hand{part->texts("grades"), part->references("liquids"), {}};
  for (const Fields& one : part->parts("gaskets")) on_hand.gaskets.push_back({one.reference("series"), one.quantity("inside")});
  watch.on_hand = std::move(on_hand);
}

}  // namespace

void decode(const Fields& fields, model::Watch& watch) {
  watch.number = fields.text("number");
  watch.module = fields.reference("module");
  watch.display = fields.text("display");
  decode_crystal(fields, watch);
  watch.cells_found = fields.references("cells-found");
  watch.cell_count = fields.count("cell-count", 0);
  if (auto size = fields.part("cell-size"))
    watch.cell_size = model::Watch::CellSize{size->quantity("diameter"), size->quantity("height")};
  watch.back = fields.text("back");
  decode_gasket(fields, watch);
  if (auto metal = fields.part("case")) {
    watch.case_metal = model::Watch::Case{metal->reference("metal"), metal->reference("surface"), metal->text("mark")};
  }
  watch.residues = fields.references("residues");
  if (auto crust = fields.part("crust"))
    watch.crust = model::Watch::Crust{crust->text("colour"), crust->text("place"), crust->text("bought")};
  watch.inside = fields.references("inside");
  watch.lume = fields.text("lume");
  watch.symptoms = fields.references("symptoms");
  for (const Fields& job : fields.parts("jobs")) {
    model::Watch::Job one{job.reference("procedure"), {}};
    for (const Fields& fill : job.parts("fill")) one.fill.push_back({fill.text("slot"), fill.reference("record")});
    watch.jobs.push_back(std::move(one));
  }
  watch.lug_width = fields.quantity("lug-width");
  watch.found = fields.text("found");
  watch.wants = fields.text("wants");
  decode_bench(fields, watch);
  decode_on_hand(fields, watch);
}

void decode(const Fields& fields, model::Stock& stock) {
  stock.date = fields.text("date");
  for (const Fields& item : fields.parts("items")) {
    stock.items.push_back({item.reference("item"), item.quantity("size"), item.text("grade"), item.count("count", 0),
                           item.text("made"), item.text("place")});
  }
}

}  // namespace benchleaf::read
