// In: the names and sizes of a content, a number of queries. Out: queries as hands type them, the same in every run: one name,
// two cells, a liquid on a material, two liquids, sizes, questions, names with one or two slips, and what means nothing.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "query/names.h"
#include "query/real_answers.h"
#include "support/draw.h"

namespace benchleaf::test {

class MadeQueries {
 public:
  explicit MadeQueries(const RealContent& content) {
    for (const model::Record* record : content.records.all()) {
      if (!query::is_looked_up(record->kind)) continue;
      for (const query::Name& name : query::names_of(*record, content.tables)) {
        all_.push_back(name.text);
        if (record->kind == model::Kind::cell) cells_.push_back(name.text);
        if (record->kind == model::Kind::chemistry || record->kind == model::Kind::substance) liquids_.push_back(name.text);
        if (record->kind == model::Kind::material || record->kind == model::Kind::part) materials_.push_back(name.text);
      }
    }
    if (const model::PublishedTable* words = content.tables.find("everyday-words")) {
      for (const auto& row : words->rows) all_.push_back(row.key);
    }
  }

  std::size_t names() const { return all_.size(); }

  std::vector<std::string> make(std::size_t count) {
    constexpr std::array kMakers = {&MadeQueries::name,        &MadeQueries::two_cells, &MadeQueries::on_material,
                                    &MadeQueries::two_liquids, &MadeQueries::size,      &MadeQueries::question,
                                    &MadeQueries::slips,       &MadeQueries::two_names, &MadeQueries::nonsense};
    std::vector<std::string> queries;
    while (queries.size() < count) queries.push_back((this->*kMakers.at(queries.size() % kMakers.size()))());
    return queries;
  }

 private:
  std::string name() { return draw_.one_of(all_); }

  std::string joined(std::vector<std::string>& one, std::vector<std::string>& other, const std::vector<std::string>& between) {
    const std::string first = draw_.one_of(one);
    return first + draw_.one_of(between) + draw_.one_of(other);
  }

  std::string two_cells() { return joined(cells_, cells_, {" vs ", " or ", " instead of ", " ", "/", " same as "}); }
  std::string on_material() { return joined(liquids_, materials_, {" on ", " ", " for cleaning ", ", ", " and "}); }
  std::string two_liquids() { return joined(liquids_, liquids_, {" and ", " with ", " + ", " ", " after "}); }
  std::string two_names() { return joined(all_, all_, {" and ", " ", " in "}); }

  /// Up to 40 mm in hundredths, or in thousandths of an inch.
  std::string length(bool inches) {
    const std::string figures = std::to_string(draw_.below(inches ? 1600 : 4000));
    const std::size_t places = inches ? 3 : 2;
    const std::string padded = std::string(figures.size() <= places ? places + 1 - figures.size() : 0, '0') + figures;
    const std::string point = draw_.below(4) == 0 ? "," : ".";
    return padded.substr(0, padded.size() - places) + point + padded.substr(padded.size() - places);
  }

  std::string size() {
    const bool inches = draw_.below(4) == 0;
    const std::string unit = inches ? "\"" : draw_.below(2) == 0 ? " mm" : "";
    switch (draw_.below(4)) {
      case 0: return length(inches) + unit + " wide";
      case 1: return length(inches) + unit + " high";
      case 2: return length(inches) + "\xC3\x97" + length(inches) + unit;  // U+00D7
      default: return length(inches) + unit + " x " + length(inches) + unit;
    }
  }

  std::string question() {
    const std::vector<std::string> heads = {"what is ",       "how do I ",   "can I use ",
                                            "what replaces ", "why is the ", "Where's my "};
    return draw_.one_of(heads) + name() + (draw_.below(2) == 0 ? "?" : " on a watch");
  }

  /// Bytes are left out or put in between, so that a letter of two bytes stays one.
  std::string slips() {
    std::string text = name();
    for (std::size_t left = 1 + draw_.below(2); left > 0; --left) {
      const std::size_t at = draw_.below(text.size());
      const bool plain = static_cast<unsigned char>(text[at]) < 0x80;
      if (plain && draw_.below(2) == 0 && text.size() > 1)
        text.erase(at, 1);
      else if (plain)
        text.insert(at, 1, static_cast<char>('a' + draw_.below(26)));
    }
    return text;
  }

  std::string nonsense() {
    const std::vector<std::string> letters = {"a",
                                              "e",
                                              "q",
                                              "x",
                                              "z",
                                              "0",
                                              "7",
                                              " ",
                                              " ",
                                              "-",
                                              ".",
                                              "\"",
                                              "<",
                                              "&",
                                              "\\",
                                              "\t",
                                              "\xC3\xB6",
                                              "\xCE\xA9",
                                              "\xF0\x9F\x94\x8B",
                                              "'"};  // ö, Ω, a battery
    std::string text;
    for (std::size_t left = draw_.below(24); left > 0; --left) text += draw_.one_of(letters);
    return text;
  }

  std::vector<std::string> all_, cells_, liquids_, materials_;
  Draw draw_;
};

}  // namespace benchleaf::test
