// In: a bench hazard. Out: one strip: word panel on its colour, hazard in bold, then what to do. Never broken, and kept
// with the step it guards.
#include <algorithm>
#include <utility>

#include "model/signs.h"
#include "page/blocks.h"
#include "page/drawing.h"
#include "page/words.h"

namespace benchleaf::page {
namespace {

struct Panel {
  model::Ink ground;
  model::Ink words;
};

Panel panel_of(model::Message::Word word) {
  switch (word) {
    case model::Message::Word::danger: return {model::Ink::safety_red, model::Ink::paper};
    case model::Message::Word::warning: return {model::Ink::safety_orange, model::Ink::ink};
    case model::Message::Word::caution: return {model::Ink::safety_yellow, model::Ink::ink};
    case model::Message::Word::notice: return {model::Ink::safety_blue, model::Ink::paper};
  }
  return {model::Ink::ink, model::Ink::paper};
}

PathItem frame(Length width, Length height) {
  Item box = ground({0, 0, width, height}, {});
  PathItem path = std::get<PathItem>(std::move(box.what));
  path.fill.reset();
  path.stroke = print_color(model::Ink::ink);
  path.stroke_width = 750;
  return path;
}

bool is_brief(const model::Message& message) { return message.length == model::Message::Length::brief; }

/// Set low: the word beside the words, small.
bool is_low(const Setting& setting, const model::Message& message) { return setting.dense || is_brief(message); }

/// The word, with the triangle that says a person may come to harm; a notice has none.
std::vector<Item> word_panel(Setting& setting, const model::Message& message, Length width, Length height, TagId tag) {
  const Panel panel = panel_of(message.word);
  std::vector<Item> items{ground({0, 0, width, height}, print_color(panel.ground))};
  const Length middle = height / 2;
  Length x = setting.mm(setting.dense ? 1.6 : 2.4);
  if (message.word != model::Message::Word::notice) {
    const double triangle_mm = is_low(setting, message) ? 4.4 : 6;
    for (Item& item :
         place_drawing(setting, model::alert_triangle(panel.words), triangle_mm / 10 * setting.scale, kLayoutArtifact)) {
      shift(item, x, middle - setting.mm(triangle_mm / 2));
      items.push_back(std::move(item));
    }
    x += setting.mm(triangle_mm + (setting.dense ? 0.8 : 1.4));
  }
  const Look look =
      in_color(setting.sized(is_low(setting, message) ? look::strip_word() : look::message_word()), print_color(panel.words));
  PlainLine word = set_plain(setting, model::message_word(message.word), look, tag);
  for (Item& item : word.items) {
    shift(item, x, middle + static_cast<Length>(look.size_pt * 0.355 * kPt));
    items.push_back(std::move(item));
  }
  return items;
}

/// Up to two drawn signs above each other's line, then the rest of the panel is words.
Length place_signs(Setting& setting, const model::Message& message, Length left, Length height, TagId tag,
                   std::vector<Item>& items) {
  const double sign_mm = is_low(setting, message) ? 6.8 : 9.5;
  constexpr std::size_t kMost = 2;
  Length x = left;
  std::size_t drawn = 0;
  for (std::size_t i = 0; i < message.signs.size() && drawn < kMost; ++i) {
    const auto sign = model::safety_sign(message.signs[i]);
    if (!sign) continue;
    const std::string words = i < message.sign_titles.size() ? message.sign_titles[i] : message.signs[i];
    const TagId figure = setting.add_figure(tag, words);
    for (Item& item : place_drawing(setting, *sign, sign_mm / 10 * setting.scale, figure)) {
      shift(item, x + setting.mm(1.6), (height - setting.mm(sign_mm)) / 2);
      items.push_back(std::move(item));
    }
    x += setting.mm(sign_mm + 1.6);
    ++drawn;
  }
  return x;
}

Look text_look(const Setting& setting) { return setting.sized(setting.dense ? look::dense() : look::message_text()); }

/// Narrower than this, the word stands above the words.
constexpr double kLeastSideBySideMm = 120;
constexpr double kLeastEmbeddedMm = 90;
constexpr double kPanelMm = 34;
constexpr double kBriefPanelMm = 30;
constexpr double kDensePanelMm = 26;
constexpr double kBriefPlaceMm = 14;  // of the page that says all of it

model::Runs words_of(const model::Message& message) {
  const model::Runs& harm = model::harm_words(message);
  const model::Runs& avoid = model::avoid_words(message);
  model::Runs runs;
  for (model::Run run : harm) {
    run.style = run.style | model::Style::bold;
    runs.push_back(std::move(run));
  }
  if (!harm.empty() && !avoid.empty()) runs.push_back(model::text_run(" "));
  runs.insert(runs.end(), avoid.begin(), avoid.end());
  return runs;
}

constexpr double kBoxMm = 8;
constexpr double kAboveBoxMm = 1.2;

constexpr double kLowBoxShare = 0.24;  // of a message that lies low, at its right

/// A box to write a number into with a pen for film, under the words; its foot no higher than `least`.
void add_write_box(Setting& setting, const model::Message& message, Length width, TagId group, Length least, Strip& text) {
  if (message.write_on.empty()) return;
  const Look look = bold_of(text_look(setting));
  PlainLine label = set_plain(setting, message.write_on, look, setting.add_tag(Role::p, group));
  const Length top = std::max(text.height + from_mm(kAboveBoxMm), least - from_mm(kBoxMm));
  for (Item& item : label.items) {
    shift(item, 0, top + from_mm(kBoxMm / 2) + static_cast<Length>(look.size_pt * 0.355 * kPt));
    text.items.push_back(std::move(item));
  }
  const Length left = label.width + from_mm(1.6);
  PathItem box = frame(width - left, from_mm(kBoxMm));
  for (PathSegment& segment : box.segments) segment.to = {segment.to.x + left, segment.to.y + top};
  text.items.push_back({kLayoutArtifact, std::move(box)});
  text.height = top + from_mm(kBoxMm);
}

/// The panel at the left, signs, then words, all on one middle line; a box to write into at the right.
Strip side_by_side(Setting& setting, const model::Message& message, Length width, TagId group) {
  const Length pad = setting.mm(2.4);
  const TagId word = setting.add_tag(Role::p, group);
  std::vector<Item> signs;
  const Length text_left = place_signs(setting, message, setting.mm(kPanelMm), 0, group, signs) + pad;
  const Length box = message.write_on.empty() ? 0 : static_cast<Length>(static_cast<double>(width) * kLowBoxShare);
  const Length text_width = width - text_left - pad - (box > 0 ? box + pad : 0);
  Strip text = stacked(set_paragraph(setting, words_of(message), text_look(setting), text_width, group, 0));
  Strip write;
  add_write_box(setting, message, box, group, 0, write);
  Strip strip;
  strip.height = std::max(text.height + 2 * setting.mm(1.4), setting.mm(signs.empty() ? 10 : 12.5));
  strip.items = word_panel(setting, message, setting.mm(kPanelMm), strip.height, word);
  for (Item& item : signs) {
    shift(item, 0, strip.height / 2);
    strip.items.push_back(std::move(item));
  }
  const Length down = (strip.height - text.height) / 2;
  overlay(strip, std::move(text), text_left, down);
  const Length write_down = (strip.height - write.height) / 2;
  overlay(strip, std::move(write), width - pad - box, write_down);
  return strip;
}

/// Low: the word, one sign, a sentence of harm and one of what keeps it off, and the page that says all of it.
Strip embedded(Setting& setting, const model::Message& message, Length width, TagId group) {
  const Length pad = setting.mm(2);
  const Length panel = setting.mm(setting.dense ? kDensePanelMm : kBriefPanelMm);
  const TagId word = setting.add_tag(Role::p, group);
  model::Message one = message;
  one.signs.resize(std::min<std::size_t>(one.signs.size(), setting.dense && is_brief(message) ? 0 : 1));
  std::vector<Item> signs;
  const Length text_left = place_signs(setting, one, panel, 0, group, signs) + pad;
  const bool brief = is_brief(message);
  const Length place = brief ? setting.mm(kBriefPlaceMm) : pad;
  const Look look = setting.sized(setting.dense ? look::dense() : look::strip_text());
  Strip text = stacked(set_paragraph(setting, words_of(message), look, width - text_left - place, group, 0));
  Strip strip;
  strip.height = std::max(text.height + 2 * setting.mm(setting.dense ? 0.15 : 0.8),
                          setting.mm(signs.empty() ? (setting.dense ? 4.5 : 6) : 8));
  Strip page;
  if (brief) page = stacked(set_paragraph(setting, {model::page_run(message.record)}, look, place - pad, group, 0));
  for (Slot& slot : page.slots) slot.flush_right = true;
  strip.items = word_panel(setting, message, panel, strip.height, word);
  for (Item& item : signs) {
    shift(item, 0, strip.height / 2);
    strip.items.push_back(std::move(item));
  }
  const Length down = (strip.height - text.height) / 2;
  overlay(strip, std::move(text), text_left, down);
  const Length page_down = (strip.height - page.height) / 2;
  overlay(strip, std::move(page), width - place, page_down);
  return strip;
}

/// The panel with the signs beside it, the words under both over the whole width.
Strip word_above(Setting& setting, const model::Message& message, Length width, TagId group, Length least) {
  const Length pad = setting.mm(2.4);
  const TagId word = setting.add_tag(Role::p, group);
  std::vector<Item> signs;
  const Length signs_width = place_signs(setting, message, 0, 0, group, signs);
  const Length bar = setting.mm(setting.dense && signs.empty() ? 6 : signs.empty() ? 8.4 : 10.7);
  const Length panel = signs.empty() ? width : width - signs_width - setting.mm(1.6);
  Strip text = stacked(set_paragraph(setting, words_of(message), text_look(setting), width - 2 * pad, group, 0));
  add_write_box(setting, message, width - 2 * pad, group, least - bar - 2 * setting.mm(1.2), text);
  Strip strip;
  const Length under = std::max(text.height + 2 * setting.mm(1.2), least - bar);
  strip.height = bar + under;
  strip.items = word_panel(setting, message, panel, bar, word);
  for (Item& item : signs) {
    shift(item, panel, bar / 2);
    strip.items.push_back(std::move(item));
  }
  const Length down = bar + (under - text.height) / 2;
  overlay(strip, std::move(text), pad, down);
  return strip;
}

}  // namespace

Strip message_strip(Setting& setting, const model::Message& message, Length width, TagId parent, Length least) {
  const TagId group = setting.add_tag(Role::div, parent);
  const bool wide = width >= setting.mm(kLeastSideBySideMm);
  if (is_low(setting, message) && width >= setting.mm(kLeastEmbeddedMm)) {
    Strip low = embedded(setting, message, width, group);
    low.items.push_back({kLayoutArtifact, frame(width, low.height)});
    return low;
  }
  Strip strip = wide ? side_by_side(setting, message, width, group) : word_above(setting, message, width, group, least);
  strip.items.push_back({kLayoutArtifact, frame(width, strip.height)});
  return strip;
}

void set_message(Setting& setting, const model::Message& message, Target& target) {
  Strip strip = message_strip(setting, message, target.width, target.parent, 0);
  if (!message.anchor.empty()) strip.places.push_back({message.anchor, 0});
  const bool joins = is_brief(message) && !target.galley.strips.empty() && target.galley.strips.back().message;
  strip.before = joins ? 0 : from_mm(2);
  strip.keep_next = true;
  strip.message = true;
  if (!is_brief(message)) strip.height += from_mm(0.6);
  target.galley.strips.push_back(std::move(strip));
}

}  // namespace benchleaf::page
