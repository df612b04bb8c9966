// Out: the description of the command line, which everything that takes, completes or explains it reads.

#include "command/command_line.h"

#include "bench/calculator.h"
#include "compose/desk.h"
#include "model/paper_size.h"
#include "model/record.h"
#include "report/finding.h"

namespace benchleaf::command {
namespace {

constexpr const char* kNoError = "no error";
constexpr const char* kErrors = "the content has errors";

std::vector<std::string> paper_names() {
  std::vector<std::string> names;
  for (const model::PaperSize& paper : model::kPaperSizes) names.emplace_back(paper.name);
  return names;
}

OptionInfo flag(std::string name, std::string does, std::string excludes = {}) {
  return {std::move(name), std::move(does), Takes::nothing, {}, {}, false, std::move(excludes)};
}

OptionInfo option(std::string name, std::string value, Takes takes, std::string does) {
  return {std::move(name), std::move(does), takes, std::move(value), {}, false, {}};
}

OptionInfo list_of(std::string name, std::vector<std::string> words) {
  std::string does = compose::listed(words) + ": only these, parted by commas";
  return {std::move(name), std::move(does), Takes::words, "LIST", std::move(words), true, {}};
}

OptionInfo overlay_option() {
  return {"--overlay",
          "folder of records that replace those of the same kind and id, or add to them; may be given again",
          Takes::folder,
          "DIR",
          {},
          true,
          {}};
}

ArgumentInfo content_argument() { return {"CONTENT", "folder of records", Takes::folder, false, false}; }

CommandInfo check_command() {
  return {"check",
          "reads, derives and proves the content, and says what is wrong, where, and what to do",
          {content_argument()},
          {flag("--json", "findings as one JSON object on stdout"), flag("--strict", "warnings count as errors"),
           option("--sarif", "FILE", Takes::file, "write the findings into a file as SARIF 2.1.0"),
           flag("--rules", "list the rules and end"),
           option("--explain", "RULE", Takes::rule, "say what a rule is for, with a wrong and a right sample, and end"),
           overlay_option()},
          {},
          kNoError,
          kErrors,
          {}};
}

CommandInfo bind_command() {
  return {"bind",
          "checks, then writes the handbook, the charts and the facts",
          {content_argument()},
          {option("--to", "DIR", Takes::folder, "where the folder handbook goes (default: out)"),
           list_of("--only", {"pdf", "html", "chart", "facts"}), list_of("--paper", paper_names()),
           flag("--marks", "crop marks and 3 mm of bleed around every page, for print shops"), overlay_option()},
          {},
          "the handbook is in its place",
          "the content has errors, and nothing was written",
          {}};
}

CommandInfo find_command() {
  return {"find",
          "looks a cell, a size such as 7.9x5.4, a liquid or a symptom up",
          {{"WORDS", "what to look up", Takes::text, true, true}},
          {flag("--json", "the answer as one JSON object"), overlay_option()},
          "words to look up, such as 393 or 7.9x5.4",
          "found",
          "nothing found",
          {}};
}

CommandInfo reckon_command() {
  return {"reckon",
          "runs one calculator and shows its working; without a name, lists them with their inputs",
          {{"NAME", "a calculator", Takes::calculator, false, false}, {"KEY=VALUE", "its inputs; a bare value is the first of them", Takes::inputs, false, true}},
          {flag("--json", "the answer as one JSON object"), overlay_option()},
          {},
          "an answer",
          "refused, with the reason",
          {}};
}

OptionInfo files_of(std::string name, std::string does) {
  return {std::move(name), std::move(does), Takes::file, "FILE", {}, true, {}};
}

CommandInfo ticket_command() {
  return {"ticket",
          "plans the work on one watch: what to get, what never to use, the steps with boxes to tick, the owner's card",
          {{"WATCH", "record of the watch; all it says but id and title may be left out", Takes::file, true, false}},
          {option("--to", "DIR", Takes::folder, "where the folder tickets goes (default: out)"),
           option("--stock", "FILE", Takes::file, "record of a drawer: marks what lies in it, and uses nothing else of paper"),
           files_of("--order", "records of more watches: one list of what all of them need"),
           OptionInfo{"--sheet", "the front sheet alone, or all sheets (default: all)", Takes::words, "WHICH", {"all", "front"}, false, {}},
           flag("--json", "the plan as one JSON object on stdout"), overlay_option()},
          "the record of a watch, such as content/watch/quillfen-d-001.yaml",
          "the ticket is in its place",
          "the records have errors, and nothing was written",
          {}};
}

CommandInfo draft_command() {
  return {"draft",
          "writes a commented record to start from",
          {{"KIND", "a kind of record, such as cell", Takes::kind, true, false},
           {"ID", "the id that the record will have", Takes::text, true, false}},
          {flag("--stdout", "print it instead of writing the file")},
          "a kind and an id, such as cell sr754w",
          "written",
          "a record of that kind and id exists",
          {}};
}

CommandInfo changes_command() {
  return {"changes",
          "says what two states of the content say differently, stated and derived; a state with errors is told and not compared",
          {{"OLD", "folder of the earlier records", Takes::folder, true, false},
           {"NEW", "folder of the later records", Takes::folder, true, false}},
          {flag("--markdown", "as Markdown, for a review"), flag("--json", "as one JSON object", "--markdown")},
          "two folders, OLD and NEW",
          "the two say the same",
          "they differ",
          "a state with errors, which are then told"};
}

template <typename List, typename Name>
std::vector<std::string> names_of(const List& list, Name name) {
  std::vector<std::string> names;
  for (const auto& one : list) names.emplace_back(name(one));
  return names;
}

}  // namespace

const std::vector<CommandInfo>& commands() {
  static const std::vector<CommandInfo> kCommands = {check_command(),  bind_command(),  find_command(),   reckon_command(),
                                                     ticket_command(), draft_command(), changes_command()};
  return kCommands;
}

const std::vector<OptionInfo>& common_options() {
  static const std::vector<OptionInfo> kCommon = {
      option("--content", "DIR", Takes::folder, "folder of records (default: content here, else the installed one)"),
      option("--schema", "DIR", Takes::folder,
             "folder of shapes and tables (default: the one beside the content, above this folder, or installed)"),
      {"--color", "auto, always or never", Takes::words, "WHEN", {"auto", "always", "never"}, false, {}},
      flag("--quiet", "no progress line")};
  return kCommon;
}

std::string_view program_does() { return "Benchleaf compiles a knowledge base into a bench handbook and answers from it."; }

std::string exit_words(const CommandInfo& command) {
  return "Exit 0: " + command.exit_good + "; 1: " + command.exit_bad + "; 2: a wrong call, or what cannot be read or written" +
         (command.exit_failed.empty() ? "" : ", or " + command.exit_failed) + ".";
}

std::string synopsis(const CommandInfo& command) {
  std::string text = "benchleaf " + command.name;
  for (const auto& argument : command.arguments) {
    const std::string words = argument.name + (argument.many ? "\u2026" : "");
    text += argument.required ? " " + words : " [" + words + "]";
  }
  return text;
}

std::vector<std::string> known_values(Takes takes, const std::vector<std::string>& words) {
  switch (takes) {
    case Takes::rule: return names_of(report::all_rules(), [](const auto& rule) { return rule.id; });
    case Takes::calculator: return names_of(bench::calculators(), [](const auto& calculator) { return calculator.name; });
    case Takes::kind: return names_of(model::all_kinds(), [](const auto kind) { return model::kind_name(kind); });
    case Takes::words: return words;
    case Takes::nothing:
    case Takes::text:
    case Takes::folder:
    case Takes::file:
    case Takes::inputs: break;
  }
  return {};
}

}  // namespace benchleaf::command
