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

}  // namespace

Markup set_message(const model::Message& message, Setting& setting) {
  Element word("p");
  word.in_class("word");
  if (message.word != model::Message::Word::notice) word.add(alert_triangle(setting));
  word.add(Element("strong").say(model::message_word(message.word)));
  Element text("div");
  text.in_class("text");
  Element sentence("p");
  const model::Runs& harm = model::harm_words(message);
  if (!harm.empty()) sentence.add(Element("strong").add(set_runs(harm, setting))).say(" ");
  text.add(sentence.add(set_runs(model::avoid_words(message), setting))).add(set_signs(message));
  Element panel("div");
  panel.in_class("message").in_class(word_class(message.word)).set("role", "note");
  panel.set("aria-label", model::message_word(message.word));
  if (!message.record.empty()) panel.set("data-record", message.record);
  return panel.add(word).add(text);
}

}  // namespace benchleaf::html
