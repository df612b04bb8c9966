// Rules about the help that a caution gives, the titles of signs, and cautions that nobody asks for.

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/ascii.h"
#include "prove/published_checks.h"
#include "prove/shared.h"
#include "standards/table_view.h"

namespace benchleaf::prove {
namespace {

using report::Rule;

/// A sign number with the words in brackets behind it: `W021 (flammable material)`.
std::vector<std::pair<std::string, std::string>> titled_signs(const std::string& text) {
  constexpr std::size_t kNumber = 4;
  std::vector<std::pair<std::string, std::string>> found;
  for (std::size_t at = text.find(" ("); at != std::string::npos; at = text.find(" (", at + 1)) {
    if (at < kNumber) continue;
    const std::string number = text.substr(at - kNumber, kNumber);
    const bool letter = std::string_view("EFMPW").find(number[0]) != std::string_view::npos;
    const bool digits = number.find_first_not_of("0123456789", 1) == std::string::npos;
    const bool starts = at == kNumber || text[at - kNumber - 1] == ' ';
    const std::size_t end = text.find(')', at);
    if (letter && digits && starts && end != std::string::npos) found.emplace_back(number, text.substr(at + 2, end - at - 2));
  }
  return found;
}

/// Whether one of the beginnings of words in a list `a, b` stands in a text, after something that is no letter.
bool names_one_of(std::string_view text, std::string_view list) {
  while (!list.empty()) {
    const std::size_t comma = list.find(", ");
    const std::string_view word = list.substr(0, comma);
    for (std::size_t at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
      if (at == 0 || text[at - 1] < 'a' || text[at - 1] > 'z') return true;
    }
    list = comma == std::string_view::npos ? std::string_view() : list.substr(comma + 2);
  }
  return false;
}

}  // namespace

void check_first_aid(const Proof& proof) {
  for (const auto& [id, caution] : proof.base.cautions) {
    if (!caution.call || !caution.usable("call") || !caution.usable("first-aid") || !caution.first_aid.empty()) continue;
    proof.findings.add(Rule::caution_first_aid, caution.span_of("call"),
                       "a call for help, and not a word on what to do till it comes", "add first-aid:");
  }
}

void check_sign_titles(const Proof& proof) {
  for (const model::Record* record : proof.base.all()) {
    visit_scalars(*record, [&](const std::string& path, const model::Node& node) {
      for (const auto& [number, title] : titled_signs(node.text)) {
        const model::SafetySign* sign = proof.tables.safety_sign(number);
        if (sign != nullptr && plain_words(sign->title) == plain_words(title)) continue;
        proof.findings.add(Rule::sign_title, record->span_of(path),
                           "found " + number + " as " + title +
                               (sign == nullptr ? ", but no table has that number" : ", but it says " + sign->title),
                           "correct the number or the words");
      }
    });
  }
}

void check_sign_words(const Proof& proof) {
  for (const auto& [id, caution] : proof.base.cautions) {
    std::string text;
    for (const auto* words : {&caution.title, &caution.hazard, &caution.harm, &caution.avoid, &caution.first_aid})
      text += " " + *words;
    text = base::lower_ascii(text) + " ";
    const bool readable = caution.unusable.empty();
    for (std::size_t i = 0; i < caution.signs.size() && readable; ++i) {
      const auto* row = standards::row_of(proof.tables, "sign-words", caution.signs[i]);
      if (row == nullptr || names_one_of(text, standards::cell_text(*row, "words"))) continue;
      proof.findings
          .add(Rule::sign_words, caution.span_of("signs." + std::to_string(i)),
               "found the sign " + caution.signs[i] + ", but no word of the caution says so",
               "say it in words as well, or correct the number: one of " + standards::cell_text(*row, "words"))
          .notes.push_back({row->span, "table sign-words"});
    }
  }
}

void check_cautions_are_cited(const Proof& proof) {
  if (!is_whole_book(proof)) return;
  if (!proof.base.broken.empty()) return;
  std::set<std::string> cited;
  for (const model::Record* record : proof.base.all()) {
    if (!record->unusable.empty()) return;  // a broken field may be the one that asks
    for (const auto& reference : record->references) cited.insert(reference.target);
    if (record->kind == model::Kind::page) {
      for (const auto& part : proof.base.pages.at(record->id).parts) {
        const auto* request = std::get_if<model::DerivedRequest>(&part);
        const auto* asked = request == nullptr ? nullptr : request->body.find("record");
        if (asked != nullptr) cited.insert(proof.base.resolved(model::RecordRef(asked->text)));
      }
    }
  }
  for (const auto& [id, caution] : proof.base.cautions) {
    if (cited.count(caution.reference()) > 0) continue;
    proof.findings.add(Rule::coverage_caution, caution.span, "no record asks for the caution " + id,
                       "name it where its hazard can be met");
  }
}

}  // namespace benchleaf::prove
