// In: the command line. Out: the options of one command, or a text and an exit code. The only file that knows CLI11, so that
// its exceptions and its wording stop here.

#include "command/options.h"

#include <CLI/CLI.hpp>

#include <algorithm>

#include "compose/desk.h"
#include "model/paper_size.h"

namespace benchleaf::command {
namespace {

constexpr const char* kFooter =
    "benchleaf COMMAND --help says what one command takes; all take --content, --schema, --color and --quiet.";

/// Everything CLI11 writes into, before it becomes Options.
struct Raw {
  CommonOptions common;
  CheckOptions check;
  BindOptions bind;
  FindOptions find;
  ReckonOptions reckon;
  std::string color = "auto";
  std::string positional_content;
  std::vector<std::string> only;
  std::vector<std::string> papers;
  std::vector<std::string> inputs;
};

/// Accepts one of a few words and says in our words what was expected.
CLI::Validator one_of(std::vector<std::string> words) {
  const std::string list = compose::listed(words);
  return CLI::Validator(
      [words = std::move(words), list](std::string& given) {
        if (std::find(words.begin(), words.end(), given) != words.end()) return std::string();
        return "'" + given + "' is none of " + list;
      },
      "");
}

std::vector<std::string> paper_names() {
  std::vector<std::string> names;
  for (const model::PaperSize& paper : model::kPaperSizes) names.emplace_back(paper.name);
  return names;
}

void add_common(CLI::App& app, Raw& raw) {
  app.add_option("--content", raw.common.content, "folder of records (default: content)")->type_name("DIR");
  app.add_option("--schema", raw.common.schema, "folder of shapes and tables (default: found beside the content)")
      ->type_name("DIR");
  app.add_option("--color", raw.color, "auto, always or never")->type_name("WHEN")->check(one_of({"auto", "always", "never"}));
  app.add_flag("--quiet", raw.common.quiet, "no progress line");
}

CLI::App* add_check(CLI::App& app, Raw& raw) {
  CLI::App* check = app.add_subcommand("check", "read the content, derive, and say what is wrong");
  check->add_option("CONTENT", raw.positional_content, "folder of records");
  check->add_flag("--json", raw.check.json, "findings as one JSON object on stdout");
  check->add_flag("--strict", raw.check.strict, "warnings count as errors");
  check->add_option("--sarif", raw.check.sarif, "write the findings into a file as SARIF 2.1.0")->type_name("FILE");
  check->add_flag("--rules", raw.check.rules, "list the rules and end");
  check->add_option("--explain", raw.check.explain, "say what a rule is for, with a wrong and a right sample, and end")
      ->type_name("RULE");
  return check;
}

CLI::App* add_bind(CLI::App& app, Raw& raw) {
  CLI::App* bind = app.add_subcommand("bind", "check, then write the handbook");
  bind->add_option("CONTENT", raw.positional_content, "folder of records");
  bind->add_option("--to", raw.bind.to, "where the folder handbook goes (default: out)")->type_name("DIR");
  bind->add_option("--only", raw.only, "pdf, html, chart, facts: only these, parted by commas")
      ->type_name("LIST")
      ->delimiter(',')
      ->check(one_of({"pdf", "html", "chart", "facts"}));
  bind->add_option("--paper", raw.papers, compose::listed(paper_names()) + ": only these, parted by commas")
      ->type_name("LIST")
      ->delimiter(',')
      ->check(one_of(paper_names()));
  return bind;
}

CLI::App* add_find(CLI::App& app, Raw& raw) {
  CLI::App* find = app.add_subcommand("find", "look up a number, a size such as 7.9x5.4, a liquid, a symptom");
  find->add_option("WORDS", raw.find.words, "what to look up")->required();
  find->add_flag("--json", raw.find.json, "the answer as one JSON object");
  return find;
}

CLI::App* add_reckon(CLI::App& app, Raw& raw) {
  CLI::App* reckon = app.add_subcommand("reckon", "work out one thing; without a name, list what can be worked out");
  reckon->add_option("NAME", raw.reckon.name, "a calculator");
  reckon->add_option("KEY=VALUE", raw.inputs, "its inputs");
  reckon->add_flag("--json", raw.reckon.json, "the answer as one JSON object");
  return reckon;
}

bool holds(const std::vector<std::string>& list, const char* word) {
  for (const auto& entry : list) {
    if (entry == word) return true;
  }
  return false;
}

BindOptions bind_options(const Raw& raw) {
  BindOptions bind = raw.bind;
  if (!raw.only.empty()) {
    bind.pdf = holds(raw.only, "pdf");
    bind.html = holds(raw.only, "html");
    bind.charts = holds(raw.only, "chart");
    bind.facts = holds(raw.only, "facts");
  }
  bind.papers = raw.papers.empty() ? paper_names() : raw.papers;
  return bind;
}

EarlyExit wrong(std::string what) {
  for (char& c : what) {
    if (c == '\n') c = ' ';
  }
  return {kExitUsage, {}, "benchleaf: " + what + "\n"};
}

std::variant<ReckonOptions, EarlyExit> reckon_options(const Raw& raw) {
  ReckonOptions reckon = raw.reckon;
  for (const auto& input : raw.inputs) {
    const std::size_t equals = input.find('=');
    if (equals == std::string::npos || equals == 0) {
      return wrong("'" + input + "' is no input: write key=value");
    }
    const std::string key = input.substr(0, equals);
    for (const auto& [earlier, value] : reckon.inputs) {
      if (earlier == key) return wrong("input " + key + " is given twice");
    }
    reckon.inputs.emplace_back(key, input.substr(equals + 1));
  }
  return reckon;
}

/// A query is looked up in all its parts, so that its cost grows faster than its length.
bool is_too_long(const std::vector<std::string>& words) {
  constexpr std::ptrdiff_t kMostWords = 12;
  constexpr std::size_t kMostBytes = 200;
  std::size_t bytes = 0;
  std::ptrdiff_t count = 0;
  for (const std::string& word : words) {
    bytes += word.size();
    count += 1 + std::count(word.begin(), word.end(), ' ');
  }
  return bytes > kMostBytes || count > kMostWords;
}

std::variant<Options, EarlyExit> finish(const Raw& raw, const CLI::App& app) {
  Options options;
  options.common = raw.common;
  if (!raw.positional_content.empty()) options.common.content = raw.positional_content;
  if (raw.color == "always") options.common.color = ColorChoice::always;
  if (raw.color == "never") options.common.color = ColorChoice::never;

  const std::string command = app.get_subcommands().front()->get_name();
  if (command == "check") options.command = raw.check;
  if (command == "bind") options.command = bind_options(raw);
  if (command == "find") {
    if (is_too_long(raw.find.words)) return wrong("find looks up at most 12 words of 200 bytes together");
    options.command = raw.find;
  }
  if (command == "reckon") {
    auto reckon = reckon_options(raw);
    if (auto* exit = std::get_if<EarlyExit>(&reckon)) return *exit;
    options.command = std::get<ReckonOptions>(reckon);
  }
  return options;
}

std::string first_word(const CLI::App& app) {
  const auto words = app.remaining(true);
  return words.empty() ? std::string() : words.front();
}

/// One line in our words for a wrong call, where CLI11's own sentence is not plain.
EarlyExit parse_failure(const CLI::ParseError& error, const CLI::App& app) {
  if (error.get_name() == "CallForHelp") return {kExitGood, app.help(), {}};
  if (error.get_name() == "CallForVersion") return {kExitGood, std::string(error.what()) + "\n", {}};
  const auto commands = app.get_subcommands();
  const std::string word = first_word(app);
  if (commands.empty()) {
    if (!word.empty() && word.front() != '-') return wrong("there is no command '" + word + "': benchleaf --help lists them");
    if (word.empty()) return wrong("no command given: benchleaf --help lists them");
  }
  const std::string command = commands.empty() ? std::string() : commands.front()->get_name() + " ";
  if (!word.empty()) return wrong("'" + word + "' is not known: benchleaf " + command + "--help says what there is");
  const std::string what = error.what();
  if (error.get_name() == "ArgumentMismatch") return wrong(command + what.substr(0, what.find(':')) + " needs a value");
  if (error.get_name() == "RequiredError") return wrong(command + "needs words to look up, such as 393 or 7.9x5.4");
  return wrong(command + what);
}

}  // namespace

std::variant<Options, EarlyExit> parse_command_line(int argc, const char* const* argv) {
  Raw raw;
  CLI::App app("Benchleaf compiles a knowledge base into a bench handbook and answers from it.", "benchleaf");
  try {
    app.require_subcommand(1);
    app.fallthrough();
    app.footer(kFooter);
    app.get_formatter()->label("SUBCOMMAND", "COMMAND");
    app.get_formatter()->label("Subcommands", "Commands");
    app.get_formatter()->label("TEXT", "");
    app.set_version_flag("--version", std::string("benchleaf ") + BENCHLEAF_VERSION);
    add_common(app, raw);
    add_check(app, raw);
    add_bind(app, raw);
    add_find(app, raw);
    add_reckon(app, raw);
    app.parse(argc, argv);
    return finish(raw, app);
  } catch (const CLI::ParseError& error) {
    return parse_failure(error, app);
  } catch (const CLI::Error& error) {
    return wrong(error.what());
  }
}

}  // namespace benchleaf::command
