// In: the real content. Out: 300 changes of it that a careful contributor may make, drawn with a fixed seed.

#include "prove/edits.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <regex>

#include "support/draw.h"

namespace benchleaf::test {

namespace {

constexpr std::size_t kNewCells = 40, kReordered = 70, kComments = 60, kProse = 60, kSources = 50, kNarrowed = 20;

using Lines = std::vector<std::string>;

Lines lines_of(const std::string& text) {
  Lines lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size() - 1) + 1;
    lines.push_back(text.substr(at, end - at));
    at = end;
  }
  return lines;
}

std::string joined(const Lines& lines) {
  std::string text;
  for (const std::string& line : lines) text += line;
  return text;
}

bool begins_key(const std::string& line) { return line.front() >= 'a' && line.front() <= 'z'; }

/// The lines before the first key, and every key with the lines that belong to it.
std::pair<std::string, std::vector<std::string>> blocks_of(const std::string& text) {
  std::pair<std::string, std::vector<std::string>> blocks;
  for (const std::string& line : lines_of(text)) {
    if (begins_key(line)) {
      blocks.second.push_back(line);
    } else {
      (blocks.second.empty() ? blocks.first : blocks.second.back()) += line;
    }
  }
  return blocks;
}

std::optional<std::string> reorder(const std::string& text, Draw& draw) {
  auto [head, blocks] = blocks_of(text);
  if (blocks.size() < 3) return std::nullopt;
  const std::vector<std::string> before = blocks;
  for (std::size_t i = blocks.size() - 1; i > 0; --i) std::swap(blocks.at(i), blocks.at(draw.below(i + 1)));
  if (blocks == before) return std::nullopt;
  return head + joined(blocks);
}

std::optional<std::string> comment(const std::string& text, Draw& draw) {
  static const std::array<std::string, 4> kRemarks = {"# measured again: the same\n", "\n# see the source, page 12\n", "#\n",
                                                      "# grüße: \"393\" & [1, 2]\n"};
  auto [head, blocks] = blocks_of(text);
  std::string& block = blocks.at(draw.below(blocks.size()));
  block = kRemarks.at(draw.below(kRemarks.size())) + block;
  return head + joined(blocks);
}

std::optional<std::string> reword(const std::string& text, Draw& draw) {
  static const std::regex kSentence("(note|meaning|harm|avoid|use|care|looks|purpose|recognise|found-in): [A-Z][^\"'#:]*[.]\n");
  static const std::array<std::string, 3> kMore = {" It was read again.", " This holds for most watches.",
                                                   " Take care, and time."};
  Lines lines = lines_of(text);
  for (std::string& line : lines) {
    if (!std::regex_match(line, kSentence) || line.size() > 200) continue;
    line.insert(line.size() - 1, kMore.at(draw.below(kMore.size())));
    const std::size_t place = line.find(" and ");
    if (place != std::string::npos) line.replace(place, 5, " as well as ");
    return joined(lines);
  }
  return std::nullopt;
}

std::optional<std::string> better_source(const std::string& text, Draw& draw) {
  static const std::array<std::string, 2> kWeak = {"{ trust: memory }", "{ trust: trade }"};
  static const std::string kBetter = "{ source: battery-handbook, where: \"page 12, table 3\", trust: handbook }";
  const std::string& weak = kWeak.at(draw.below(2));
  const std::size_t place = text.find(weak);
  if (place == std::string::npos) return std::nullopt;
  std::string changed = text;
  return changed.replace(place, weak.size(), kBetter);
}

/// `1.2 to 1.8 V` to `1.26 to 1.74 V`: a tenth off at each end.
std::optional<std::string> narrow(const std::string& text, Draw&) {
  // the ranges of a substance are those of the table, a watch's measures lie in those of its crystal
  for (const char* kind : {"/substance.schema.json", "/crystal.schema.json"}) {
    if (text.find(kind) != std::string::npos) return std::nullopt;
  }
  static const std::regex kRange(": ([0-9]+[.]?[0-9]*) to ([0-9]+[.]?[0-9]*) (V|µA|mm|%|s|min)");
  std::smatch found;
  if (!std::regex_search(text, found, kRange)) return std::nullopt;
  const double low = std::strtod(found[1].str().c_str(), nullptr), high = std::strtod(found[2].str().c_str(), nullptr);
  std::array<char, 64> ends{};
  std::snprintf(ends.data(), ends.size(), ": %.3f to %.3f ", low + 0.1 * (high - low), high - 0.1 * (high - low));
  return found.prefix().str() + ends.data() + found[3].str() + found.suffix().str();
}

