// In: runs that are drawn and not written: trust signs, verdicts, page numbers, blanks. Out: boxes in the line.
#include <utility>

#include "model/signs.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

/// Signs are drawn in a box of 10 mm; beside text they are as wide as 7 pt beside 9.5 pt type.
constexpr double kSignBoxMm = 10;
constexpr double kSignShare = 7.0 / 9.5;
/// A page reference is a little smaller than the words around it.
constexpr double kReferenceShare = 8.5 / 9.5;
constexpr double kDotMm = 0.5;

Length share(const Look& look, double factor) { return static_cast<Length>(look.size_pt * factor * kPt); }

double mm_of(Length length) { return static_cast<double>(length) * 25.4 / 72000.0; }

}  // namespace

void Words::add_trust(const model::Run& run, TagId parent) {
  const Length side = share(look_, kSignShare);
  BoxContent content;
  content.items.push_back({parent, SignItem{run.trust, run.derived, {}, side}});
  const Length height = static_cast<Length>(static_cast<double>(side) * model::kSignBaseline);
  add_box(std::move(content), side, height, side - height, kLayoutArtifact, {});
}

/// The mark alone, in a matrix whose legend says what it means: a reader that speaks is told the word.
void Words::add_verdict_mark(Setting& setting, const model::Run& run, TagId parent) {
  const bool never = run.verdict == model::Verdict::never;
  const Length side = share(look_, 0.72);
  const Length pad = share(look_, 0.2);
  const Length width = side + 2 * pad;
  const TagId figure = setting.add_figure(parent, std::string(model::verdict_words(run.verdict)));
  BoxContent content;
  if (run.verdict == model::Verdict::use) {
    model::PathShape dot = model::circle({mm_of(width) / 2, -mm_of(share(look_, 0.34))}, kDotMm);
    dot.fill = model::Ink::ink;
    content.items.push_back({figure, place_path(dot, 1)});
  } else {
    if (never) content.items.push_back(ground({0, -share(look_, 0.9), width, share(look_, 0.28)}, print_color(model::Ink::ink)));
    const model::Drawing mark = model::verdict_mark(run.verdict, never ? model::Ink::paper : model::Ink::ink);
    for (Item& item : place_drawing(setting, mark, mm_of(side) / kSignBoxMm, figure)) {
      shift(item, pad, -share(look_, 0.70));
      content.items.push_back(std::move(item));
    }
  }
  add_box(std::move(content), width, share(look_, 0.8), share(look_, 0.2), kLayoutArtifact, {});
}

void Words::add_verdict(Setting& setting, const model::Run& run, TagId parent) {
  if (run.text.empty()) return add_verdict_mark(setting, run, parent);
  const bool never = run.verdict == model::Verdict::never;
  const bool strong = run.verdict != model::Verdict::with_limits;
  Look look = strong ? bold_of(look_) : look_;
  if (never) look.color = print_color(model::Ink::paper);
  const Length side = share(look_, 0.72);
  const Length pad = never ? share(look_, 0.28) : 0;
  const Length gap = share(look_, 0.25);
  PlainLine word = set_plain(setting, run.text, look, parent);
  const Length width = pad + side + gap + word.width + pad;
  BoxContent content;
  if (never) {
    content.items.push_back(ground({0, -share(look_, 0.9), width, share(look_, 0.28)}, print_color(model::Ink::ink)));
  }
  const model::Drawing mark = model::verdict_mark(run.verdict, never ? model::Ink::paper : model::Ink::ink);
  for (Item& item : place_drawing(setting, mark, mm_of(side) / kSignBoxMm, kLayoutArtifact)) {
    shift(item, pad, -share(look_, 0.70));
    content.items.push_back(std::move(item));
  }
  for (Item& item : word.items) {
    shift(item, pad + side + gap, 0);
    content.items.push_back(std::move(item));
  }
  add_box(std::move(content), width, share(look_, 0.8), share(look_, 0.2), kLayoutArtifact, {});
}

void Words::add_slot(Setting& setting, const model::Run& run, TagId parent) {
  if (!setting.anchors.contains(run.target)) return;
  const TagId link = link_tag(setting, run, parent);
  if (!run.text.empty()) add_piece(run, link >= 0 ? link : parent, link);  // what parts it from the words before
  Slot slot;
  slot.target = run.target;
  slot.tag = link >= 0 ? link : parent;
  slot.size_pt = std::max(look_.size_pt * kReferenceShare, std::min(setting.least_pt, look_.size_pt));
  slot.width = set_plain(setting, "p.\u00A0" + setting.widest_number, look::page_reference(slot.size_pt), kLayoutArtifact).width;
  const Length width = slot.width;
  BoxContent content;
  content.slots.push_back(std::move(slot));
  add_box(std::move(content), width, share(look_, 0.7), share(look_, 0.2), link, run.target);
}

void Words::add_blank(const model::Run& run) {
  const Length width = from_mm(run.blank_mm);
  BoxContent content;
  content.items.push_back(rule(0, share(look_, 0.18), width, 0.5, print_color(model::Ink::ink)));
  add_box(std::move(content), width, share(look_, 0.7), share(look_, 0.2), kLayoutArtifact, {});
}

void Words::add_tick() {
  const Length side = share(look_, 0.85);
  model::PathShape square = model::rectangle({0, -mm_of(side) + 0.3}, mm_of(side), mm_of(side));
  square.stroke = model::Ink::ink;
  square.stroke_mm = 0.25;
  BoxContent content;
  content.items.push_back({kLayoutArtifact, place_path(square, 1)});
  add_box(std::move(content), side, side, 0, kLayoutArtifact, {});
}

}  // namespace benchleaf::page
