// In: records and facts. Out: single facts, signs and names for the page.
#include "compose/desk.h"

#include "base/ascii.h"

namespace benchleaf::compose {

namespace {

bool is_upper(char c) { return c >= 'A' && c <= 'Z'; }
bool is_lower(char c) { return c >= 'a' && c <= 'z'; }

/// Titles of things lose their capital in running text; `PVC` and `L gasket` keep it.
std::string in_running_text(const std::string& title) {
  if (title.rfind("American ", 0) == 0) return title;  // of proper names, the one that a title begins with
  if (title.size() < 2 || !is_upper(title[0]) || !is_lower(title[1])) return title;
  return base::lower_ascii(title.substr(0, 1)) + title.substr(1);
}

bool is_common_noun(model::Kind kind) {
  switch (kind) {
    case model::Kind::material:
    case model::Kind::part:
    case model::Kind::tool:
    case model::Kind::substance:
    case model::Kind::residue:
    case model::Kind::abrasive:
    case model::Kind::crystal:
    case model::Kind::chemistry: return true;
    default: return false;
  }
}

}  // namespace

const model::Fact* Desk::fact(const model::Record& record, std::string_view path) const {
  return derived.facts.find(record.reference() + "#" + std::string(path));
}

Sign Desk::sign(const model::Record& record, std::string_view path) const {
  if (const model::Fact* found = fact(record, path)) return {found->trust, found->derived};
  return basis_sign(record, path);
}

Sign Desk::basis_sign(const model::Record& record, std::string_view path) {
  const model::Basis* basis = record.basis_for(path);
  return {basis == nullptr ? model::Trust::memory : basis->trust, false};
}

const model::Cell* Desk::cell(std::string_view reference) const { return records.find<model::Cell>(model::RecordRef(reference)); }

std::string Desk::name(std::string_view reference) const {
  const model::Record* record = records.find(reference);
  if (record == nullptr) return std::string(reference);
  if (record->kind == model::Kind::cell) {
    const auto& cell = static_cast<const model::Cell&>(*record);
    const std::string& key = cell_key(cell);
    return key == cell.designation ? key : key + " " + cell.designation;
  }
  return is_common_noun(record->kind) ? in_running_text(record->title) : record->title;
}

std::string plain_words(std::string_view id) {
  std::string words(id);
  for (char& c : words) {
    if (c == '-') c = ' ';
  }
  return words;
}

std::string listed(const std::vector<std::string>& words, std::string_view between) {
  std::string text;
  for (const std::string& word : words) {
    if (!text.empty()) text += between;
    text += word;
  }
  return text;
}

std::string display_words(std::optional<model::Display> display) {
  if (display == model::Display::lcd) return "liquid crystal display";
  if (display == model::Display::led) return "light-emitting display";
  return word_of(display);
}

std::string field_words(std::string_view path) {
  const std::string_view field = path.substr(0, path.find('.'));
  if (field == "cas") return "CAS number";
  if (field == "ph") return "pH";
  return plain_words(field);
}

std::string sentence_case(std::string_view text) {
  std::string words(text);
  if (!words.empty() && is_lower(words[0])) words[0] = static_cast<char>(words[0] - 'a' + 'A');
  return words;
}

const std::string& cell_key(const model::Cell& cell) {
  if (!cell.trade_number.empty()) return cell.trade_number;
  return cell.consumer_number.empty() ? cell.designation : cell.consumer_number;
}

bool is_lithium(const model::Cell& cell) { return cell.system.rfind("lithium", 0) == 0; }

}  // namespace benchleaf::compose
