#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace benchleaf::command {

/// Exit codes of every command.
inline constexpr int kExitGood = 0;
inline constexpr int kExitFindings = 1;  ///< errors in the content, nothing found, an answer refused, or a difference
inline constexpr int kExitUsage = 2;     ///< a wrong call, or something that cannot be read or written

enum class ColorChoice { when_terminal, always, never };

/// What every command takes.
struct CommonOptions {
  std::string content;                ///< empty: to be discovered
  std::string schema;                 ///< empty: to be discovered
  std::vector<std::string> overlays;  ///< folders of records over the content
  ColorChoice color = ColorChoice::when_terminal;
  bool quiet = false;
  bool notes = false;  ///< print notes, not just their number
};

struct CheckOptions {
  bool json = false;
  bool strict = false;
  bool rules = false;         ///< only list the rules
  std::string explain;        ///< only explain this rule, or empty
  std::string sarif;          ///< file to write the findings into as SARIF, or empty
  std::string changed_since;  ///< commit of git: warnings and notes on what has changed since then alone; or empty
};

struct BindOptions {
  std::string to = "out";
  bool pdf = true;
  bool html = true;
  bool charts = true;
  bool facts = true;
  std::vector<std::string> papers;  ///< names of model::kPaperSizes; the large ones only for charts
  bool marks = false;               ///< crop marks and bleed
};

struct FindOptions {
  std::vector<std::string> words;
  bool json = false;
};

struct ReckonOptions {
  std::string name;  ///< empty: list the calculators
  std::vector<std::pair<std::string, std::string>> inputs;
  bool json = false;
};

struct ChangesOptions {
  std::string before;  ///< folder of the earlier content
  std::string after;
  bool markdown = false;
  bool json = false;
  bool working = false;
};

struct DraftOptions {
  std::string kind;
  std::string id;
  bool to_stdout = false;
};

struct TicketOptions {
  std::string watch;  ///< file of the watch
  std::string to = "out";
  std::string stock;               ///< file of a drawer, or empty
  std::vector<std::string> order;  ///< files of further watches
  std::string sheet = "all";       ///< all, front
  bool json = false;
};

/// What a label is printed for, and on which sheet; figures as typed.
struct LabelOptions {
  std::vector<std::string> things;                            ///< names of records, some with a size
  std::string stock;                                          ///< file of a drawer, or empty
  std::vector<std::string> watches;                           ///< files of donor watches
  std::string mixture;                                        ///< parts as mixture-class takes them, or empty
  std::string name;                                           ///< of the mixture
  std::vector<std::pair<std::string, std::string>> measured;  ///< ph, flash, boiling of the mixture
  std::string date;
  std::string grid;                                        ///< of the table, or empty
  std::string paper, label, pitch, corner, columns, rows;  ///< of a grid of the user's own
  std::string start = "1", copies = "1";
  bool outlines = false;
  std::string to = "out";
};

struct Options {
  CommonOptions common;
  std::variant<CheckOptions, BindOptions, FindOptions, ReckonOptions, TicketOptions, LabelOptions, ChangesOptions, DraftOptions>
      command;
};

/// The command line asked for nothing but a text (help, version) or made no sense.
struct EarlyExit {
  int code = kExitUsage;
  std::string out;  ///< for stdout
  std::string err;  ///< for stderr, or empty
};

/// Reads the command line; never throws and never ends the process.
std::variant<Options, EarlyExit> parse_command_line(int argc, const char* const* argv);

}  // namespace benchleaf::command
