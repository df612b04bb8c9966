#pragma once

#include <string>
#include <string_view>

namespace benchleaf::html {

/// The name that a page of the site has in the single file: `cell_sr754w` for `cell/sr754w.html`. No slug has an underscore,
/// so no two pages meet.
std::string name_of_page(std::string_view path);

/// What an address on a page of the site is in the single file: `#cell_sr754w__size-diameter` for
/// `../cell/sr754w.html#size-diameter`.
std::string address_in_single(std::string_view address, std::string_view page_path);

/// The content of a page, made part of the single file: its names begin with the name of the page, its addresses lead within
/// the file, its headings stand `deeper` levels lower, at most at 6.
std::string rehomed(std::string_view content, std::string_view page_path, int deeper);

}  // namespace benchleaf::html
