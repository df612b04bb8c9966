// Out: the tokens of the printed page: type sizes by use, colours by name.
#include "page/look.h"

namespace benchleaf::page {
namespace {

constexpr Color kInk{0x17, 0x17, 0x1A};
constexpr Color kSecondInk{0x4C, 0x4A, 0x52};
constexpr Color kAccent{0x5B, 0x26, 0x50};
constexpr Color kWhite{0xFF, 0xFF, 0xFF};

Look text(double size, double leading) {
  Look look;
  look.size_pt = size;
  look.leading_pt = leading;
  look.color = kInk;
  return look;
}

Look condensed(double size, double leading) {
  Look look = text(size, leading);
  look.plain = Face::condensed;
  look.bold = Face::condensed_bold;
  look.italic = Face::condensed_italic;
  look.bold_italic = Face::condensed_bold;
  return look;
}

Look condensed_bold(double size, double leading) { return bold_of(condensed(size, leading)); }

}  // namespace

Look bold_of(Look look) {
  look.plain = look.bold;
  look.italic = look.bold_italic;
  return look;
}

Look in_color(Look look, Color color) {
  look.color = color;
  return look;
}

namespace look {

Look body() {
  Look look = text(10, 13.2);
  look.flush = Look::Flush::justified;
  look.hyphens = true;
  return look;
}
Look entry_body() { return text(10, 13.2); }
Look lead() { return text(10.5, 14); }
Look dense() { return condensed(9.6, 12.2); }
Look note() { return in_color(condensed(9, 11.2), kSecondInk); }
Look entry_key() {
  Look look = condensed_bold(27, 25);
  look.tracking_pt = -0.2;
  return look;
}
Look sheet_key() { return condensed_bold(34, 33); }
Look page_title() { return condensed_bold(25.5, 28); }
Look short_title() { return condensed_bold(19, 21); }
Look second_name() { return condensed_bold(12.5, 14); }
Look alias() { return in_color(condensed(9.6, 12), kSecondInk); }
Look section_head() { return condensed_bold(11.5, 14); }
Look sub_head() { return condensed_bold(10.2, 12.4); }
Look run_in() { return condensed_bold(9.6, 12); }
Look table_cell() { return condensed(9.6, 12); }
Look page_reference(double size_pt) { return in_color(condensed_bold(size_pt, size_pt * 1.3), print_color(model::Ink::accent)); }
Look table_head() { return in_color(condensed(9, 11), kSecondInk); }
Look step_number() { return condensed_bold(20, 20); }
Look step_proof() { return in_color(condensed(8, 10.6), kSecondInk); }
Look message_word() { return bold_of(text(13, 15)); }
Look message_text() { return text(10, 12.6); }
Look source_key() { return in_color(condensed(8, 10.6), kSecondInk); }
Look large_step() { return text(13.5, 17.8); }
Look large_step_number() { return condensed_bold(24, 24); }
Look step() { return text(11, 14.4); }
Look see() { return condensed(10.8, 13); }
Look strip_word() { return bold_of(text(11.5, 13)); }
Look strip_text() { return condensed(10.2, 12.4); }
Look small_head() { return condensed_bold(11, 13); }
Look running_head() { return condensed_bold(13, 13); }
Look running_chapter() { return condensed(9, 11); }
Look folio() { return bold_of(text(11, 11)); }
Look folio_line() { return in_color(condensed(8, 11), kSecondInk); }
Look tab_number() { return in_color(bold_of(text(10, 10)), kWhite); }
Look tab_name() { return in_color(condensed(7.5, 9), kWhite); }
Look legend() { return in_color(condensed(7.5, 10), kSecondInk); }
Look index_entry() { return condensed(9, 11); }
Look contents_chapter() { return condensed_bold(11.5, 15); }
Look contents_line() { return condensed(9.5, 12.7); }
Look cover_title() { return condensed_bold(44, 46); }
Look cover_line() { return condensed(14, 19); }

}  // namespace look

Color print_color(model::Ink ink) {
  switch (ink) {
    case model::Ink::none:
    case model::Ink::paper: return kWhite;
    case model::Ink::ink: return kInk;
    case model::Ink::second_ink: return kSecondInk;
    case model::Ink::accent: return kAccent;
    case model::Ink::light_fill: return {0xD3, 0xD0, 0xD6};
    case model::Ink::dark_fill: return {0x8B, 0x88, 0x91};
    case model::Ink::rule: return {0xCF, 0xCC, 0xD2};
    case model::Ink::safety_red: return {0xC8, 0x10, 0x2E};
    case model::Ink::safety_orange: return {0xF2, 0x8A, 0x00};
    case model::Ink::safety_yellow: return {0xFF, 0xD1, 0x00};
    case model::Ink::safety_blue: return {0x00, 0x57, 0xA8};
  }
  return kInk;
}

}  // namespace benchleaf::page
