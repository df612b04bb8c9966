// In: the materials of a watch, what lies at hand, the looks, symptoms and holds. Out: the section of what is never done on it.
#include <algorithm>

#include "compose/uses.h"
#include "ticket/sheet_builder.h"

namespace benchleaf::ticket {

namespace {

using compose::LiquidVerdict;
using Kind = SheetLine::Kind;
using model::Style;

constexpr const char* kAnywhere = "anywhere";  // on the watch, where no place is named

bool lies_in(const model::Stock* drawer, const RecordRef& record) {
  return drawer != nullptr && std::any_of(drawer->items.begin(), drawer->items.end(),
                                          [&record](const auto& item) { return item.item == record && item.count > 0; });
}

bool is_needed(const Plan& plan, const RecordRef& record) {
  return std::any_of(plan.needs.begin(), plan.needs.end(), [&record](const auto& need) { return need.record == record; });
}

/// One row a place on the watch, in the order in which places come up.
class NeverTable {
 public:
  explicit NeverTable(const SheetContext& context) : context_(context) {}

  void add(const std::string& where, const std::string& what, const RecordRef& record) {
    const auto there = std::find_if(rows_.begin(), rows_.end(), [&where](const Row& row) { return row.where == where; });
    if (there == rows_.end())
      rows_.push_back({where, {what}, record});
    else
      add_once(there->what, what);
  }

  void close(SectionBuilder& section) const {
    for (const Row& row : rows_) {
      compose::Line head = context_.line();
      head.verdict(model::Verdict::never, "never").say(" ").say(row.where + ":", Style::bold);
      section.row(Kind::words, {head.take(), text_runs(compose::listed(row.what, "; "))}, row.record);
    }
  }

 private:
  struct Row {
    std::string where;
    std::vector<std::string> what;
    RecordRef record;
  };
  const SheetContext& context_;
  std::vector<Row> rows_;
};

class NeverRows {
 public:
  explicit NeverRows(const SheetContext& context) : context_(context) {
    const auto add_materials = [this](const References& parts, References& list) {
      for (const RecordRef& part : parts) {
        for (const RecordRef& material : bench::materials_of(context_.context.world(), part)) add_once(list, material);
      }
    };
    add_materials(context_.context.case_materials(), of_case_);
    const References crystals = context_.context.parts_of("crystal");
    if (!context_.context.crystal_material().empty() && !crystals.empty())
      add_materials({context_.context.crystal_part(crystals.front())}, of_crystal_);
    add_materials(context_.watch.inside, inside_);
  }

  /// One row a material: on the case and the crystal everything counts, on what stays inside what is on the bench for this plan.
  /// What no job needs and more than one material forbids stands once, under anywhere; materials with one list share a row.
  void add(NeverTable& table) {
    References all = of_case_;
    for (const References* list : {&of_crystal_, &inside_}) {
      for (const RecordRef& material : *list) add_once(all, material);
    }
    std::vector<Row> rows;
    for (const RecordRef& material : all) rows.push_back({{material}, agents_on(material)});
    if (const References anywhere = taken_anywhere(rows); !anywhere.empty()) add_row(kAnywhere, anywhere, {}, table);
    if (const References within = taken_inside(rows); !within.empty()) add_row("inside the case", within, inside_only(), table);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      for (std::size_t next = rows.size(); next-- > i + 1;) {
        if (rows[next].agents != rows[i].agents) continue;
        rows[i].materials.insert(rows[i].materials.begin() + 1, rows[next].materials.begin(), rows[next].materials.end());
        rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(next));
      }
      if (rows[i].agents.empty()) continue;
      std::vector<std::string> names;
      for (const RecordRef& material : rows[i].materials) names.push_back(context_.desk.name(material));
      add_row(compose::listed(names, "; "), rows[i].agents, rows[i].materials, table);
    }
  }

 private:
  /// Whether no abrasive of the handbook may touch a material.
  bool bears_no_abrasive(const RecordRef& material) const {
    const auto& verdicts = context_.desk.uses.liquids_on(material);
    return std::none_of(verdicts.begin(), verdicts.end(), [](const LiquidVerdict& one) {
      return one.agent.is(model::Kind::abrasive) && one.item->verdict != model::Verdict::never;
    });
  }

  struct Row {
    References materials;
    References agents;
  };

  /// Whether every paper and cloth of the handbook is among them.
  bool every_paper(const References& agents) const {
    const auto& all = context_.desk.records.abrasives;
    return std::all_of(all.begin(), all.end(), [&agents](const auto& one) {
      return one.second.form == model::AbrasiveForm::bonded_or_loose || has(agents, one.second.reference());
    });
  }

  bool is_paper(const RecordRef& agent) const {
    const auto* abrasive = context_.desk.records.find<model::Abrasive>(agent);
    return abrasive != nullptr && abrasive->form != model::AbrasiveForm::bonded_or_loose;
  }

