// The command line: what it takes, and one clear line with exit 2 for what it does not. House rules.

#include "support/catch.h"

#include <string>
#include <vector>

#include "command/options.h"

using namespace benchleaf::command;

namespace {

std::variant<Options, EarlyExit> parse(std::vector<const char*> words) {
  words.insert(words.begin(), "benchleaf");
  return parse_command_line(static_cast<int>(words.size()), words.data());
}

Options good(std::vector<const char*> words) {
  auto parsed = parse(std::move(words));
  REQUIRE(std::holds_alternative<Options>(parsed));
  return std::get<Options>(parsed);
}

std::string wrong(std::vector<const char*> words) {
  const auto parsed = parse(std::move(words));
  REQUIRE(std::holds_alternative<EarlyExit>(parsed));
  const auto& exit = std::get<EarlyExit>(parsed);
  CHECK(exit.code == 2);
  CHECK(exit.out.empty());
  CHECK(exit.err.find('\n') == std::string::npos);
  CHECK_FALSE(exit.err.empty());
  return exit.err;
}

}  // namespace

TEST_CASE("a query that would cost more than it can find is refused in one line") {
  const std::string longest(200, 'a'), longer(201, 'a');
  CHECK(std::get<FindOptions>(good({"find", longest.c_str()}).command).words.size() == 1);
  CHECK(wrong({"find", longer.c_str()}).find("200 bytes") != std::string::npos);
  CHECK(std::get<FindOptions>(good({"find", "1 2 3 4 5 6", "7", "8", "9", "10", "11", "12"}).command).words.size() == 7);
  CHECK(wrong({"find", "1 2 3 4 5 6", "7", "8", "9", "10", "11", "12", "13"}).find("12 words") != std::string::npos);
}

TEST_CASE("commands with their options") {
  const Options check = good({"check", "other", "--strict", "--json"});
  CHECK(check.common.content == "other");
  CHECK(std::get<CheckOptions>(check.command).strict);
  CHECK(std::get<CheckOptions>(check.command).json);

  const Options find = good({"--content", "x", "find", "393", "silver", "--quiet"});
  CHECK(find.common.content == "x");
  CHECK(find.common.quiet);
  CHECK(std::get<FindOptions>(find.command).words == std::vector<std::string>{"393", "silver"});
  CHECK(std::get<FindOptions>(good({"find", "check"}).command).words == std::vector<std::string>{"check"});
}

TEST_CASE("bind: everything by default, or what is named") {
  const auto all = std::get<BindOptions>(good({"bind"}).command);
  CHECK((all.pdf && all.html && all.charts && all.facts));
  CHECK(all.papers.size() == 4);
  CHECK(all.to == "out");
  const auto some = std::get<BindOptions>(good({"bind", "--only", "pdf,facts", "--paper", "letter", "--to", "x"}).command);
  CHECK((some.pdf && !some.html && !some.charts && some.facts));
  CHECK(some.papers == std::vector<std::string>{"letter"});
  CHECK(some.to == "x");
}

TEST_CASE("reckon: a name and inputs, values may hold = and spaces") {
  const auto reckon = std::get<ReckonOptions>(good({"reckon", "cell-decode", "designation=SR 754 W", "a=b=c"}).command);
  CHECK(reckon.name == "cell-decode");
  REQUIRE(reckon.inputs.size() == 2);
  CHECK(reckon.inputs[0] == std::pair<std::string, std::string>("designation", "SR 754 W"));
  CHECK(reckon.inputs[1].second == "b=c");
  CHECK(std::get<ReckonOptions>(good({"reckon"}).command).name.empty());
  const auto bare = std::get<ReckonOptions>(good({"reckon", "cell-life", "393", "mean=2", "uA"}).command);
  REQUIRE(bare.inputs.size() == 2);
  CHECK(bare.inputs[0] == std::pair<std::string, std::string>("", "393"));
  CHECK(bare.inputs[1] == std::pair<std::string, std::string>("mean", "2 uA"));
}

TEST_CASE("a wrong call is one line and exit 2") {
  CHECK(wrong({}) == "no command given: benchleaf --help lists the commands");
  CHECK(wrong({"chek"}).find("no command 'chek': did you mean check?") != std::string::npos);
  CHECK(wrong({"frobnicate"}).find("benchleaf --help lists the commands") != std::string::npos);
  CHECK(wrong({"help", "fnd"}).find("did you mean find?") != std::string::npos);
  CHECK(wrong({"check", "--jsn"}).find("unknown option '--jsn': did you mean --json?") != std::string::npos);
  CHECK(wrong({"check", "a", "b"}).find("unexpected 'b'") != std::string::npos);
  CHECK(wrong({"find"}).find("needs words") != std::string::npos);
  CHECK(wrong({"bind", "--to"}).find("--to needs a value") != std::string::npos);
  CHECK(wrong({"bind", "--only", "pdf,jpg"}).find("'jpg' is not one of pdf, html, chart, facts") != std::string::npos);
  CHECK(wrong({"bind", "--paper", "a5"}).find("'a5' is not one of a4, letter, a3, tabloid") != std::string::npos);
  CHECK(wrong({"check", "--color", "purple"}).find("not one of auto, always, never") != std::string::npos);
  CHECK(wrong({"reckon", "cell-decode", "=SR754W"}).find("write key=value") != std::string::npos);
  CHECK(wrong({"reckon", "cell-decode", "a=1", "a=2"}).find("given twice") != std::string::npos);
}

TEST_CASE("help and version go to stdout with exit 0") {
  const std::vector<std::vector<const char*>> calls = {{"--help"}, {"check", "--help"}, {"--version"}, {"-V"},
                                                       {"help"},   {"help", "find"}};
  for (const auto& words : calls) {
    const auto parsed = parse(words);
    REQUIRE(std::holds_alternative<EarlyExit>(parsed));
    CHECK(std::get<EarlyExit>(parsed).code == 0);
    CHECK(std::get<EarlyExit>(parsed).err.empty());
    CHECK_FALSE(std::get<EarlyExit>(parsed).out.empty());
  }
}
