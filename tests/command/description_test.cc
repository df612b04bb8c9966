// One description of the command line: parser, help, completions, manual and README say the same. Outside readers: bash, zsh,
// shellcheck, groff.

#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <variant>
#include <vector>

#include <nlohmann/json.hpp>

#include "command/command_line.h"
#include "command/completion.h"
#include "command/manual.h"
#include "command/options.h"
#include "command/shape_fields.h"
#include "model/record.h"

namespace fs = std::filesystem;
using namespace benchleaf::command;
using benchleaf::test::text_of;

namespace {

using Words = std::set<std::string>;

std::variant<Options, EarlyExit> parse(const std::vector<std::string>& words) {
  std::vector<const char*> arguments = {"benchleaf"};
  for (const auto& word : words) arguments.push_back(word.c_str());
  return parse_command_line(static_cast<int>(arguments.size()), arguments.data());
}

/// A call of the command with what it needs.
std::vector<std::string> call_of(const CommandInfo& command) {
  std::vector<std::string> words = {command.name};
  for (const auto& argument : command.arguments) {
    if (argument.required) words.push_back("word");
  }
  return words;
}

std::vector<OptionInfo> all_options(const CommandInfo& command) {
  std::vector<OptionInfo> options = command.options;
  options.insert(options.end(), common_options().begin(), common_options().end());
  return options;
}

Words option_names(const CommandInfo& command) {
  Words names = {"--help"};
  for (const auto& option : all_options(command)) names.insert(option.name);
  return names;
}

Words matches(const std::string& text, const char* pattern) {
  Words found;
  const std::regex wanted(pattern);
  for (auto at = std::sregex_iterator(text.begin(), text.end(), wanted); at != std::sregex_iterator(); ++at)
    found.insert(at->str());
  return found;
}

Words lines_of(const std::string& text) {
  Words lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) {
    if (!line.empty()) lines.insert(line);
  }
  return lines;
}

/// The scripts and pages, written as the build writes them.
class Described {
 public:
  Described() {
    std::vector<RecordShape> shapes;
    for (const auto kind : benchleaf::model::all_kinds()) {
      shapes.push_back(
          read_record_shape(text_of("schema/shapes/" + std::string(benchleaf::model::kind_name(kind)) + ".schema.json")).value());
    }
    write("benchleaf.bash", bash_completion());
    write("_benchleaf", zsh_completion());
    write("benchleaf.1", program_manual({"1.2.3", "2026-11-01"}));
    write("benchleaf-record.5", record_manual({"1.2.3", "2026-11-01"}, shapes));
  }

  /// What a program of others says of them; exit code first, if it is not 0.
  std::string said(const std::string& command) const {
    const int status = std::system(("cd '" + folder_.path().string() + "' && " + command + " >said 2>&1").c_str());
    return (status == 0 ? "" : "exit " + std::to_string(status) + "\n") + text_of(folder_.path() / "said");
  }

  /// What bash offers after these words, the last to be completed.
  Words offered(const std::vector<std::string>& words) const {
    std::string list;
    for (const auto& word : words) list += " '" + word + "'";
    return lines_of(said("bash -c \"source ./benchleaf.bash; compopt() { :; }; COMP_WORDS=(benchleaf" + list + "); COMP_CWORD=" +
                         std::to_string(words.size()) + "; _benchleaf; printf '%s\\\\n' \\\"\\${COMPREPLY[@]}\\\"\""));
  }

 private:
  void write(const char* name, const std::string& text) const { std::ofstream(folder_.path() / name) << text; }
  benchleaf::test::TemporaryFolder folder_{"described"};
};

}  // namespace

TEST_CASE("the parser takes every option of the description, and no other") {
  REQUIRE(commands().size() >= 6);
  for (const CommandInfo& command : commands()) {
    for (const OptionInfo& option : all_options(command)) {
      INFO(command.name << " " << option.name);
      auto words = call_of(command);
      words.push_back(option.name);
      if (option.takes != Takes::nothing) words.push_back(option.words.empty() ? "value" : option.words.front());
      CHECK(std::holds_alternative<Options>(parse(words)));
      if (option.takes == Takes::nothing) continue;
      words.pop_back();
      CHECK(std::holds_alternative<EarlyExit>(parse(words)));
    }
    auto unknown = call_of(command);
    unknown.emplace_back("--no-such-option");
    CHECK(std::get<EarlyExit>(parse(unknown)).code == 2);
  }
}

