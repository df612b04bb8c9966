#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "model/book.h"
#include "model/drawing.h"
#include "model/fact.h"

namespace benchleaf::model {

/// The signs of the look, drawn once for paper and screen in a box 10 mm wide; each output scales them to its type.

/// Leaf: published; round: said; cross: nobody stands for it; bar of a cursor: the reader typed it. The bar beneath, in a
/// box 12 mm high, says that the value was worked out.
Drawing trust_sign(Trust trust, bool derived);
/// How far down that box the baseline of the words beside it lies, as a share of its width.
inline constexpr double kSignBaseline = 8.6 / 10;
/// What the sign says, in words: `recalled, worked out`.
std::string trust_words(Trust trust, bool derived);
/// The line beside the sign in a legend: `recalled, not re-read`.
std::string_view trust_legend(Trust trust);
/// The line beside the bar in a legend.
std::string_view derived_legend();

/// Tick, wave, cross; stands beside words, never alone.
Drawing verdict_mark(Verdict verdict, Ink ink = Ink::ink);
/// `use`, `with limits`, `never`.
std::string_view verdict_words(Verdict verdict);

/// The triangle of a safety message, its exclamation mark cut out so that the ground shows through.
Drawing alert_triangle(Ink ink);
/// `DANGER`, `WARNING`, `CAUTION`, `NOTICE`.
std::string_view message_word(Message::Word word);
/// The general sign of the family that a sign number belongs to (M, P or W of ISO 7010), to be set with the title in
/// words beside it; none for another family.
std::optional<Drawing> safety_sign(std::string_view number);

}  // namespace benchleaf::model