/// Sizes that exist but are not in the handbook: designations of IEC 60086 as catalogue pages list them, from memory.
struct NewCell {
  const char* designation;
  const char* diameter;
  const char* height;
};
constexpr std::array<NewCell, 20> kCells = {
    {{"BR1216", "12.5", "1.6"}, {"BR1220", "12.5", "2.0"},  {"BR1616", "16", "1.6"},   {"BR1632", "16", "3.2"},
     {"BR2020", "20", "2.0"},   {"BR2330", "23", "3.0"},    {"BR2450", "24.5", "5.0"}, {"LR716", "7.9", "1.65"},
     {"LR712", "7.9", "1.25"},  {"LR527", "5.8", "2.7"},    {"LR616", "6.8", "1.65"},  {"LR916", "9.5", "1.65"},
     {"LR1136", "11.6", "3.6"}, {"LR1116", "11.6", "1.65"}, {"SR731W", "7.9", "3.1"},  {"SR527W", "5.8", "2.7"},
     {"SR712W", "7.9", "1.25"}, {"SR714W", "7.9", "1.45"},  {"SR521W", "5.8", "2.15"}, {"SR416W", "4.8", "1.65"}}};

Edit new_cell(std::size_t number) {
  const NewCell& cell = kCells.at(number % kCells.size());
  const bool full = number >= kCells.size();
  const char letter = cell.designation[0];
  const std::string system = letter == 'B' ? "lithium-carbon-monofluoride" : letter == 'L' ? "alkaline" : "silver-oxide";
  const std::string volts = letter == 'B' ? "3 V" : letter == 'L' ? "1.5 V" : "1.55 V";
  std::string id = cell.designation;
  std::transform(id.begin(), id.end(), id.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  std::string text = "# yaml-language-server: $schema=../../schema/shapes/cell.schema.json\nid: " + id +
                     "\ndesignation: " + cell.designation + "\nsystem: " + system + "\nsize: { diameter: " + cell.diameter +
                     " mm, height: " + cell.height + " mm }\nnominal: " + volts + "\n";
  if (full)
    text += "capacity: { value: not stated, load: not stated }\nstatus: current\nuses: Small watches.\nnote: Seldom met.\n";
  text += "basis:\n  size: { trust: memory }\n  nominal: { trust: trade }\n";
  if (full) text += "  capacity: { trust: memory }\n";
  return {"new cell", "cell/" + id + ".yaml", text};
}

/// Adds `count` edits of one kind, to records drawn by chance.
template <typename Change>
void add(const std::string& what, std::size_t count, Change change, const ContentText& content, Draw& draw,
         std::vector<Edit>& edits) {
  std::vector<const ContentText::value_type*> records;
  for (const auto& file : content) {
    const bool record = file.first.find('/') != std::string::npos && file.first.find(".yaml") != std::string::npos;
    if (record) records.push_back(&file);
  }
  for (std::size_t i = records.size() - 1; i > 0; --i) std::swap(records.at(i), records.at(draw.below(i + 1)));
  for (const auto* file : records) {
    if (count == 0) return;
    std::optional<std::string> text = change(file->second, draw);
    if (!text || *text == file->second) continue;
    edits.push_back({what, file->first, std::move(*text)});
    --count;
  }
}

}  // namespace

std::vector<Edit> legitimate_edits(const ContentText& content) {
  Draw draw;
  std::vector<Edit> edits;
  for (std::size_t i = 0; i < kNewCells; ++i) edits.push_back(new_cell(i));
  add("keys in another order", kReordered, reorder, content, draw, edits);
  add("a comment", kComments, comment, content, draw, edits);
  add("prose re-worded", kProse, reword, content, draw, edits);
  add("a better source", kSources, better_source, content, draw, edits);
  add("a range narrowed", kNarrowed, narrow, content, draw, edits);
  return edits;
}

}  // namespace benchleaf::test
