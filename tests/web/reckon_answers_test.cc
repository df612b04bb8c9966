// The page's program against the terminal: for every vector, and for calls that are refused, the same text and the same JSON,
// letter for letter. The library answers for the terminal; the program itself is asked once for each calculator.

#include "support/catch.h"

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
#include <vector>

#include "bench/vectors.h"
#include "query/bench_names.h"
#include "web/page_script.h"

using namespace benchleaf;

namespace {

constexpr const char* kParting = "====\n";
constexpr std::size_t kLeastRequests = 80;

std::string output_of(const std::string& command) {
  FILE* pipe = popen(command.c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::string text;
  std::array<char, 4096> block{};
  for (std::size_t got = 0; (got = std::fread(block.data(), 1, block.size(), pipe)) > 0;) text.append(block.data(), got);
  pclose(pipe);
  return text;
}

/// Every request of the vectors once, the list, and calls that are refused or warned about.
std::vector<std::string> requests() {
  std::vector<std::string> list = {"",
                                   "cell-decode; designation=4LR44",
                                   "cell-decode; designation=SR2O32",
                                   "cell-decode; designaton=SR44",
                                   "cell-decode; designation=AG13",
                                   "gasket-fit; old-inside=31.85mm; series=round-0-8",
                                   "gasket-fit; seat=31.85",
                                   "crust-dose; residue=potassium-carbonate-crust; mass=50 to 100 mg; liquid=white-vinegar",
                                   "scratch-ladder; scratch=nail-catches; grades=800,P1200",
                                   "cell-life; cell=393; module=lcd-filament-lamp",
                                   "crystal-thickness; width=20 mm; length=26 mm; thickness=1.5 mm; material=acrylic",
                                   "rinse; carry-over=\"\\\t",
                                   "no-such"};
  std::set<std::string> seen(list.begin(), list.end());
  for (const auto& vector : test::read_vectors("tests/bench/outside_vectors.txt")) {
    if (seen.insert(vector.request).second) list.push_back(vector.request);
  }
  return list;
}

/// `NAME; key=value; key=value` as the page's form asks it.
test::Question question(const std::string& request, const char* form) {
  const auto parts = test::split(request, "; ");
  test::Question asked = {{"ask", "reckon"}, {"name", parts.front()}, {"inputs", test::Question::object()}, {"form", form}};
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const std::size_t equals = parts[i].find('=');
    asked["inputs"][parts[i].substr(0, equals)] = parts[i].substr(equals + 1);
  }
  return asked;
}

std::string page_data() {
  const auto& workshop = test::workshop();
  return test::page_data(workshop.schema.tables.published, workshop.base);
}

std::string written(const std::string& request, bench::Form form) {
  static const query::BenchNames kNames(test::workshop().base, test::workshop().schema.tables);
  return request.empty() ? bench::calculators_written(form) : bench::written(test::workshop().ask(request, &kNames), form);
}

/// The program, asked as a user asks it.
std::string terminal(const std::string& request, bool json) {
  std::string command = "'" BENCHLEAF_PROGRAM "' reckon --quiet";
  for (const auto& part : test::split(request, "; ")) command += " '" + part + "'";
  return output_of(command + (json ? " --json" : "") + " 2>&1");
}

}  // namespace

TEST_CASE("the page's program answers every vector with the text and the JSON of the terminal") {
  const auto asked = requests();
  CHECK(asked.size() >= kLeastRequests);
  std::vector<test::Question> questions;
  for (const auto& request : asked) {
    for (const char* form : {"text", "json"}) questions.push_back(question(request, form));
  }
  const auto answers = test::page_answers(std::string(BENCHLEAF_WORK) + "/reckoned", page_data(), questions);
  for (std::size_t i = 0; i < asked.size(); ++i) {
    INFO(asked[i]);
    CHECK(answers[2 * i] == written(asked[i], bench::Form::text));
    CHECK(answers[2 * i + 1] == written(asked[i], bench::Form::json));
  }
}

// The numbers are those of IEC 60086-3 and of the trade: common practice, no source.
TEST_CASE("a trade number in place of a designation is refused with the cells that it stands for") {
  const std::string thirteen = written("cell-decode; designation=AG13", bench::Form::text);
  CHECK(thirteen.find("AG13 stands for LR1154: give the designation") != std::string::npos);
  const std::string coin = written("cell-decode; designation=2032", bench::Form::text);
  CHECK(coin.find("2032 stands for BR2032 or CR2032: give the designation") != std::string::npos);
}

TEST_CASE("the program prints what the library answers, for each calculator in text or in JSON") {
  std::set<std::string> named;
  bool json = false;
  for (const auto& request : requests()) {
    const std::string name = test::split(request, "; ").front();
    if (name.empty() || test::workshop().ask(request).refusal || !named.insert(name).second) continue;
    INFO(request);
    CHECK(terminal(request, json) == written(request, json ? bench::Form::json : bench::Form::text));
    json = !json;
  }
  CHECK(named.size() == bench::calculators().size());
}

TEST_CASE("bind writes what the program looks into as a script that runs by itself") {
  const std::string folder = std::string(BENCHLEAF_WORK) + "/bound";
  std::filesystem::remove_all(folder);
  const std::string said = output_of("'" BENCHLEAF_PROGRAM "' bind --quiet --only html --to '" + folder + "' 2>&1 >/dev/null");
  INFO(said.substr(0, 400));
  const std::string script =
      "require('vm').runInThisContext(require('fs').readFileSync(process.argv[1], 'utf8'));"
      "process.stdout.write(benchleafData)";
  CHECK(output_of("'" BENCHLEAF_NODE "' -e \"" + script + "\" '" + folder + "/handbook/html/assets/data.js'") == page_data());
}
