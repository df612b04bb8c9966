#pragma once

#include <string>
#include <string_view>

#include "page/display.h"

namespace benchleaf::pdf {

/// Whether a text is a day as ISO 8601 writes it: `2026-11-01`.
bool is_iso_date(std::string_view text);

/// Entries of the information dictionary.
std::string info_entries(const page::Document& document);

/// The XMP packet: the same facts as the information dictionary, and which standards the file is built to.
std::string xmp_packet(const page::Document& document);

}  // namespace benchleaf::pdf
