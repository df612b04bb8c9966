// In: one damaged file. Out: what the checks say about it that they did not say about the right one.

#include "slips/slip_world.h"

#include <algorithm>

#include "derive/makers.h"
#include "prove/checks.h"
#include "read/checked_file.h"
#include "read/record_builder.h"

namespace benchleaf::test {
namespace {

using NoRun = void (*)(prove::Check);  ///< where a file gives no record, nothing can be run
using model::Kind;
using model::KnowledgeBase;
using report::Findings;

read::ContentFile content_file(const std::string& path) {
  const std::size_t slash = path.find('/');
  return {path, model::kind_from_name(path.substr(0, slash)), path.substr(slash + 1, path.rfind('.') - slash - 1)};
}

/// Takes a record of a kind out of its list for as long as this lives.
template <typename RecordType>
class Aside {
 public:
  Aside(std::map<std::string, RecordType, std::less<>>& list, const std::string& id) : list_(list), id_(id) {
    const auto found = list.find(id);
    if (found != list.end()) right_ = list.extract(found);
  }
  ~Aside() {
    list_.erase(id_);
    if (!right_.empty()) list_.insert(std::move(right_));
  }
  Aside(const Aside&) = delete;
  Aside& operator=(const Aside&) = delete;

 private:
  std::map<std::string, RecordType, std::less<>>& list_;
  const std::string id_;
  typename std::map<std::string, RecordType, std::less<>>::node_type right_;
};

/// The facts that rules look up, as they are with one damaged cell or liquid: those of the other records do not move. Which
/// cells are of one size is asked of all of them.
derive::Derived facts_with(const KnowledgeBase& base, const model::Tables& tables, const model::FactBase& right, Kind kind,
                           const std::string& id) {
  KnowledgeBase part;
  if (kind == Kind::cell && base.cells.count(id) == 1) part.cells.emplace(id, base.cells.at(id));
  if (kind == Kind::chemistry && base.chemistries.count(id) == 1) {
    part.chemistries.emplace(id, base.chemistries.at(id));
    part.substances = base.substances;
  }
  derive::Making making{part, tables, {}, {}};
  derive::make_stated_facts(making);
  derive::make_cell_decode_facts(making);
  derive::make_mixture_class_facts(making);
  const std::string front = std::string(model::kind_name(kind)) + "/" + id + "#";
  for (const auto& fact : right.all()) {
    if (fact.id.compare(0, front.size(), front) != 0) making.facts.add(fact);
  }
  derive::Making sizes{base, tables, {}, {}};
  if (kind == Kind::cell) derive::make_same_size_facts(sizes);
  return {std::move(making.facts), std::move(sizes.relations)};
}

/// Whether rules look up facts of the kind.
bool has_facts(Kind kind) { return kind == Kind::cell || kind == Kind::chemistry; }

/// Whether a check judges each procedure by itself and speaks of procedures alone.
bool judges_procedures(prove::Check check) {
  return check == prove::check_procedure_steps || check == prove::check_cautions_before_steps;
}

/// Runs a check as far as it can speak about one record.
void run(prove::Check check, const prove::Proof& proof, KnowledgeBase& base, Kind kind, const std::string& id) {
  if (!judges_procedures(check)) return check(proof);
  if (kind != Kind::procedure) return;
  auto all = std::move(base.procedures);
  base.procedures.clear();
  base.procedures.insert(all.extract(id));
  check(proof);
  all.insert(base.procedures.extract(id));
  base.procedures = std::move(all);
}

}  // namespace

SlipWorld::SlipWorld() : content_(texts_below("content")), whole_(schema_, content_) {
  for (const model::Record* record : whole_.base.all()) names_.add(record->reference());
  for (int i = 0; i < whole_.files.size(); ++i) names_of_files_.add({}, {});
  for (const auto& [alias, reference] : whole_.base.aliases) names_.add_alias(alias, reference);
  for (const auto& finding : whole_.findings.all()) {
    if (finding.where.file != base::kNoFile) told_[whole_.files.path(finding.where.file)].emplace(finding.rule, finding.message);
  }
  for (const auto& fact : whole_.derived.facts.all()) {
    const bool looked_up =
        fact.id.find("#cell-decode.") != std::string::npos || fact.id.find("#mixture-class.") != std::string::npos;
    if (looked_up) rule_facts_.add(fact);
  }
  const auto checks = prove::all_checks();
  for (const Kind kind : model::all_kinds()) order_[kind] = {checks.begin(), checks.end()};
}

std::vector<const report::Finding*> SlipWorld::fresh(const Findings& findings, base::FileId file, const std::string& path) const {
  const auto told = told_.find("content/" + path);
  std::vector<const report::Finding*> list;
  for (const auto& finding : findings.all()) {
    if (finding.where.file != file) continue;
    if (told == told_.end() || told->second.count({finding.rule, finding.message}) == 0) list.push_back(&finding);
  }
  return list;
}

template <typename Visit>
void SlipWorld::with_record(const Slip& slip, Findings& findings, base::FileId& file, Visit visit) {
  const read::ContentFile name = content_file(slip.path);
  base::FileTable files = names_of_files_;
  const read::Renamed none;
  const read::FileForm form{schema_.shapes, none, "handbook"};
  auto checked = read::check_files({name}, read::MemoryFiles("content", {{slip.path, slip.text}}), form, files, findings);
  file = checked.front().file;
  if (!checked.front().usable || !fresh(findings, file, slip.path).empty()) return visit(static_cast<const NoRun*>(nullptr));
  switch (*name.kind) {
#define BENCHLEAF_KIND(name_, folder, Struct, list, plural) \
  case Kind::name_:                                         \
    return with_checked(whole_.base.list, std::move(checked.front()), findings, visit);
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  }
}

template <typename RecordType, typename Visit>
void SlipWorld::with_checked(std::map<std::string, RecordType, std::less<>>& list, read::CheckedFile checked, Findings& findings,
                             Visit visit) {
  KnowledgeBase& base = whole_.base;
  const Kind kind = *checked.name.kind;
  const std::string id = checked.name.id;
  const Aside<RecordType> aside(list, id);
  read::RecordNames names = names_;
  names.add(checked.reference());
  read::add_other_names(checked, names);
  read::add_record(std::move(checked), names, base, findings);
  std::optional<derive::Derived> derived;
  if (has_facts(kind)) derived = facts_with(base, whole_.tables, rule_facts_, kind, id);
  const prove::Proof proof{base, whole_.tables, derived ? *derived : whole_.derived, findings};
  const auto run_one = [&](prove::Check check) { run(check, proof, base, kind, id); };
  visit(&run_one);
}

std::optional<std::string> SlipWorld::catches(const Slip& slip) {
  Findings findings;
  base::FileId file = base::kNoFile;
  std::optional<std::string> rule;
  auto& order = order_.at(*content_file(slip.path).kind);
  const auto look = [&] {
    const auto list = fresh(findings, file, slip.path);
    if (!list.empty()) rule = std::string(report::rule_info(list.front()->rule).id);
    return rule.has_value();
  };
  with_record(slip, findings, file, [&](const auto* run_one) {
    if (look() || run_one == nullptr) return;
    for (std::size_t i = 0; i < order.size(); ++i) {
      (*run_one)(order[i]);
      if (!look()) continue;
      std::rotate(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(i),
                  order.begin() + static_cast<std::ptrdiff_t>(i) + 1);
      return;
    }
  });
  return rule;
}

std::set<std::string> SlipWorld::found(const Slip& slip) {
  Findings findings;
  base::FileId file = base::kNoFile;
  with_record(slip, findings, file, [&](const auto* run_one) {
    if (run_one == nullptr) return;
    for (const auto check : prove::all_checks()) (*run_one)(check);
  });
  std::set<std::string> lines;
  for (const auto* one : fresh(findings, file, slip.path))
    lines.insert(std::string(report::rule_info(one->rule).id) + " " + one->message);
  return lines;
}

std::set<std::string> SlipWorld::found_by_whole_check(const Slip& slip) const {
  FileTexts content = content_;
  content[slip.path] = slip.text;
  const Checked checked(schema_, content);
  std::set<std::string> lines;
  for (int file = 0; file < checked.files.size(); ++file) {
    if (checked.files.path(file) != "content/" + slip.path) continue;
    for (const auto* one : fresh(checked.findings, file, slip.path))
      lines.insert(std::string(report::rule_info(one->rule).id) + " " + one->message);
  }
  return lines;
}

}  // namespace benchleaf::test
