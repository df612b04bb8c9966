// In: checked trees of what things are made of. Out: the typed records of materials, substances, residues, liquids and
// grading scales.
#include "read/decode.h"

namespace benchleaf::read {

namespace {

std::vector<model::Meeting> meetings(const Fields& fields) {
  std::vector<model::Meeting> list;
  for (const Fields& one : fields.parts("meets")) {
    list.push_back({one.reference("with"), one.verdict("verdict"), one.text("product"), one.text("effect"), one.text("when")});
  }
  return list;
}

std::vector<model::OnMaterial> on_materials(const Fields& fields) {
  std::vector<model::OnMaterial> list;
  for (const Fields& one : fields.parts("on-materials")) {
    list.push_back({one.reference("material"), one.verdict("verdict"), one.text("why"), one.text("condition"), one.texts("how"),
                    one.quantity("at-most")});
  }
  return list;
}

}  // namespace

void decode(const Fields& fields, model::Material& material) {
  material.family = fields.word<model::MaterialFamily>("kind");
  material.short_name = fields.text("short-name");
  material.also_called = fields.texts("also-called");
  material.found_in = fields.text("found-in");
  material.recognise = fields.text("recognise");
  if (auto signs = fields.part("signs")) {
    material.scratches = signs->text("scratches");
    material.feels = signs->text("feels");
  }
  material.density = fields.quantity("density");
  material.modulus = fields.quantity("modulus");
  material.poisson = fields.quantity("poisson");
  material.strength = fields.quantity("strength");
  material.safety_factor = fields.quantity("safety-factor");
  material.hardness = fields.text("hardness");
  material.refractive_index = fields.quantity("refractive-index");
  material.conducts_heat = fields.quantity("conducts-heat");
  material.softens = fields.quantity("softens");
  material.service = fields.quantity("service");
  material.shelf_life = fields.quantity("shelf-life");
  material.layer = fields.quantity("layer");
  material.care = fields.text("care");
  material.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Substance& substance) {
  substance.also_called = fields.texts("also-called");
  substance.cas = fields.text("cas");
  substance.index_number = fields.text("index-number");
  substance.formula = fields.text("formula");
  substance.molar_mass = fields.quantity("molar-mass");
  substance.density = fields.quantity("density");
  substance.boiling_point = fields.quantity("boiling-point");
  substance.flash_point = fields.quantity("flash-point");
  substance.lower_limit = fields.quantity("lower-limit");
  substance.upper_limit = fields.quantity("upper-limit");
  substance.acid_constants = fields.quantities("acid-constants");
  substance.acts_as = fields.word<model::ActsAs>("acts-as");
  substance.equivalents = fields.quantity("equivalents");
  if (auto gas = fields.part("gas")) substance.gas = model::Substance::Gas{gas->reference("what"), gas->quantity("moles")};
  for (const Fields& one : fields.parts("classes")) {
    substance.classes.push_back({one.text("class"), one.text("statement"), one.quantity("from"), one.quantity("below")});
  }
}

void decode(const Fields& fields, model::Residue& residue) {
  residue.short_name = fields.text("short-name");
  residue.left_by = fields.texts("left-by");
  for (const Fields& one : fields.parts("made-of")) {
    residue.made_of.push_back({one.reference("substance"), one.quantity("share")});
  }
  residue.looks = fields.text("looks");
  residue.colours = fields.words<model::Colour>("colours");
  residue.side = fields.word<model::Side>("side");
  residue.answers = fields.references("answers");
  residue.why = fields.text("why");
  residue.stays = fields.flag("stays");
  residue.meets = meetings(fields);
  residue.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Chemistry& chemistry) {
  chemistry.short_name = fields.text("short-name");
  chemistry.also_called = fields.texts("also-called");
  chemistry.family = fields.word<model::LiquidFamily>("kind");
  chemistry.form = fields.word<model::LiquidForm>("form");
  for (const Fields& one : fields.parts("made-of")) {
    chemistry.made_of.push_back({one.reference("substance"), one.quantity("strength")});
  }
  chemistry.ph = fields.quantity("ph");
  chemistry.density = fields.quantity("density");
  chemistry.flash_point = fields.quantity("flash-point");
  chemistry.boiling_point = fields.quantity("boiling-point");
  if (auto label = fields.part("label")) {
    chemistry.label = model::Chemistry::Label{label->word<model::LabelSignal>("signal"), label->texts("pictograms"),
                                              label->texts("statements")};
  }
  chemistry.uses = fields.texts("uses");
  chemistry.on_materials = on_materials(fields);
  chemistry.meets = meetings(fields);
  chemistry.dilute = fields.text("dilute");
  chemistry.dose = fields.text("dose");
  chemistry.after = fields.text("after");
  chemistry.storage = fields.text("storage");
  chemistry.waste = fields.text("waste");
  chemistry.cautions = fields.references("cautions");
}

void decode(const Fields& fields, model::Abrasive& abrasive) {
  abrasive.scale = fields.text("scale");
  abrasive.form = fields.word<model::AbrasiveForm>("form");
  abrasive.standard = fields.text("standard");
  abrasive.mark = fields.text("mark");
  for (const Fields& one : fields.parts("grades")) {
    abrasive.grades.push_back({one.text("grade"), one.quantity("median"), one.quantity("tolerance"), one.quantity("largest")});
  }
  abrasive.on_materials = on_materials(fields);
  abrasive.uses = fields.text("uses");
  abrasive.not_to_confuse = fields.text("not-to-confuse");
}

}  // namespace benchleaf::read
