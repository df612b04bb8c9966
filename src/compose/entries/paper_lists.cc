// In: substances, abrasives, disagreements. Out: what paper says of them in tables and lists of their own.
#include "compose/entries/paper_lists.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "compose/entry_maker.h"
#include "compose/index_order.h"
#include "compose/verdict_table.h"
#include "model/signs.h"

namespace benchleaf::compose {

namespace {

using Align = model::Column::Align;
using model::Style;

template <typename Records>
std::vector<const typename Records::mapped_type*> by_title(const Records& records) {
  std::vector<const typename Records::mapped_type*> ordered;
  for (const auto& [id, record] : records) ordered.push_back(&record);
  std::stable_sort(ordered.begin(), ordered.end(), [](const auto* a, const auto* b) { return index_before(a->title, b->title); });
  return ordered;
}

/// `Flam. Liq. 2 H225; STOT SE 3 H335 from 20 %`
model::Runs class_runs(const Desk& desk, const model::Substance& substance) {
  Line line(desk);
  for (std::size_t i = 0; i < substance.classes.size(); ++i) {
    const std::string path = "classes." + std::to_string(i);
    const auto& one = substance.classes[i];
    line.say(line.empty() ? "" : "; ").say(one.name + (one.statement.empty() ? "" : "\u00A0" + one.statement));
    line.fact(substance, path + ".from", " from ").fact(substance, path + ".below", " below ").sign(desk.sign(substance, path));
  }
  return line.take();
}

const std::string& label_of(const model::Record& record, const std::string& short_name) {
  return short_name.empty() ? record.title : short_name;
}

/// Materials of one family side by side.
std::vector<const model::Material*> by_family(const Desk& desk) {
  std::vector<const model::Material*> ordered = by_title(desk.records.materials);
  std::stable_sort(ordered.begin(), ordered.end(), [](const auto* a, const auto* b) { return a->family < b->family; });
  return ordered;
}

model::Runs matrix_legend(const Desk& desk) {
  Line line(desk);
  line.verdict(model::Verdict::never, "never", Style::bold).say("\u2003").verdict(model::Verdict::with_limits, "with care, and");
  return line.say(" how stands on the page of the liquid\u2003\u2022\u2002no harm\u2003Empty: not known, so not done.").take();
}

}  // namespace

bool is_of_the_bench(const Desk& desk, const model::Chemistry& liquid) {
  return !desk.uses.named_by(liquid.reference(), model::Kind::procedure).empty();
}

model::Blocks liquids_on_materials(const Desk& desk) {
  constexpr double kSquareMm = 4.2, kGapMm = 0.3, kPageMm = 8;
  const std::vector<const model::Material*> materials = by_family(desk);
  model::Table table;
  table.name = "liquids-on-materials";
  table.gap_mm = kGapMm;
  table.columns = {column("liquid", Align::left, true), column("page", Align::right, false, kPageMm)};
  for (const model::Material* material : materials)
    table.columns.push_back(column(sentence_case(label_of(*material, material->short_name)), Align::centre, false, kSquareMm));
  for (const model::Chemistry* liquid : by_title(desk.records.chemistries)) {
    model::TableRow row;
    row.cells = {cell(sentence_case(label_of(*liquid, liquid->short_name))), cell(Line(desk).page(liquid->reference()).take())};
    for (const model::Material* material : materials) {
      const auto item = std::find_if(liquid->on_materials.begin(), liquid->on_materials.end(),
                                     [&](const auto& one) { return one.material == material->reference(); });
      row.cells.push_back(item == liquid->on_materials.end() ? model::TableCell{}
                                                             : cell(Line(desk).verdict(item->verdict, "").take()));
    }
    table.rows.push_back(std::move(row));
  }
  if (table.rows.empty() || materials.empty()) return {};
  return {heading_block(2, "Liquids on materials", "group/liquids-on-materials"),
          paragraph_block(matrix_legend(desk), model::Paragraph::Role::lead),
          {std::move(table)}};
}

model::Blocks substance_table(const Desk& desk) {
  model::Table table;
  table.name = "substances";
  table.columns = {column("substance", Align::left, true, 36),       column("CAS number", Align::left, false, 20),
                   column("formula", Align::left, false, 18),        column("g/mol, g/mL", Align::left, false, 24),
                   column("boils, flashes", Align::left, false, 24), column("classes by concentration")};
  for (const model::Substance* one : by_title(desk.records.substances)) {
    Line name(desk), mass(desk), heat(desk), cas(desk);
    name.say(one->title).source_keys([&] {
      std::vector<std::string> sources;
      for (const auto& [path, basis] : one->basis) {
        if (!basis.source.empty()) sources.push_back(basis.source);
      }
      return sources;
    }());
    cas.fact(*one, "cas");
    mass.fact(*one, "molar-mass");
    mass.fact(*one, "density", mass.empty() ? "" : ", ");
    heat.fact(*one, "boiling-point");
    heat.fact(*one, "flash-point", heat.empty() ? "flash " : ", flash ");
    table.rows.push_back({{cell(name.take()), cell(cas.take()), cell(one->formula), cell(mass.take()), cell(heat.take()),
                           cell(class_runs(desk, *one))},
                          one->reference()});
  }
  return {{std::move(table)}};
}

model::Blocks abrasives_on_materials(const Desk& desk) {
  using Key = std::tuple<std::string, int, std::string>;
  std::map<Key, std::vector<const model::Abrasive*>> agreeing;
  for (const model::Abrasive* one : by_title(desk.records.abrasives)) {
    for (const model::OnMaterial& item : one->on_materials)
      agreeing[{desk.name(item.material), -static_cast<int>(item.verdict), verdict_words(item)}].push_back(one);
  }
  model::Table table;
  table.name = "abrasives-on";
  table.columns = {column("on", Align::left, true, 34), column("verdict", Align::left, false, 20), column("why"),
                   column("abrasives", Align::left, false, 52)};
  std::string last;
  for (const auto& [key, abrasives] : agreeing) {
    const auto& [material, gravity, words] = key;
    const auto verdict = static_cast<model::Verdict>(-gravity);
    const bool all = abrasives.size() == desk.records.abrasives.size();
    std::vector<std::string> names;
    for (const model::Abrasive* one : abrasives) names.push_back(desk.name(one->reference()));
    table.rows.push_back(
        {{cell(material == last ? "" : sentence_case(material)),
          cell(Line(desk).verdict(verdict, std::string(model::verdict_words(verdict)), model::Style::bold).take()), cell(words),
          cell(all ? std::string("all") : listed(names))},
         {}});
    last = material;
  }
  if (table.rows.empty()) return {};
  return {heading_block(2, "Abrasives on materials"), {std::move(table)}};
}

model::Blocks conflict_list(const Desk& desk) {
  model::Blocks blocks;
  for (const model::Record* record : desk.records.all()) {
    for (std::size_t i = 0; i < record->conflicts.size(); ++i) {
      const model::Conflict& conflict = record->conflicts[i];
      Line text(desk);
      text.say(desk.name(record->reference()), model::Style::bold).say(", " + field_words(conflict.field) + ": ");
      const std::string path = "conflicts." + std::to_string(i) + ".says";
      text.say("another source says ");
      if (desk.fact(*record, path) != nullptr)
        text.fact(*record, path);
      else
        text.say(conflict.says);
      text.say(". " + conflict.why);
      if (!conflict.changes.empty()) text.say(" If it were right: " + conflict.changes);
      text.source_keys({conflict.source});
      blocks.push_back(paragraph_block(text.take(), model::Paragraph::Role::note));
    }
  }
  if (!blocks.empty()) blocks.insert(blocks.begin(), heading_block(2, "Where sources disagree"));
  return blocks;
}

}  // namespace benchleaf::compose
