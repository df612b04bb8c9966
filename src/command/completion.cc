// In: the description of the command line. Out: scripts by which shells complete it.

#include "command/completion.h"

#include <algorithm>
#include <vector>

#include "bench/calculator.h"
#include "command/command_line.h"
#include "compose/desk.h"

namespace benchleaf::command {
namespace {

const CommandInfo kNoCommand{};

std::string spaced(const std::vector<std::string>& words) { return compose::listed(words, " "); }

std::vector<std::string> option_names(const CommandInfo& command) {
  std::vector<std::string> names = {"--help"};
  for (const auto* options : {&command.options, &common_options()}) {
    for (const OptionInfo& option : *options) names.push_back(option.name);
  }
  if (command.name.empty()) names.emplace_back("--version");
  return names;
}

std::vector<std::string> command_names() {
  std::vector<std::string> names;
  for (const CommandInfo& command : commands()) names.push_back(command.name);
  return names;
}

// bash

std::string bash_values(Takes takes, const std::vector<std::string>& words, bool list) {
  const std::string known = spaced(known_values(takes, words));
  if (!known.empty()) return std::string(list ? "_benchleaf_list" : "_benchleaf_words") + " '" + known + "'";
  if (takes == Takes::folder) return "_benchleaf_names -d";
  if (takes == Takes::file) return "_benchleaf_names -f";
  return takes == Takes::inputs ? "_benchleaf_inputs \"${arguments[0]}\"" : ":";
}

std::string bash_case(const std::string& pattern, const std::string& action) {
  return "    " + pattern + ") " + action + " ;;\n";
}

/// What follows an option that takes a value.
std::string bash_option_cases(const CommandInfo& command) {
  std::string cases;
  for (const OptionInfo& option : command.name.empty() ? common_options() : command.options) {
    if (option.takes == Takes::nothing) continue;
    const std::string of = command.name.empty() ? "*" : command.name;
    cases += bash_case(of + ":" + option.name, bash_values(option.takes, option.words, option.list) + "; return");
  }
  return cases;
}

std::string bash_argument_cases(const CommandInfo& command) {
  std::string cases;
  for (std::size_t i = 0; i < command.arguments.size(); ++i) {
    const ArgumentInfo& argument = command.arguments[i];
    const std::string place = argument.many ? "*" : std::to_string(i);
    cases += bash_case(command.name + ":" + place, bash_values(argument.takes, {}, false));
  }
  return cases;
}

std::string valued_options() {
  std::vector<std::string> names;
  const auto add = [&names](const std::vector<OptionInfo>& options) {
    for (const OptionInfo& option : options) {
      const bool named = std::find(names.begin(), names.end(), option.name) != names.end();
      if (option.takes != Takes::nothing && !named) names.push_back(option.name);  // two commands may share one
    }
  };
  add(common_options());
  for (const CommandInfo& command : commands()) add(command.options);
  return compose::listed(names, "|");
}

std::string bash_inputs() {
  std::string cases;
  for (const auto& calculator : bench::calculators()) {
    std::vector<std::string> keys;
    for (const auto& input : calculator.inputs) keys.push_back(std::string(input.name) + "=");
    cases += bash_case(std::string(calculator.name), "_benchleaf_words '" + spaced(keys) + "'");
  }
  return cases;
}

constexpr const char* kBashHelpers = R"(# Completion of bash for benchleaf, made from the description of its command line.

_benchleaf_words() {
  mapfile -t COMPREPLY < <(compgen -W "$1" -- "$current")
}

# The last of several words parted by commas.
_benchleaf_list() {
  local before=''
  [[ $current != *,* ]] || before=${current%,*},
  mapfile -t COMPREPLY < <(compgen -P "$before" -W "$1" -- "${current##*,}")
  compopt -o nospace
}

_benchleaf_names() {
  compopt -o filenames
  mapfile -t COMPREPLY < <(compgen "$1" -- "$current")
}
)";

// zsh

/// Within single quotes, brackets and colons of _arguments.
std::string zsh_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\'') {
      out += "'\\''";
      continue;
    }
    if (c == '[' || c == ']' || c == ':' || c == '\\') out += '\\';
    out += c;
  }
  return out;
}

std::string zsh_values(Takes takes, const std::vector<std::string>& words, bool list) {
  const std::string known = spaced(known_values(takes, words));
  if (!known.empty()) return list ? "_values -s , value " + known : "(" + known + ")";
  if (takes == Takes::folder) return "_files -/";
  if (takes == Takes::file) return "_files";
  return takes == Takes::inputs ? "->inputs" : " ";
}

