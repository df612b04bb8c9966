#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::command {

/// What stands in a place of the command line, for the shells that complete it.
enum class Takes { nothing, text, folder, file, words, rule, calculator, inputs, kind };

/// An option; a flag takes nothing.
struct OptionInfo {
  std::string name;  ///< `--sarif`
  std::string does;
  Takes takes = Takes::nothing;
  std::string value;               ///< `FILE`
  std::vector<std::string> words;  ///< all values, where it takes words
  bool list = false;     ///< several of them: words parted by commas, files one after the other, folders each after the option
  std::string excludes;  ///< an option that must not stand beside it, or empty
};

/// A word in its place.
struct ArgumentInfo {
  std::string name;  ///< `CONTENT`
  std::string does;
  Takes takes = Takes::text;
  bool required = false;
  bool many = false;
};

struct CommandInfo {
  std::string name;
  std::string does;  ///< one line, as README and the manual have it
  std::vector<ArgumentInfo> arguments;
  std::vector<OptionInfo> options;
  std::string lacks;        ///< what to say when a required word is missing: `words to look up, such as 393`
  std::string exit_good;    ///< what exit 0 means
  std::string exit_bad;     ///< what exit 1 means
  std::string exit_failed;  ///< what exit 2 means besides; empty for most
};

/// The one description of the command line: the parser, its help, the completions of the shells and the manual are made of it,
/// and README is held against it.
const std::vector<CommandInfo>& commands();
/// What every command takes.
const std::vector<OptionInfo>& common_options();
/// One sentence on the program.
std::string_view program_does();

/// `Exit 0: found; 1: nothing found; 2: a wrong call, or what cannot be read or written.`
std::string exit_words(const CommandInfo& command);
/// `benchleaf find WORDS…`, `benchleaf check [CONTENT]`.
std::string synopsis(const CommandInfo& command);
/// All that may stand in a place: words, rules, calculators, kinds; empty where the shell or the user knows.
std::vector<std::string> known_values(Takes takes, const std::vector<std::string>& words);

}  // namespace benchleaf::command
