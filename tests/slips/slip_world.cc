// In: one damaged file. Out: what the checks say about it that they did not say about the right one.

#include "slips/slip_world.h"

#include <algorithm>

#include "derive/makers.h"
#include "read/checked_file.h"
#include "read/record_builder.h"

namespace benchleaf::test {
namespace {

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

/// Rules look up facts of cells and liquids only; those follow from cells, liquids and substances.
bool moves_facts(Kind kind) { return kind == Kind::cell || kind == Kind::chemistry || kind == Kind::substance; }

derive::Derived facts_of_rules(const KnowledgeBase& base, const model::Tables& tables) {
  KnowledgeBase part;
  part.cells = base.cells;
  part.chemistries = base.chemistries;
  part.substances = base.substances;
  derive::Making making{part, tables, {}, {}};
  derive::make_stated_facts(making);
  derive::make_cell_decode_facts(making);
  derive::make_mixture_class_facts(making);
  derive::make_same_size_facts(making);
  return {std::move(making.facts), std::move(making.relations)};
}

}  // namespace

SlipWorld::SlipWorld() : content_(texts_below("content")), whole_(schema_, content_) {
  for (const model::Record* record : whole_.base.all()) names_.add(record->reference());
  for (const auto& [alias, reference] : whole_.base.aliases) names_.add_alias(alias, reference);
  for (const auto& finding : whole_.findings.all()) {
    if (finding.where.file != base::kNoFile) told_[whole_.files.path(finding.where.file)].emplace(finding.rule, finding.message);
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
  base::FileTable files = {};
  for (int i = 0; i < whole_.files.size(); ++i) files.add(whole_.files.path(i), {});
  auto checked =
      read::check_files({name}, read::MemoryFiles("content", {{slip.path, slip.text}}), schema_.shapes, files, findings);
  file = checked.front().file;
  if (!checked.front().usable || !fresh(findings, file, slip.path).empty()) return visit(nullptr);
  KnowledgeBase& base = whole_.base;
  switch (*name.kind) {
#define BENCHLEAF_KIND(name_, folder, Struct, list, plural)                                       \
  case Kind::name_: {                                                                             \
    const Aside<model::Struct> aside(base.list, name.id);                                         \
    read::RecordNames names = names_;                                                             \
    names.add(checked.front().reference());                                                       \
    read::add_other_names(checked.front(), names);                                                \
    read::add_record(std::move(checked.front()), names, base, findings);                          \
    std::optional<derive::Derived> derived;                                                       \
    if (moves_facts(Kind::name_)) derived = facts_of_rules(base, whole_.tables);                  \
    const prove::Proof proof{base, whole_.tables, derived ? *derived : whole_.derived, findings}; \
    visit(&proof);                                                                                \
    break;                                                                                        \
  }
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  }
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
  with_record(slip, findings, file, [&](const prove::Proof* proof) {
    if (look() || proof == nullptr) return;
    for (std::size_t i = 0; i < order.size(); ++i) {
      order[i](*proof);
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
  with_record(slip, findings, file, [&](const prove::Proof* proof) {
    if (proof == nullptr) return;
    for (const auto check : prove::all_checks()) check(*proof);
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
