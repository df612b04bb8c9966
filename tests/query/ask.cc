// Reads one query a line and writes its answer, a line each, in the JSON of `find --json`: what measure.py asks.
#include <algorithm>
#include <iostream>
#include <string>

#include "query/real_answers.h"

int main() {
  for (std::string query; std::getline(std::cin, query);) {
    std::string json = benchleaf::query::answer(benchleaf::test::real_answers(), query);
    std::replace(json.begin(), json.end(), '\n', ' ');
    std::cout << json << "\n";
  }
}
