// In: a material, a part, a tool. Out: their entries; a material tells which liquids may touch it, read backwards from the
// liquids.
#include <set>

#include "compose/entries/entries.h"
#include "compose/entry_maker.h"
#include "compose/verdict_table.h"

namespace benchleaf::compose {

namespace {

void add_liquids(const Desk& desk, const model::Material& material, EntryMaker& maker) {
  std::vector<VerdictRow> rows;
  std::set<std::string> judged;
  for (const LiquidVerdict& liquid : desk.uses.liquids_on(material.reference())) {
    const model::Record* record = desk.records.find(liquid.agent);
    if (record == nullptr) continue;
    rows.push_back({liquid.agent, liquid.item->verdict, verdict_words(*liquid.item), desk.sign(*record, liquid.path)});
    judged.insert(liquid.agent);
  }
  if (!rows.empty()) {
    maker.heading("Liquids and abrasives on it");
    add_verdicts(desk, maker, "liquids-on", "liquid or abrasive", std::move(rows));
  }
  Line missing(desk);
  const auto add_missing = [&](const model::RecordRef& reference) {
    if (judged.count(reference) == 0) missing.say(missing.empty() ? "" : ", ").say(desk.name(reference));
  };
  for (const auto& [id, chemistry] : desk.records.chemistries) add_missing(chemistry.reference());
  for (const auto& [id, abrasive] : desk.records.abrasives) add_missing(abrasive.reference());
  maker.run_in("Not known", missing);
}

std::string again_words(std::optional<model::Again> again) {
  if (!again) return {};
  switch (*again) {
    case model::Again::reuse: return "may be used again";
    case model::Again::inspect: return "used again if it passes a look";
    case model::Again::renew: return "renewed each time";
    case model::Again::never_remove: break;
  }
  return "never taken out";
}

}  // namespace

model::Entry make_entry(const Desk& desk, const model::Material& material) {
  EntryMaker maker(desk, material, model::Entry::Rank::small);
  Line names(desk);
  if (!material.short_name.empty()) names.say(material.short_name);
  for (const std::string& name : material.also_called) names.say(names.empty() ? "" : ", ").say(name);
  maker.entry().second = names.take();
  maker.entry().aliases = {model::text_run(word_of(material.family))};
  maker.paragraph({model::text_run(material.found_in)});
  maker.run_in("Tell it by", material.recognise);
  maker.run_in("Care", material.care);
  maker.caution_line(material.cautions);
  maker.values("material-values", {{"Density", "density"},
                                   {"Modulus", "modulus"},
                                   {"Poisson’s ratio", "poisson"},
                                   {"Strength", "strength"},
                                   {"Safety factor", "safety-factor"},
                                   {"Hardness", "hardness"},
                                   {"Refractive index", "refractive-index"},
                                   {"Conducts heat", "conducts-heat"},
                                   {"Softens at", "softens"},
                                   {"In service", "service"},
                                   {"Shelf life", "shelf-life"},
                                   {"Layer", "layer"}});
  if (!desk.on_paper()) add_liquids(desk, material, maker);  // paper has them all in one matrix
  maker.back_links("Parts of it", desk.uses.named_by(material.reference(), model::Kind::part));
  maker.back_links("Gaskets of it", desk.uses.named_by(material.reference(), model::Kind::gasket));
  maker.back_links("Crystals of it", desk.uses.named_by(material.reference(), model::Kind::crystal));
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Part& part) {
  EntryMaker maker(desk, part, model::Entry::Rank::small);
  maker.entry().aliases = {model::text_run(again_words(part.again))};
  maker.paragraph({model::text_run(part.where)});
  maker.names("Made of", part.made_of);
  maker.run_in("Tell it by", part.recognise);
  maker.run_in("Damaged", part.if_damaged);
  maker.run_in("Again", part.why_again);
  maker.run_in("Care", part.care);
  maker.caution_line(part.cautions);
  maker.back_links("In", desk.uses.named_by(part.reference(), model::Kind::module));
  maker.back_links("Work on it", desk.uses.named_by(part.reference(), model::Kind::procedure));
  return maker.finish();
}

model::Entry make_entry(const Desk& desk, const model::Tool& tool) {
  EntryMaker maker(desk, tool, model::Entry::Rank::small);
  if (!tool.size.empty()) maker.entry().aliases = {model::text_run(tool.size)};
  maker.paragraph({model::text_run(tool.use)});
  maker.run_in("Instead", tool.instead);
  maker.run_in("Check", tool.check);
  if (!tool.touches.empty()) maker.names("Touches with", {tool.touches});
  maker.caution_line(tool.cautions);
  maker.back_links("Used in", desk.uses.named_by(tool.reference(), model::Kind::procedure));
  return maker.finish();
}

}  // namespace benchleaf::compose