  /// The shortest name that a bottle is known by.
  std::string word_for(const RecordRef& agent, const References& materials, const References& agents) const {
    if (agent.is(model::Kind::abrasive) && std::all_of(materials.begin(), materials.end(),
                                                       [this](const RecordRef& material) { return bears_no_abrasive(material); }))
      return "every paper and abrasive";
    if (is_paper(agent) && every_paper(agents)) return "every paper and abrasive cloth";
    const auto* liquid = context_.desk.records.find<model::Chemistry>(agent);
    return liquid != nullptr && !liquid->short_name.empty() ? liquid->short_name : context_.desk.name(agent);
  }

  References agents_on(const RecordRef& material) const {
    References agents;
    const bool outside = has(of_case_, material) || has(of_crystal_, material);
    for (const LiquidVerdict& verdict : context_.desk.uses.liquids_on(material)) {
      if (verdict.item->verdict != model::Verdict::never) continue;
      const bool stands_by = lies_in(context_.context.drawer, verdict.agent);
      if (outside || stands_by || is_needed(context_.plan, verdict.agent)) add_once(agents, verdict.agent);
      if (has(of_case_, material) && stands_by && verdict.agent.is(model::Kind::chemistry)) warn(verdict, material);
    }
    return agents;
  }

  /// Out of the rows, the liquids that no job uses and that ruin more than one material here.
  References taken_anywhere(std::vector<Row>& rows) const {
    References anywhere;
    for (const Row& row : rows) {
      for (const RecordRef& agent : row.agents) {
        const auto forbids = [&agent](const Row& one) { return has(one.agents, agent); };
        const bool spare = agent.is(model::Kind::chemistry) && !is_needed(context_.plan, agent);
        if (spare && std::count_if(rows.begin(), rows.end(), forbids) > 1) add_once(anywhere, agent);
      }
    }
    for (Row& row : rows) {
      row.agents.erase(std::remove_if(row.agents.begin(), row.agents.end(), [&](const auto& one) { return has(anywhere, one); }),
                       row.agents.end());
    }
    return anywhere;
  }

  References inside_only() const {
    References only;
    for (const RecordRef& material : inside_) {
      if (!has(of_case_, material) && !has(of_crystal_, material)) only.push_back(material);
    }
    return only;
  }

  /// Out of the rows of what stays inside, what all of it forbids.
  References taken_inside(std::vector<Row>& rows) const {
    const References only = inside_only();
    const auto is_inside = [&only](const Row& row) { return has(only, row.materials.front()); };
    References shared;
    if (only.size() < 2) return shared;
    const auto first = std::find_if(rows.begin(), rows.end(), is_inside);
    for (const RecordRef& agent : first->agents) {
      const bool all =
          std::all_of(rows.begin(), rows.end(), [&](const Row& row) { return !is_inside(row) || has(row.agents, agent); });
      if (all) shared.push_back(agent);
    }
    for (Row& row : rows) {
      if (!is_inside(row)) continue;
      row.agents.erase(std::remove_if(row.agents.begin(), row.agents.end(), [&](const auto& one) { return has(shared, one); }),
                       row.agents.end());
    }
    return shared;
  }

  void add_row(const std::string& where, const References& agents, const References& materials, NeverTable& table) const {
    std::vector<std::string> words;
    for (const RecordRef& agent : agents) add_once(words, word_for(agent, materials, agents));
    table.add(where, compose::listed(words), materials.empty() ? RecordRef() : materials.front());
  }

  void warn(const LiquidVerdict& verdict, const RecordRef& material) const {
    context_.desk.findings.add(report::Rule::ticket_liquid, context_.watch.span_of("case.surface"),
                               verdict.agent.id() + " is in stock and would ruin " + material.id() + ": " + verdict.item->why,
                               "put it away before the work begins");
  }

  const SheetContext& context_;
  References of_case_;
  References of_crystal_;
  References inside_;
};

void add_looks(const SheetContext& context, NeverTable& table) {
  for (const model::Look* look : context.looks("never"))
    table.add(look->head.empty() ? kAnywhere : look->head, context.filled(look->text), look->caution);
}

void add_symptoms(const SheetContext& context, SectionBuilder& section) {
  for (const RecordRef& ticked : context.watch.symptoms) {
    const auto* symptom = context.desk.records.find<model::Symptom>(ticked);
    if (symptom == nullptr) continue;
    std::vector<std::string> words = symptom->never;
    for (const auto& cause : symptom->causes) {
      if (!cause.stop.empty()) words.push_back(cause.stop);
    }
    section.words(compose::listed(words, " "), ticked);
  }
}

}  // namespace

void add_never(const SheetContext& context, std::vector<SheetSection>& front) {
  SectionBuilder section("never", "Never on this watch");
  NeverTable table(context);
  add_looks(context, table);
  NeverRows(context).add(table);
  table.close(section);
  add_symptoms(context, section);
  section.close(front);
}

}  // namespace benchleaf::ticket
