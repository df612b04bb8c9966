// In: what is searched and where it stands. Out: the script that carries it to the pages.
#include "html/search_data.h"

#include <map>

#include "base/number.h"

namespace benchleaf::html {

namespace {

/// Without the signs that part fields, names and lines.
std::string field(const std::string& text, std::string_view forbidden = "\t\n\r") {
  std::string clean;
  for (const char c : text) clean += forbidden.find(c) == std::string_view::npos ? c : ' ';
  return clean;
}

std::string names_text(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : "|") + field(name, "\t\n\r|");
  return text;
}

std::string keys_text(const std::vector<model::SearchKey>& keys) {
  std::map<int, std::string> groups;
  for (const model::SearchKey& one : keys) {
    std::string& group = groups[-one.weight];
    group += (group.empty() ? "" : "|") + field(one.key, "\t\n\r|;:");
  }
  std::string text;
  for (const auto& [weight, group] : groups) text += (text.empty() ? "" : ";") + std::to_string(-weight) + ":" + group;
  return text;
}

/// What a hit says under its title.
std::string summary_of(const model::SearchEntry& entry) {
  if (entry.provenance.empty()) return entry.summary;
  return entry.provenance + (entry.summary.empty() ? "" : ": " + entry.summary);
}

std::string entry_line(const model::SearchEntry& entry, const Place& place) {
  const std::string href = place.path + (place.id ? "#" + place.id->text() : "");
  const bool sized = entry.diameter_mm > 0;
  const std::string size =
      sized ? base::shortest_text(entry.diameter_mm) + "x" + base::shortest_text(entry.height_mm) : std::string();
  return field(entry.record) + "\t" + href + "\t" + field(entry.group) + "\t" + field(entry.title) + "\t" +
         field(summary_of(entry)) + "\t" + names_text(entry.names) + "\t" + size + "\t" + keys_text(entry.keys) + "\n";
}

/// A string literal of JavaScript: nothing in it ends the string, the line or a script element.
std::string literal(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    switch (c) {
      case '\n': out += "\\n"; break;
      case '\t': out += "\\t"; break;
      case '"': out += "\\\""; break;
      case '\\': out += "\\\\"; break;
      case '<': out += "\\x3C"; break;
      default: out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
  }
  return out + "\"";
}

}  // namespace

std::string search_data(const model::SearchList& list, const Plan& plan) {
  std::string text = base::shortest_text(list.swelling_mm) + "\n";
  for (const model::SearchEntry& entry : list.entries) {
    if (const auto place = plan.place(entry.anchor)) text += entry_line(entry, *place);
  }
  return "globalThis.benchleafIndex = " + literal(text) + ";\n";
}

}  // namespace benchleaf::html
