// Rules about the matrices of charts: a row or a column without a verdict reads as "nothing is known", so none may be on file.

#include "prove/chart_gaps.h"

#include <algorithm>
#include <string>
#include <vector>

#include "bench/mixing.h"
#include "prove/shared.h"

namespace benchleaf::prove {
namespace {

using model::Chemistry;
using model::Record;
using report::Rule;

constexpr std::string_view kLiquidsOnMaterials = "material-matrix";
constexpr std::string_view kMeetings = "meeting-matrix";

bool says_of(const Record& liquid, const Record& material) {
  const auto& verdicts = static_cast<const Chemistry&>(liquid).on_materials;
  return std::any_of(verdicts.begin(), verdicts.end(), [&](const auto& one) { return one.material == material.reference(); });
}

/// A panel and the records that it names; one that names none shows all there are and hides nothing.
class Panel {
 public:
  Panel(const Proof& proof, const model::Chart& chart, std::size_t place) : proof_(proof), chart_(chart), place_(place) {
    for (const auto& reference : shown().records) records_.push_back(proof.base.find(reference));
  }

  void check() const {
    for (std::size_t i = 0; i < records_.size(); ++i) {
      const Record* hidden = records_[i] == nullptr ? nullptr : answer_beside(*records_[i]);
      if (hidden == nullptr) continue;
      proof_.findings
          .add(Rule::voice_gap, chart_.span_of("panels." + std::to_string(place_) + ".records." + std::to_string(i)),
               "nothing in the panel \"" + shown().title + "\" answers for " + records_[i]->reference() +
                   ", which reads as not known, and there is a verdict with " + hidden->reference(),
               "name " + hidden->reference() + " in the panel too, or leave the record out")
          .notes.push_back({hidden->span, "its verdicts"});
    }
  }

 private:
  const model::Chart::Panel& shown() const { return chart_.panels[place_]; }

  bool is_shown(const Record& record) const { return std::find(records_.begin(), records_.end(), &record) != records_.end(); }

  /// Whether the place where two meet in the panel holds a verdict.
  bool answers(const Record& one, const Record& other) const {
    if (&one == &other) return false;
    if (shown().shows == kMeetings)
      return bench::is_mixture(one) && bench::is_mixture(other) &&
             !bench::mixes({proof_.base, proof_.tables}, one.reference(), other.reference()).empty();
    if (one.kind == model::Kind::chemistry && other.kind == model::Kind::material) return says_of(one, other);
    return one.kind == model::Kind::material && other.kind == model::Kind::chemistry && says_of(other, one);
  }

  /// A record that the panel leaves out and that has a verdict with one of which the panel shows none.
  const Record* answer_beside(const Record& record) const {
    const Record* hidden = nullptr;
    for (const Record* other : proof_.base.all()) {
      if (!answers(record, *other)) continue;
      if (is_shown(*other)) return nullptr;
      if (hidden == nullptr) hidden = other;
    }
    return hidden;
  }

  const Proof& proof_;
  const model::Chart& chart_;
  std::size_t place_;
  std::vector<const Record*> records_;
};

}  // namespace

void check_charts_have_no_gaps(const Proof& proof) {
  for (const auto& [id, chart] : proof.base.charts) {
    for (std::size_t i = 0; i < chart.panels.size(); ++i) {
      const std::string& shows = chart.panels[i].shows;
      if (shows == kLiquidsOnMaterials || shows == kMeetings) Panel(proof, chart, i).check();
    }
  }
}

}  // namespace benchleaf::prove
