// In: verdicts of a liquid or a residue on what it touches or meets. Out: a table, the bans first.
#include "compose/verdict_table.h"

#include <algorithm>
#include <map>
#include <set>

#include "compose/index_order.h"
#include "model/signs.h"

namespace benchleaf::compose {

std::string joined(const std::string& one, const std::string& other, const char* between) {
  if (one.empty() || other.empty()) return one + other;
  return one + between + other;
}

model::Verdict place_verdict(bench::Code code) {
  switch (code) {
    case bench::Code::use: return model::Verdict::use;
    case bench::Code::with_care:
    case bench::Code::bench_test_only: return model::Verdict::with_limits;
    default: return model::Verdict::never;
  }
}

namespace {

/// Rows of which a table makes one: the same verdict for the same reason and as well known.
using VerdictGroup = std::vector<const VerdictRow*>;

model::TableRow table_row(const Desk& desk, const VerdictGroup& group) {
  const VerdictRow& row = *group.front();
  const model::Style style = row.verdict == model::Verdict::with_limits ? model::Style::plain : model::Style::bold;
  Line names(desk);
  for (const VerdictRow* one : group) {
    const std::string name = desk.name(one->record);
    if (!names.empty()) names.say(", ");
    const std::string words = one == group.front() ? sentence_case(name) : name;
    if (desk.on_paper())
      names.say(words);
    else
      names.link(words, one->record);
  }
  return {
      {cell(names.take()), cell(Line(desk).verdict(row.verdict, std::string(model::verdict_words(row.verdict)), style).take()),
       cell(row.words), cell(Line(desk).sign(row.sign).take())},
      {}};
}

bool speaks_for_itself(const VerdictRow& row) { return row.verdict == model::Verdict::use && row.words.empty(); }

/// `no harm  brass, gold plate`, then the sign that they share; `; ` and the next sign's.
model::Runs harmless_line(const Desk& desk, const std::vector<VerdictRow>& rows) {
  std::map<std::pair<model::Trust, bool>, model::References> by_sign;
  for (const VerdictRow& row : rows) {
    if (speaks_for_itself(row)) by_sign[{row.sign.trust, row.sign.derived}].push_back(row.record);
  }
  if (by_sign.empty()) return {};
  Line line(desk);
  line.verdict(model::Verdict::use, std::string(model::verdict_words(model::Verdict::use)), model::Style::bold).say("  ");
  bool first_sign = true;
  for (const auto& [sign, records] : by_sign) {
    if (!first_sign) line.say("; ");
    first_sign = false;
    for (std::size_t i = 0; i < records.size(); ++i) line.say(i == 0 ? "" : ", ").name(records[i]);
    line.say("\u00A0").sign({sign.first, sign.second});
  }
  return line.take();
}

/// In the order of their first rows.
std::vector<VerdictGroup> grouped(const std::vector<VerdictRow>& rows) {
  std::vector<VerdictGroup> groups;
  for (const VerdictRow& row : rows) {
    if (speaks_for_itself(row)) continue;
    const auto same = std::find_if(groups.begin(), groups.end(), [&row](const VerdictGroup& group) {
      const VerdictRow& first = *group.front();
      return first.verdict == row.verdict && first.words == row.words && first.sign.trust == row.sign.trust &&
             first.sign.derived == row.sign.derived;
    });
    if (same == groups.end())
      groups.push_back({&row});
    else
      same->push_back(&row);
  }
  return groups;
}

/// `never  Bleach  Poison vapour`: on paper a row is a line of its own, so that it never parts from its verdict.
model::Runs verdict_line(const Desk& desk, const VerdictGroup& group) {
  const VerdictRow& row = *group.front();
  const model::Style style = row.verdict == model::Verdict::with_limits ? model::Style::plain : model::Style::bold;
  std::vector<std::string> names;
  for (const VerdictRow* one : group) names.push_back(desk.name(one->record));
  Line line(desk);
  line.verdict(row.verdict, std::string(model::verdict_words(row.verdict)), style).say("  ");
  line.say(sentence_case(listed(names)), model::Style::bold).say("  " + row.words).sign(row.sign);
  return line.take();
}

void add_verdict_lines(const Desk& desk, EntryMaker& maker, const std::vector<VerdictRow>& rows) {
  for (const VerdictGroup& group : grouped(rows)) maker.paragraph(verdict_line(desk, group), model::Paragraph::Role::dense);
  maker.paragraph(harmless_line(desk, rows), model::Paragraph::Role::dense);
}

}  // namespace

void add_verdicts(const Desk& desk, EntryMaker& maker, std::string table_name, std::string subject,
                  std::vector<VerdictRow> rows) {
  std::stable_sort(rows.begin(), rows.end(), [&desk](const VerdictRow& one, const VerdictRow& other) {
    if (one.verdict != other.verdict) return one.verdict > other.verdict;
    return index_before(desk.name(one.record), desk.name(other.record));
  });
  if (desk.on_paper()) return add_verdict_lines(desk, maker, rows);
  model::Table table;
  table.name = std::move(table_name);
  table.columns = {column(std::move(subject), model::Column::Align::left, true), column("verdict"), column("why"), sign_column()};
  for (const VerdictGroup& group : grouped(rows)) table.rows.push_back(table_row(desk, group));
  maker.table(std::move(table));
  maker.paragraph(harmless_line(desk, rows));
}

std::string verdict_words(const model::OnMaterial& item) {
  if (item.condition.empty()) return item.why;
  return joined(item.why, sentence_case(item.condition) + (item.condition.back() == '.' ? "" : "."));
}

void add_on_materials(const Desk& desk, EntryMaker& maker, const model::Record& agent,
                      const std::vector<model::OnMaterial>& on_materials) {
  if (on_materials.empty()) return;
  std::vector<VerdictRow> rows;
  std::set<std::string> judged;
  for (std::size_t i = 0; i < on_materials.size(); ++i) {
    const model::OnMaterial& item = on_materials[i];
    rows.push_back({item.material, item.verdict, verdict_words(item), desk.sign(agent, "on-materials." + std::to_string(i))});
    judged.insert(item.material);
  }
  maker.subheading("On materials");
  add_verdicts(desk, maker, "on-materials", "material", std::move(rows));
  Line missing(desk);
  for (const auto& [id, material] : desk.records.materials) {
    if (judged.count(material.reference()) == 0) missing.say(missing.empty() ? "" : ", ").say(desk.name(material.reference()));
  }
  maker.run_in("Not known", missing);
}

}  // namespace benchleaf::compose