std::string zsh_option(const OptionInfo& option) {
  const std::string excludes = option.excludes.empty() ? std::string() : "(" + option.excludes + ")";
  if (option.takes == Takes::nothing) return "'" + excludes + option.name + "[" + zsh_text(option.does) + "]'";
  const std::string again = option.list && option.takes == Takes::folder ? "*" : "";
  return "'" + excludes + again + option.name + "=[" + zsh_text(option.does) + "]:" + zsh_text(option.value) + ":" +
         zsh_values(option.takes, option.words, option.list) + "'";
}

std::string zsh_argument(const ArgumentInfo& argument) {
  const std::string place = argument.many ? "*" : "";
  return "'" + place + ":" + (argument.required || argument.many ? "" : ":") + zsh_text(argument.does) + ":" +
         zsh_values(argument.takes, {}, false) + "'";
}

std::string zsh_command(const CommandInfo& command) {
  std::string text = "        " + command.name + ")\n          _arguments -C '--help[say what it takes]'";
  for (const auto* options : {&command.options, &common_options()}) {
    for (const OptionInfo& option : *options) text += " \\\n            " + zsh_option(option);
  }
  for (const ArgumentInfo& argument : command.arguments) text += " \\\n            " + zsh_argument(argument);
  return text + "\n          ;;\n";
}

std::string zsh_inputs() {
  std::string cases;
  for (const auto& calculator : bench::calculators()) {
    std::string values;
    for (const auto& input : calculator.inputs) {
      values += " '" + std::string(input.name) + ":" + zsh_text(std::string(input.what)) + "'";
    }
    cases += "      " + std::string(calculator.name) + ") inputs=(" + values + " ) ;;\n";
  }
  return cases;
}

}  // namespace

std::string bash_completion() {
  std::string text = kBashHelpers;
  text += "\n_benchleaf_inputs() {\n  compopt -o nospace\n  case $1 in\n" + bash_inputs() + "  esac\n}\n";
  text +=
      "\n_benchleaf() {\n"
      "  local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD - 1]} command='' skipped='' word\n"
      "  local -a arguments=()\n"
      "  COMPREPLY=()\n"
      "  for word in \"${COMP_WORDS[@]:1:COMP_CWORD-1}\"; do\n"
      "    if [[ $skipped ]]; then\n"
      "      skipped=''\n"
      "      continue\n"
      "    fi\n"
      "    case $word in\n"
      "      " +
      valued_options() +
      ") skipped=yes ;;\n"
      "      -*) ;;\n"
      "      *) if [[ $command ]]; then arguments+=(\"$word\"); else command=$word; fi ;;\n"
      "    esac\n"
      "  done\n"
      "  case $command:$previous in\n" +
      bash_option_cases(kNoCommand);
  for (const CommandInfo& command : commands()) text += bash_option_cases(command);
  text += "  esac\n  if [[ $current == -* ]]; then\n    case $command in\n";
  text += "  " + bash_case("''", "_benchleaf_words '" + spaced(option_names(kNoCommand)) + "'");
  for (const CommandInfo& command : commands()) {
    text += "  " + bash_case(command.name, "_benchleaf_words '" + spaced(option_names(command)) + "'");
  }
  text += "    esac\n    return\n  fi\n  case $command:${#arguments[@]} in\n";
  text += bash_case(":0", "_benchleaf_words '" + spaced(command_names()) + "'");
  for (const CommandInfo& command : commands()) text += bash_argument_cases(command);
  return text + "  esac\n}\n\ncomplete -F _benchleaf benchleaf\n";
}

std::string zsh_completion() {
  std::string text = "#compdef benchleaf\n# Completion of zsh for benchleaf, made from the description of its command line.\n\n";
  text += "_benchleaf() {\n  local context state state_descr line\n  local -a inputs\n  typeset -A opt_args\n";
  text += "  _arguments -C '--help[list the commands]' '--version[print the version]'";
  for (const OptionInfo& option : common_options()) text += " \\\n    " + zsh_option(option);
  text += " \\\n    '1:command:->command' '*::argument:->argument'\n  case $state in\n    command)\n      local -a commands=(";
  for (const CommandInfo& command : commands()) text += "\n        '" + command.name + ":" + zsh_text(command.does) + "'";
  text += ")\n      _describe command commands\n      ;;\n    argument)\n      case $words[1] in\n";
  for (const CommandInfo& command : commands()) text += zsh_command(command);
  text += "      esac\n      ;;\n  esac\n  if [[ $state == inputs ]]; then\n    case $line[1] in\n" + zsh_inputs();
  return text + "    esac\n    _describe -o input inputs -S =\n  fi\n}\n\n_benchleaf \"$@\"\n";
}

}  // namespace benchleaf::command
