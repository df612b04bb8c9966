#pragma once

#include <cstddef>
#include <fstream>
#include <string>
#include <vector>

#include "bench/calculator.h"
#include "derive/bench_figures.h"
#include "standards/real_schema.h"

namespace benchleaf::test {

/// A line of outside_vectors.txt.
struct Vector {
  std::string request, output, expected, source;
  double tolerance = 0;
};

inline std::vector<std::string> split(const std::string& text, const std::string& sign) {
  std::vector<std::string> parts;
  std::size_t start = 0;
  for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign, start)) {
    parts.push_back(text.substr(start, at - start));
    start = at + sign.size();
  }
  parts.push_back(text.substr(start));
  return parts;
}

inline std::vector<Vector> vectors_of(const std::vector<std::string>& lines) {
  std::vector<Vector> vectors;
  for (const auto& line : lines) {
    if (line.empty() || line.front() == '#') continue;
    const auto parts = split(line, " | ");
    INFO(line);
    REQUIRE(parts.size() == 5);
    vectors.push_back({parts[0], parts[1], parts[2], parts[4], std::stod(parts[3])});
  }
  return vectors;
}

inline std::vector<Vector> read_vectors(const std::string& path) {
  std::ifstream file(path);
  REQUIRE(file);
  std::vector<std::string> lines;
  for (std::string line; std::getline(file, line);) lines.push_back(line);
  return vectors_of(lines);
}

/// The real tables and records, as a calculator sees them.
struct Workshop {
  Workshop() : base(schema.content()), figures(derive::bench_figures(base, schema.tables)) {}

  bench::Result ask(const std::string& name, const std::vector<std::string>& inputs, const bench::Names* names = nullptr) const {
    bench::Inputs given;
    for (const auto& input : inputs) {
      const std::size_t equals = input.find('=');
      given.insert_or_assign(input.substr(0, equals), bench::Given{input.substr(equals + 1), model::Trust::given, {}});
    }
    return bench::reckon(name, given, {schema.tables, figures, names});
  }

  /// `NAME; key=value; key=value`, with `names` as the terminal and the page resolve them.
  bench::Result ask(const std::string& request, const bench::Names* names = nullptr) const {
    auto parts = split(request, "; ");
    const std::string name = parts.front();
    parts.erase(parts.begin());
    return ask(name, parts, names);
  }

  RealSchema schema;
  model::KnowledgeBase base;
  model::FactBase figures;
};

inline const Workshop& workshop() {
  static const Workshop kWorkshop;
  return kWorkshop;
}

}  // namespace benchleaf::test
