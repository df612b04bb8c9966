// In: keys, words and numbers in their order. Out: JSON text (RFC 8259). Ill-formed UTF-8 becomes U+FFFD.

#include "bench/json_text.h"

#include <cmath>

#include "base/number.h"
#include "base/utf8.h"

namespace benchleaf::bench {
namespace {

constexpr char32_t kFirstPrinting = 0x20;
constexpr int kHexDigit = 4;  // bits

std::string escaped(char32_t code) {
  if (code == U'"') return "\\\"";
  if (code == U'\\') return "\\\\";
  if (code == U'\n') return "\\n";
  if (code == U'\t') return "\\t";
  if (code >= kFirstPrinting) return base::to_utf8(code);
  constexpr std::string_view kDigits = "0123456789abcdef";
  return std::string("\\u00") + kDigits.at(code >> kHexDigit) + kDigits.at(code & 0xFU);
}

}  // namespace

void JsonText::start_entry() {
  if (after_key_) {
    after_key_ = false;
    return;
  }
  if (open_.empty()) return;
  json_ += first_ ? "\n" : ",\n";
  json_.append(2 * open_.size(), ' ');
  first_ = false;
}

JsonText& JsonText::open(char bracket) {
  start_entry();
  json_ += bracket;
  open_.push_back(bracket == '{' ? '}' : ']');
  first_ = true;
  return *this;
}

JsonText& JsonText::close() {
  const char bracket = open_.back();
  open_.pop_back();
  if (!first_) {
    json_ += '\n';
    json_.append(2 * open_.size(), ' ');
  }
  json_ += bracket;
  first_ = false;
  return *this;
}

JsonText& JsonText::raw(std::string_view value) {
  start_entry();
  json_ += value;
  return *this;
}

JsonText& JsonText::key(std::string_view name) {
  text(name);
  json_ += ": ";
  after_key_ = true;
  return *this;
}

JsonText& JsonText::text(std::string_view value) {
  std::string quoted = "\"";
  for (const char32_t code : base::code_points(value)) quoted += escaped(code);
  return raw(quoted + "\"");
}

JsonText& JsonText::number(const std::optional<double>& value) {
  return value && std::isfinite(*value) ? raw(base::shortest_text(*value)) : null();
}

JsonText& JsonText::flag(bool value) { return raw(value ? "true" : "false"); }

JsonText& JsonText::null() { return raw("null"); }

}  // namespace benchleaf::bench
