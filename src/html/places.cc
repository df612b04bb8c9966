// In: the plan of the site. Out: the script that carries the places of records to the pages.
#include "html/places.h"

namespace benchleaf::html {

namespace {

/// A string literal of JavaScript: nothing in it ends the string, the line or a script element.
std::string literal(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    switch (c) {
      case '"': out += "\\\""; break;
      case '\\': out += "\\\\"; break;
      case '<': out += "\\x3C"; break;
      default: out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
  }
  return out + "\"";
}

/// A fact stands within the place of its record.
bool is_fact(const std::string& anchor) { return anchor.find('#') != std::string::npos; }

}  // namespace

std::string places_script(const Plan& plan) {
  std::string text = "globalThis.benchleafPlaces = {";
  const char* between = "\n";
  for (const auto& [anchor, place] : plan.places()) {
    if (is_fact(anchor)) continue;
    text += between + literal(anchor) + ": " + literal(place.path + (place.id ? "#" + place.id->text() : ""));
    between = ",\n";
  }
  return text + "\n};\n";
}

}  // namespace benchleaf::html