TEST_CASE("the help of a command names its options, its words and its exit codes, and no option besides") {
  for (const CommandInfo& command : commands()) {
    const auto help = parse({command.name, "--help"});
    const std::string text = std::get<EarlyExit>(help).out;
    INFO(text);
    Words options = matches(text, "--[a-z]+(-[a-z]+)*");
    Words expected = option_names(command);
    for (const auto& option : common_options()) options.insert(option.name);  // the program's own help lists them
    CHECK(options == expected);
    for (const auto& argument : command.arguments) CHECK(text.find(argument.name) != std::string::npos);
    CHECK(text.find(exit_words(command)) != std::string::npos);
  }
}

TEST_CASE("README lists the commands as the description has them") {
  std::string expected = "| command | does |\n|---|---|\n";
  for (const CommandInfo& command : commands()) expected += "| `" + synopsis(command) + "` | " + command.does + " |\n";
  CHECK(text_of("README.md").find(expected + "\n") != std::string::npos);
}

TEST_CASE("bash offers commands, options, words, calculators and their inputs") {
  const Described described;
  Words names;
  for (const CommandInfo& command : commands()) names.insert(command.name);
  CHECK(described.offered({""}) == names);
  for (const CommandInfo& command : commands()) {
    INFO(command.name);
    CHECK(described.offered({command.name, "--"}) == option_names(command));
    CHECK(described.offered({"--quiet", "--content", "check", command.name, "--"}) == option_names(command));
  }
  CHECK(described.offered({"bind", "--only", "p"}) == Words{"pdf"});
  CHECK(described.offered({"bind", "--only", "pdf,f"}) == Words{"pdf,facts"});
  CHECK(described.offered({"check", "--explain", "cell.v"}) == Words{"cell.voltage"});
  CHECK(described.offered({"reckon", "crust"}) == Words{"crust-dose"});
  CHECK(described.offered({"reckon", "crust-dose", "m"}) == Words{"mass="});
  CHECK(described.offered({"draft", "cha"}) == Words{"chart"});
  CHECK(described.offered({"find", "che"}).empty());
}

TEST_CASE("the scripts are scripts: shellcheck on bash, zsh on its own") {
  const Described described;
  CHECK(described.said("shellcheck --shell=bash benchleaf.bash").empty());
  CHECK(described.said("zsh -n _benchleaf").empty());
  for (const CommandInfo& command : commands()) {
    const std::string text = zsh_completion();
    INFO(command.name);
    CHECK(text.find("'" + command.name + ":") != std::string::npos);
    for (const auto& option : command.options) CHECK(text.find(option.name) != std::string::npos);
  }
}

TEST_CASE("the manual: groff sets it without a warning, and it names every command, option, exit code, kind and field") {
  const Described described;
  for (const char* page : {"benchleaf.1", "benchleaf-record.5"}) {
    INFO(page);
    CHECK(described.said("groff -man -ww -z -Kutf8 -Tutf8 " + std::string(page)).empty());
  }
  const auto words_of = [&described](const std::string& page) {
    const std::string text = described.said("groff -man -Kutf8 -Tutf8 -P-c -rLL=4000n " + page);
    return std::regex_replace(text, std::regex(".\b"), "");
  };
  const std::string program = words_of("benchleaf.1");
  Words named = {"--version"};
  for (const CommandInfo& command : commands()) {
    for (const auto& name : option_names(command)) named.insert(name);
    CHECK(program.find("benchleaf " + command.name) != std::string::npos);
    CHECK(program.find(command.does.substr(1)) != std::string::npos);  // its first letter is a capital here
    CHECK(program.find(exit_words(command)) != std::string::npos);
  }
  CHECK(matches(program, "--[a-z]+(-[a-z]+)*") == named);
  const std::string record = words_of("benchleaf-record.5");
  for (const auto kind : benchleaf::model::all_kinds()) {
    const std::string name(benchleaf::model::kind_name(kind));
    const auto shape = nlohmann::ordered_json::parse(text_of("schema/shapes/" + name + ".schema.json"));
    INFO(name);
    CHECK(record.find("\n   " + name + "\n") != std::string::npos);
    CHECK(record.find(shape.at("description").get<std::string>()) != std::string::npos);
    for (const auto& [field, schema] : shape.at("properties").items()) {
      INFO(field);
      CHECK(record.find(schema.at("description").get<std::string>()) != std::string::npos);
    }
  }
}
