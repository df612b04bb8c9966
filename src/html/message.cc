// In: a safety message of the book. Out: its panel. The signal word is text, the triangle and the signs only repeat what
// the words beside them say; a notice has no triangle (ANSI Z535: property damage, no injury).
#include "html/message.h"

#include <algorithm>

#include "html/drawings.h"
#include "html/runs.h"
#include "html/signs.h"
#include "model/signs.h"

namespace benchleaf::html {

namespace {

constexpr std::size_t kMostSigns = 2;
constexpr std::string_view kGeneralSign = "M001";  ///< ISO 7010: do what the words say; the words are there

ClassName word_class(model::Message::Word word) {
  switch (word) {
    case model::Message::Word::danger: return "danger";
    case model::Message::Word::warning: return "warning";
    case model::Message::Word::caution: return "caution";
    case model::Message::Word::notice: return "notice";
  }
  return "notice";
}

Markup set_signs(const model::Message& message) {
  Element list("ul");
  list.in_class("safety-signs");
  bool any = false;
  for (std::size_t i = 0; i < std::min(message.signs.size(), kMostSigns); ++i) {
    const std::string& number = message.signs.at(i);
    if (number == kGeneralSign) continue;
    const bool titled = i < message.sign_titles.size() && !message.sign_titles.at(i).empty();
    Element item("li");
    if (const auto drawing = model::safety_sign(number)) item.add(ornament(*drawing, "safety-sign"));
    list.add(item.say(titled ? message.sign_titles.at(i) : number));
    any = true;
  }
  return any ? list.markup() : Markup();
}

Element set_sentence(const model::Runs& harm, const model::Runs& avoid, Setting& setting) {
  Element sentence("p");
  if (!harm.empty()) sentence.add(Element("strong").add(set_runs(harm, setting))).say(" ");
  sentence.add(set_runs(avoid, setting));
  return sentence;
}

}  // namespace

Markup set_message(const model::Message& message, Setting& setting) {
  Element word("p");
  word.in_class("word");
  if (message.word != model::Message::Word::notice) word.add(alert_triangle(setting));
  word.add(Element("strong").say(model::message_word(message.word)));
  // A page can unfold, so it has all of a message that paper prints in brief; a sheet of a ticket says the short one alone.
  const bool both = message.length == model::Message::Length::brief && !message.record.empty() && !setting.leaflet;
  Element text("div");
  text.in_class("text");
  text.add(both ? set_sentence(message.hazard, message.avoid, setting)
                : set_sentence(model::harm_words(message), model::avoid_words(message), setting));
  text.add(set_signs(message));
  Element panel("div");
  if (both) panel.in_class("embedded");
  panel.in_class("message").in_class(word_class(message.word)).set("role", "note");
  panel.set("aria-label", model::message_word(message.word));
  if (!message.record.empty()) panel.set("data-record", message.record);
  panel.add(word);
  if (!message.record.empty() && !message.harm_in_brief.empty() && !setting.leaflet)
    panel.add(set_sentence(message.harm_in_brief, message.avoid_in_brief, setting).in_class("in-brief"));
  return panel.add(text);
}

}  // namespace benchleaf::html
