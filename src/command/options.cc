// In: the command line, and its description. Out: the options of one command, or a text and an exit code. The only file that
// knows CLI11, so that its exceptions and its wording stop here.

#include "command/options.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <map>
#include <string_view>

#include "base/id.h"
#include "command/command_line.h"
#include "compose/desk.h"

namespace benchleaf::command {
namespace {

constexpr const char* kFooter = "Run 'benchleaf COMMAND --help' or 'benchleaf help COMMAND' for details.";

/// What CLI11 writes into, by the names of the description: the words of options and arguments, and whether a flag was given.
class Given {
 public:
  std::vector<std::string>& words(const std::string& command, const std::string& name) { return words_[command + " " + name]; }
  std::string& word(const std::string& command, const std::string& name) { return word_[command + " " + name]; }
  bool& flag(const std::string& command, const std::string& name) { return flags_[command + " " + name]; }

  bool has(const std::string& command, const char* name) const {
    const auto found = flags_.find(command + " " + name);
    return found != flags_.end() && found->second;
  }
  std::vector<std::string> all(const std::string& command, const char* name) const {
    const auto found = words_.find(command + " " + name);
    return found == words_.end() ? std::vector<std::string>() : found->second;
  }
  std::string one(const std::string& command, const char* name, const std::string& otherwise = {}) const {
    const auto found = word_.find(command + " " + name);
    return found == word_.end() || found->second.empty() ? otherwise : found->second;
  }

