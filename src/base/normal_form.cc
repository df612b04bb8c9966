// In: UTF-8. Out: the same in Normalisation Form C, or folded for search. Rests on utf8proc, which the browser's build
// does not have, so these three stand apart from utf8.cc.
#include <cstdlib>
#include <memory>

#include <utf8proc.h>

#include "base/utf8.h"

namespace benchleaf::base {

namespace {

struct Free {
  void operator()(utf8proc_uint8_t* bytes) const { std::free(bytes); }
};

std::string mapped(std::string_view text, int options) {
  utf8proc_uint8_t* bytes = nullptr;
  const auto* from = reinterpret_cast<const utf8proc_uint8_t*>(text.data());
  const utf8proc_ssize_t size =
      utf8proc_map(from, static_cast<utf8proc_ssize_t>(text.size()), &bytes, static_cast<utf8proc_option_t>(options));
  const std::unique_ptr<utf8proc_uint8_t, Free> owner(bytes);
  if (size < 0) return std::string(text);
  return {reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size)};
}

/// Below U+0300 nothing composes and nothing is reordered, so most lines need no table.
bool is_plain(std::string_view text) {
  for (char c : text) {
    if (static_cast<unsigned char>(c) >= 0xCC) return false;
  }
  return true;
}

}  // namespace

bool is_nfc(std::string_view text) {
  if (first_invalid_utf8(text)) return false;
  return is_plain(text) || to_nfc(text) == text;
}

std::string to_nfc(std::string_view text) { return mapped(text, UTF8PROC_STABLE | UTF8PROC_COMPOSE); }

std::string fold(std::string_view text) {
  return mapped(text,
                UTF8PROC_STABLE | UTF8PROC_COMPOSE | UTF8PROC_COMPAT | UTF8PROC_CASEFOLD | UTF8PROC_STRIPMARK | UTF8PROC_IGNORE);
}

}  // namespace benchleaf::base
