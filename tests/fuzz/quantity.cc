// In: any text. Out: nothing; aborts where the reader of quantities breaks its word.
#include "base/quantity.h"
#include "base/utf8.h"
#include "fuzz/property.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using benchleaf::fuzz::must;
  namespace base = benchleaf::base;
  const std::string_view text = benchleaf::fuzz::text_of(data, size);
  const auto parsed = base::parse_quantity(text);
  if (const auto* error = std::get_if<base::QuantityError>(&parsed)) {
    must(!error->message.empty(), "a refusal says something");
    must(error->offset >= 0 && error->length >= 0, "a refusal has a place");
    return 0;
  }
  const auto& quantity = std::get<base::Quantity>(parsed);
  must(!base::first_invalid_utf8(base::printed(quantity)), "what is printed is UTF-8");
  const auto again = base::parse_quantity(base::terminal(quantity));
  must(std::holds_alternative<base::Quantity>(again), "what the terminal shows can be typed again");
  must(base::printed(std::get<base::Quantity>(again)) == base::printed(quantity), "and is the same quantity");
  return 0;
}