 private:
  std::map<std::string, std::vector<std::string>> words_;
  std::map<std::string, std::string> word_;
  std::map<std::string, bool> flags_;
};

/// Accepts one of a few words and says in our words what was expected.
CLI::Validator one_of(std::vector<std::string> words) {
  const std::string list = compose::listed(words);
  return CLI::Validator(
      [words = std::move(words), list](std::string& given) {
        if (std::find(words.begin(), words.end(), given) != words.end()) return std::string();
        return "'" + given + "' is not one of " + list;
      },
      "");
}

CLI::Option* add_option(CLI::App& app, const std::string& command, const OptionInfo& info, Given& given) {
  if (info.takes == Takes::nothing) return app.add_flag(info.name, given.flag(command, info.name), info.does);
  CLI::Option* option = info.list ? app.add_option(info.name, given.words(command, info.name), info.does)
                                  : app.add_option(info.name, given.word(command, info.name), info.does);
  if (info.list && info.takes == Takes::words) option->delimiter(',');            // a file may have a comma in its name
  if (info.list && info.takes == Takes::folder) option->allow_extra_args(false);  // what follows are other words
  option->type_name(info.value);
  return info.words.empty() ? option : option->check(one_of(info.words));
}

void add_command(CLI::App& app, const CommandInfo& info, Given& given) {
  CLI::App* command = app.add_subcommand(info.name, info.does);
  command->footer(exit_words(info));
  for (const ArgumentInfo& argument : info.arguments) {
    CLI::Option* option = argument.many ? command->add_option(argument.name, given.words(info.name, argument.name), argument.does)
                                        : command->add_option(argument.name, given.word(info.name, argument.name), argument.does);
    option->required(argument.required);
  }
  for (const OptionInfo& option : info.options) {
    CLI::Option* added = add_option(*command, info.name, option, given);
    if (!option.excludes.empty()) added->excludes(option.excludes);
  }
}

EarlyExit wrong(std::string what) {
  for (char& c : what) {
    if (c == '\n') c = ' ';
  }
  return {kExitUsage, {}, std::move(what)};
}

std::string did_you_mean(const std::string& word, const std::vector<std::string>& known, const std::string& otherwise) {
  const std::string nearest = base::nearest_word(word, known);
  return nearest.empty() ? otherwise : "did you mean " + nearest + "?";
}

std::vector<std::string> command_names() {
  std::vector<std::string> names = {"help"};
  for (const CommandInfo& command : commands()) names.push_back(command.name);
  return names;
}

/// The options of one command, or those that stand before any.
std::vector<std::string> option_names(const std::string& command) {
  std::vector<std::string> names = {"--help", "--version"};
  for (const OptionInfo& option : common_options()) names.push_back(option.name);
  for (const CommandInfo& info : commands()) {
    if (info.name != command) continue;
    for (const OptionInfo& option : info.options) names.push_back(option.name);
  }
  return names;
}

using Parsed = std::variant<Options, EarlyExit>;

CheckOptions check_options(const Given& given) {
  return {given.has("check", "--json"),    given.has("check", "--strict"), given.has("check", "--rules"),
          given.one("check", "--explain"), given.one("check", "--sarif"),  given.one("check", "--changed-since")};
}

BindOptions bind_options(const Given& given) {
  BindOptions bind;
  bind.to = given.one("bind", "--to", bind.to);
  const auto only = given.all("bind", "--only");
  const auto wants = [&only](const char* word) {
    return only.empty() || std::find(only.begin(), only.end(), word) != only.end();
  };
  bind.pdf = wants("pdf");
  bind.html = wants("html");
  bind.charts = wants("chart");
  bind.facts = wants("facts");
  bind.marks = given.has("bind", "--marks");
  bind.papers = given.all("bind", "--paper");
  if (!bind.papers.empty()) return bind;
  for (const CommandInfo& command : commands()) {
    for (const OptionInfo& option : command.options) {
      if (command.name == "bind" && option.name == "--paper") bind.papers = option.words;
    }
  }
  return bind;
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

std::variant<ReckonOptions, EarlyExit> reckon_options(const Given& given) {
  ReckonOptions reckon;
  reckon.name = given.one("reckon", "NAME");
  reckon.json = given.has("reckon", "--json");
  for (const auto& input : given.all("reckon", "KEY=VALUE")) {
    const std::size_t equals = input.find('=');
    if (equals == 0) return wrong("'" + input + "' is no input: write key=value");
    // `cell-swap 394`: a word without a key is the first input. `mean=2 µA`: behind a key it goes on with its value.
    if (equals == std::string::npos) {
      if (reckon.inputs.empty()) {
        reckon.inputs.emplace_back(std::string(), input);
      } else {
        reckon.inputs.back().second += " " + input;
      }
      continue;
    }
    const std::string key = input.substr(0, equals);
    for (const auto& [earlier, value] : reckon.inputs) {
      if (earlier == key) return wrong("input " + key + " is given twice");
    }
    reckon.inputs.emplace_back(key, input.substr(equals + 1));
  }
  return reckon;
}

LabelOptions label_options(const Given& given) {
  LabelOptions label;
  const auto one = [&given](const char* name, const std::string& otherwise = {}) { return given.one("label", name, otherwise); };
  label.things = given.all("label", "WHAT");
  label.stock = one("--stock");
  label.watches = given.all("label", "--watch");
  label.mixture = one("--mixture");
  label.name = one("--name");
  for (const char* input : {"ph", "flash", "boiling"}) {
    const std::string value = one((std::string("--") + input).c_str());
    if (!value.empty()) label.measured.emplace_back(input, value);
  }
  label.date = one("--date");
  label.grid = one("--grid");
  label.paper = one("--paper");
  label.label = one("--label");
  label.pitch = one("--pitch");
  label.corner = one("--corner");
  label.columns = one("--columns");
  label.rows = one("--rows");
  label.start = one("--start", label.start);
  label.copies = one("--copies", label.copies);
  label.outlines = given.has("label", "--outlines");
  label.to = one("--to", label.to);
  return label;
}

CommonOptions common_of(const Given& given, const std::string& command) {
  CommonOptions common;
  common.content = given.one(command, "CONTENT", given.one({}, "--content"));
  common.schema = given.one({}, "--schema");
  common.overlays = given.all(command, "--overlay");
  common.quiet = given.has({}, "--quiet");
  common.notes = given.has({}, "--notes");
  const std::string color = given.one({}, "--color");
  if (color == "always") common.color = ColorChoice::always;
  if (color == "never") common.color = ColorChoice::never;
  return common;
}

Parsed finish(const Given& given, const std::string& command) {
  Options options;
  options.common = common_of(given, command);
  if (command == "check") options.command = check_options(given);
  if (command == "bind") options.command = bind_options(given);
  if (command == "find") {
    FindOptions find{given.all("find", "WORDS"), given.has("find", "--json")};
    if (is_too_long(find.words)) return wrong("find looks up at most 12 words of 200 bytes together");
    options.command = std::move(find);
  }
  if (command == "reckon") {
    auto reckon = reckon_options(given);
    if (auto* exit = std::get_if<EarlyExit>(&reckon)) return *exit;
    options.command = std::get<ReckonOptions>(reckon);
  }
  if (command == "ticket") {
    TicketOptions ticket;
    ticket.watch = given.one("ticket", "WATCH");
    ticket.to = given.one("ticket", "--to", ticket.to);
    ticket.stock = given.one("ticket", "--stock");
    ticket.order = given.all("ticket", "--order");
    ticket.json = given.has("ticket", "--json");
    ticket.sheet = given.one("ticket", "--sheet", ticket.sheet);
    options.command = std::move(ticket);
  }
  if (command == "label") options.command = label_options(given);
  if (command == "draft") {
    options.command = DraftOptions{given.one("draft", "KIND"), given.one("draft", "ID"), given.has("draft", "--stdout")};
  }
  if (command == "changes") {
    options.command = ChangesOptions{given.one("changes", "OLD"), given.one("changes", "NEW"), given.has("changes", "--markdown"),
                                     given.has("changes", "--json"), given.has("changes", "--working")};
  }
  return options;
}

std::string first_word(const CLI::App& app) {
  const auto words = app.remaining(true);
  return words.empty() ? std::string() : words.front();
}

std::string what_lacks(const std::string& command) {
  for (const CommandInfo& info : commands()) {
    if (info.name == command) return info.lacks;
  }
  return {};
}

/// One line in our words for a wrong call, where CLI11's own sentence is not plain.
EarlyExit parse_failure(const CLI::ParseError& error, const CLI::App& app) {
  if (error.get_name() == "CallForHelp") return {kExitGood, app.help(), {}};
  if (error.get_name() == "CallForVersion") return {kExitGood, std::string(error.what()) + "\n", {}};
  const auto given = app.get_subcommands();
  const std::string word = first_word(app);
  if (given.empty()) {
    if (!word.empty() && word.front() != '-')
      return wrong("no command '" + word + "': " + did_you_mean(word, command_names(), "benchleaf --help lists the commands"));
    if (word.empty()) return wrong("no command given: benchleaf --help lists the commands");
  }
  const std::string name = given.empty() ? std::string() : given.front()->get_name();
  const std::string command = name.empty() ? name : name + " ";
  if (!word.empty()) {
    const std::string all = "benchleaf " + command + "--help lists the options";
    if (word.front() != '-') return wrong("unexpected '" + word + "': " + all);
    return wrong("unknown option '" + word + "': " + did_you_mean(word.substr(0, word.find('=')), option_names(name), all));
  }
  const std::string what = error.what();
  if (error.get_name() == "ArgumentMismatch") return wrong(command + what.substr(0, what.find(':')) + " needs a value");
  if (error.get_name() == "RequiredError") return wrong(command + "needs " + what_lacks(name));
  return wrong(command + what);
}

/// `benchleaf help find`.
EarlyExit help_on(const CLI::App& app, const std::string& command) {
  if (command.empty()) return {kExitGood, app.help(), {}};
  for (const CommandInfo& info : commands()) {
    if (info.name == command) return {kExitGood, app.get_subcommand(command)->help("benchleaf"), {}};
  }
  return wrong("no command '" + command + "': " + did_you_mean(command, command_names(), "benchleaf --help lists the commands"));
}

}  // namespace

std::variant<Options, EarlyExit> parse_command_line(int argc, const char* const* argv) {
  Given given;
  CLI::App app(std::string(program_does()), "benchleaf");
  try {
    app.require_subcommand(1);
    app.fallthrough();
    app.footer(kFooter);
    app.get_formatter()->label("SUBCOMMAND", "COMMAND");
    app.get_formatter()->label("Subcommands", "Commands");
    app.get_formatter()->label("TEXT", "");
    app.set_version_flag("-V,--version", std::string("benchleaf ") + BENCHLEAF_VERSION);
    for (const OptionInfo& option : common_options()) add_option(app, {}, option, given);
    for (const CommandInfo& command : commands()) add_command(app, command, given);
    if (argc >= 2 && std::string_view(argv[1]) == "help") return help_on(app, argc > 2 ? argv[2] : "");
    app.parse(argc, argv);
    return finish(given, app.get_subcommands().front()->get_name());
  } catch (const CLI::ParseError& error) {
    return parse_failure(error, app);
  } catch (const CLI::Error& error) {
    return wrong(error.what());
  }
}

}  // namespace benchleaf::command
