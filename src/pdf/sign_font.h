#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "page/display.h"
#include "pdf/content.h"
#include "pdf/haru_file.h"

namespace benchleaf::pdf {

/// Name of the font of the trust signs in the resources of a page.
inline constexpr std::string_view kSignFontName = "S";

/// The code of a sign in its font, one byte, from 1.
std::uint32_t sign_code(const page::SignItem& sign);

/// Embeds these trust signs as a Type 3 font: drawn once, read as their words in brackets. 0 where there are none.
ObjectNumber add_sign_font(const std::vector<page::SignItem>& shown, const FontBook& book, HaruFile& file);

}  // namespace benchleaf::pdf
