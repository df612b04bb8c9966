// In: a liquid of the records, or shares of substances. Out: the label of its bottle: name, strength, hazards in words and
// diamonds, what it never meets.
#include <algorithm>
#include <utility>

#include "bench/hazard_lines.h"
#include "bench/mixing.h"
#include "bench/mixture_class.h"
#include "compose/figures/hazard_diamonds.h"
#include "compose/names.h"
#include "derive/mixture_inputs.h"
#include "label/parts.h"
#include "standards/hazard_sentence.h"
#include "standards/table_view.h"

namespace benchleaf::label {

namespace {

using bench::MixtureLabel;
using model::Runs;
using model::Style;

constexpr double kFootMm = 3.2;  // one line at the least size

void say(Runs& runs, std::string words, Style style = Style::plain) {
  if (!runs.empty()) words.insert(0, " ");
  runs.push_back(model::text_run(std::move(words), style));
}

/// A sentence with its head in bold.
void say_after(Runs& runs, const char* head, const std::vector<std::string>& words) {
  if (words.empty()) return;
  say(runs, head, Style::bold);
  say(runs, compose::listed(words, "; ") + ".");
}

std::vector<std::string> names_of(const compose::Desk& desk, const std::vector<std::string>& substances) {
  std::vector<std::string> names;
  for (const std::string& id : substances) {
    const model::RecordRef record(model::Kind::substance, id);
    names.push_back(desk.records.find(record) == nullptr ? id : desk.name(record));
  }
  return names;
}

/// Signal word, statements, and what is not known, a line each. In brief it is said that something is open, not what.
std::vector<Runs> hazard_lines(const compose::Desk& desk, const MixtureLabel& mixture, bool brief) {
  std::vector<Runs> lines;
  const standards::ChemicalLabel& label = mixture.label;
  Runs first;
  if (label.signal != "none" && !label.signal.empty()) say(first, compose::sentence_case(label.signal) + ".", Style::bold);
  for (const std::string& code : label.statements) {
    say(first, standards::hazard_sentence(desk.tables, code) + ".");
    lines.push_back(std::exchange(first, {}));
  }
  Runs open;
  std::vector<std::string> perhaps;
  for (const std::string& code : mixture.perhaps) perhaps.push_back(standards::hazard_sentence(desk.tables, code));
  say_after(open, "Perhaps:", perhaps);
  say_after(open, "Hazards not known:", names_of(desk, mixture.unknown));
  std::vector<std::string> questions;
  for (const standards::Undecided& undecided : mixture.undecided) questions.push_back(undecided.words);
  if (brief && !questions.empty()) {
    say(open, "Not all is decided by its shares.");
  } else {
    say_after(open, "Not decided:", questions);
  }
  if (!open.empty()) lines.push_back(std::move(open));
  if (lines.empty()) lines.push_back(line_of("No hazard class by its shares."));
  return lines;
}

bool in_group(const model::ReactiveGroup& group, const std::vector<std::string>& substances) {
  return std::any_of(substances.begin(), substances.end(), [&group](const std::string& one) {
    return std::find(group.members.begin(), group.members.end(), one) != group.members.end();
  });
}

bool any_in_group(const model::Tables& tables, std::string_view name, const std::vector<std::string>& substances) {
  return std::any_of(tables.reactive_groups.begin(), tables.reactive_groups.end(),
                     [&](const auto& group) { return group.group == name && in_group(group, substances); });
}

/// What a group is called on a bottle.
std::string group_words(const model::Tables& tables, const std::string& group) {
  const auto* row = standards::row_of(tables, "reactive-groups", group);
  return row == nullptr || standards::cell_text(*row, "plain").empty() ? group : standards::cell_text(*row, "plain");
}

void add_once(std::vector<std::string>& names, std::string name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(std::move(name));
}

/// What it must never be poured to: groups of substances, and beside them the liquids and residues that a record names.
template <typename Meets>
std::vector<std::string> never_met(const compose::Desk& desk, const std::vector<std::string>& substances, Meets meets) {
  std::vector<std::string> names;
  for (const model::ReactivePair& pair : desk.tables.reactive_pairs) {
    if (pair.open != "never") continue;
    if (any_in_group(desk.tables, pair.one, substances)) add_once(names, group_words(desk.tables, pair.other));
    if (any_in_group(desk.tables, pair.other, substances)) add_once(names, group_words(desk.tables, pair.one));
  }
  const auto add = [&](const auto& records) {
    for (const auto& [id, record] : records) {
      bool stated = false, grouped = false;
      for (const bench::MixVerdict& verdict : meets(record.reference())) {
        if (verdict.open == bench::Meet::never) (verdict.record.empty() ? grouped : stated) = true;
      }
      if (stated && !grouped) add_once(names, compose::inner_name(record));
    }
  };
  add(desk.records.chemistries);
  add(desk.records.residues);
  return names;
}

/// Nothing found is none only where every substance stands in a group.
Runs never_words(const std::vector<std::string>& names, bool all_grouped) {
  if (names.empty())
    return line_of(all_grouped ? "Nothing on file that it must never meet."
                               : "What it must never meet is not known: keep it apart.");
  Runs runs;
  say(runs, "Never with", Style::bold);
  say(runs, compose::listed(names) + ".");
  return runs;
}

/// In brief it is said how many there are, since a list that is cut would read as the whole.
Runs harmed_words(const compose::Desk& desk, const model::Chemistry& liquid, bool brief) {
  std::vector<std::string> names;
  for (const model::OnMaterial& one : liquid.on_materials) {
    const model::Record* material = desk.records.find(one.material);
    if (one.verdict == model::Verdict::never && material != nullptr) names.push_back(compose::inner_name(*material));
  }
  Runs runs;
  if (names.empty()) return runs;
  say(runs, "Never on", Style::bold);
  const std::string count = std::to_string(names.size()) + (names.size() == 1 ? " material" : " materials");
  say(runs, brief ? count + ": look yours up first." : compose::listed(names) + ".");
  return runs;
}

/// The same in full and in brief.
void add_to_both(model::Label& label, const Runs& line) {
  if (line.empty()) return;
  label.lines.push_back(line);
  label.brief.push_back(line);
}

model::Label started(const std::string& title, Runs strength, Runs foot) {
  model::Label label;
  label.title = title;
  label.head = line_of(title);
  add_to_both(label, strength);
  say(foot, "For this bench, not for sale.");
  label.foot = {std::move(foot)};
  return label;
}

void add_hazards(const compose::Desk& desk, const MixtureLabel& mixture, const model::LabelRoom& room, model::Label& label) {
  for (Runs& line : hazard_lines(desk, mixture, true)) label.brief.push_back(std::move(line));
  for (Runs& line : hazard_lines(desk, mixture, false)) label.lines.push_back(std::move(line));
  label.beside = compose::hazard_diamonds(desk.tables, mixture.label.pictograms, room.height_mm - kFootMm);
}

/// `acetic acid 5 %, citric acid 2 %`
Runs strength_of(const compose::Desk& desk, const MixtureLabel& mixture) {
  std::string words;
  for (const MixtureLabel::Part& part : mixture.parts) {
    words += (words.empty() ? "" : ", ") + names_of(desk, {part.substance}).front() + "\u00A0" + part.percent;
  }
  return line_of(std::move(words));
}

Runs strength_of(const compose::Desk& desk, const model::Chemistry& liquid) {
  std::string words;
  for (std::size_t i = 0; i < liquid.made_of.size(); ++i) {
    const model::Fact* strength = desk.fact(liquid, "made-of." + std::to_string(i) + ".strength");
    words += (words.empty() ? "" : ", ") + desk.name(liquid.made_of[i].substance);
    if (strength != nullptr) words += "\u00A0" + strength->printed;
  }
  return words.empty() ? Runs() : line_of(std::move(words));
}

std::vector<std::string> substances_of(const model::Chemistry& liquid) {
  std::vector<std::string> ids;
  for (const auto& part : liquid.made_of) ids.emplace_back(part.substance.id());
  return ids;
}

/// Whether of all its parts it is known that they have no class.
bool is_unclassed(const compose::Desk& desk, const model::Chemistry& liquid) {
  return !liquid.made_of.empty() && std::all_of(liquid.made_of.begin(), liquid.made_of.end(), [&desk](const auto& part) {
    const auto hazards = bench::hazards_of(part.substance.id(), {desk.tables, desk.derived.facts});
    return hazards && hazards->known && hazards->lines.empty();
  });
}

/// Its hazards by mixture-class, or that they are not known.
void add_hazards_of(const compose::Desk& desk, const model::Chemistry& liquid, const model::LabelRoom& room,
                    model::Label& label) {
  if (const auto inputs = derive::mixture_inputs(liquid, desk.records, desk.derived.facts)) {
    const auto made = bench::mixture_label(*inputs, {desk.tables, desk.derived.facts});
    if (const auto* mixture = std::get_if<MixtureLabel>(&made)) return add_hazards(desk, *mixture, room, label);
  }
  if (is_unclassed(desk, liquid)) return add_to_both(label, line_of("No hazard class of its parts on file."));
  Runs runs;
  say(runs, "Hazards not known here:", Style::bold);
  say(runs, "copy the words and the diamonds of the bottle that it came in.");
  add_to_both(label, runs);
}

}  // namespace

model::Label bottle_of(const compose::Desk& desk, const model::Chemistry& liquid, const Thing& thing,
                       const model::LabelRoom& room) {
  model::Label label = started(liquid.title, strength_of(desk, liquid), dated("Filled", thing.date));
  const bench::StepWorld world{desk.records, desk.tables};
  const auto self = liquid.reference();
  const auto never = never_met(desk, substances_of(liquid), [&](const model::RecordRef& other) {
    return other == self ? std::vector<bench::MixVerdict>() : bench::mixes(world, self, other);
  });
  add_to_both(label, never_words(never, !liquid.made_of.empty() && bench::ungrouped(world, self).empty()));
  add_hazards_of(desk, liquid, room, label);
  if (Runs harmed = harmed_words(desk, liquid, false); !harmed.empty()) {
    label.lines.push_back(std::move(harmed));
    label.brief.push_back(harmed_words(desk, liquid, true));
  }
  return label;
}

Made label_of(const compose::Desk& desk, const Mixture& mixture, const model::LabelRoom& room) {
  const query::BenchNames names(desk.records, desk.tables);
  const auto made = bench::mixture_label(mixture.inputs, {desk.tables, desk.derived.facts, &names});
  if (const auto* refusal = std::get_if<bench::Refusal>(&made))
    return Refused{"no label for " + mixture.name + ": " + refusal->reason, refusal->hint, false, refusal->input};
  const auto& parts = std::get<MixtureLabel>(made);
  model::Label label = started(mixture.name, strength_of(desk, parts), dated("Mixed", mixture.date));
  model::References substances;
  std::vector<std::string> ids;
  for (const MixtureLabel::Part& part : parts.parts) {
    substances.emplace_back(model::Kind::substance, part.substance);
    ids.push_back(part.substance);
  }
  const bool all_grouped = std::all_of(ids.begin(), ids.end(), [&desk](const std::string& id) {
    const auto& groups = desk.tables.reactive_groups;
    return std::any_of(groups.begin(), groups.end(), [&id](const auto& group) { return in_group(group, {id}); });
  });
  const bench::StepWorld world{desk.records, desk.tables};
  const auto never = never_met(desk, ids, [&](const model::RecordRef& other) { return bench::mixes(world, substances, other); });
  add_to_both(label, never_words(never, all_grouped));
  add_hazards(desk, parts, room, label);
  return label;
}

}  // namespace benchleaf::label
