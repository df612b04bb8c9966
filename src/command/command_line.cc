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
  std::string does = compose::listed(words) + ": write only these (comma-separated)";
  return {std::move(name), std::move(does), Takes::words, "LIST", std::move(words), true, {}};
}

OptionInfo overlay_option() {
  return {"--overlay",
          "folder of records that replace those of the same kind and id, or add new ones; repeatable",
          Takes::folder,
          "DIR",
          {},
          true,
          {}};
}

ArgumentInfo content_argument() { return {"CONTENT", "folder of records", Takes::folder, false, false}; }

CommandInfo check_command() {
  return {
      "check",
      "Check the content; report each problem, its location and a fix",
      {content_argument()},
      {flag("--json", "print the diagnostics as one JSON object"), flag("--strict", "count warnings as errors"),
       option("--sarif", "FILE", Takes::file, "write the diagnostics to a file as SARIF 2.1.0"),
       option("--changed-since", "COMMIT", Takes::text, "report warnings and notes only for files changed since a git commit"),
       flag("--rules", "list the rules and exit"),
       option("--explain", "RULE", Takes::rule, "explain a rule with failing and passing samples, then exit"), overlay_option()},
      {},
      kNoError,
      kErrors,
      {}};
}

CommandInfo bind_command() {
  return {"bind",
          "Check the content, then generate the handbook, charts and facts",
          {content_argument()},
          {option("--to", "DIR", Takes::folder, "put the folder handbook here (default: out)"),
           list_of("--only", {"pdf", "html", "chart", "facts"}), list_of("--paper", paper_names()),
           flag("--marks", "add crop marks and 3 mm of bleed to every page"), overlay_option()},
          {},
          "handbook written",
          "errors in the content, nothing written",
          {}};
}

CommandInfo find_command() {
  return {"find",
          "Look up a cell, size (7.9x5.4), liquid or symptom",
          {{"WORDS", "what to look up", Takes::text, true, true}},
          {flag("--json", "print the answer as one JSON object"), overlay_option()},
          "words to look up, such as 393 or 7.9x5.4",
          "found",
          "nothing found",
          {}};
}

CommandInfo reckon_command() {
  return {"reckon",
          "Run a calculator and show its working; without NAME, list them all",
          {{"NAME", "a calculator", Takes::calculator, false, false},
           {"KEY=VALUE", "its inputs; a bare value is the first that takes it", Takes::inputs, false, true}},
          {flag("--json", "print the answer as one JSON object"), overlay_option()},
          {},
          "an answer",
          "refused, with a reason",
          {}};
}

OptionInfo files_of(std::string name, std::string does) {
  return {std::move(name), std::move(does), Takes::file, "FILE", {}, true, {}};
}

CommandInfo ticket_command() {
  return {
      "ticket",
      "Plan one watch: what to get, what never to use, steps, owner's card",
      {{"WATCH", "record of the watch; only id and title are required", Takes::file, true, false}},
      {option("--to", "DIR", Takes::folder, "put the folder tickets here (default: out)"),
       option("--stock", "FILE", Takes::file, "record of your stock: mark stocked items; use only the abrasive papers listed"),
       files_of("--order", "records of more watches: add one shopping list for all"),
       {"--sheet", "all or front: the front sheet alone", Takes::words, "SHEET", {"all", "front"}, false, {}},
       flag("--json", "print the plan as one JSON object"),
       overlay_option()},
      "the record of a watch, such as content/watch/quillfen-d-001.yaml",
      "ticket written",
      "errors in the records, nothing written",
      {}};
}

std::vector<OptionInfo> grid_options() {
  return {option("--grid", "NAME", Takes::text, "70x37 (default), 63.5x38.1, 99.1x57 (A4), 2.625x1in, 4x2in (Letter)"),
          {"--label",
           "width and height of a label, such as 50x30 or 2x1in: for any other sheet",
           Takes::text,
           "SIZE",
           {},
           false,
           "--grid"},
          option("--columns", "N", Takes::text, "labels in a row of such a sheet"),
          option("--rows", "N", Takes::text, "rows of such a sheet"),
          option("--pitch", "SIZE", Takes::text, "from the corner of a label to those of the next (default: edge to edge)"),
          option("--corner", "SIZE", Takes::text, "corner of the first label from left and top (default: centred)"),
          {"--paper", "paper of such a sheet (default: a4)", Takes::words, "PAPER", {"a4", "letter"}, false, {}},
          option("--start", "N", Takes::text, "first free label of the sheet, counted along the rows (default: 1)"),
          flag("--outlines", "draw the edges of the labels, to try the printer on plain paper")};
}

CommandInfo label_command() {
  CommandInfo label{
      "label",
      "Print labels for bottles, bags and drawers",
      {{"WHAT", "a record, such as 393, isopropanol, round-0-7:28 (inside 28 mm) or fepa-p:P800", Takes::text, false, true}},
      {option("--stock", "FILE", Takes::file, "record of your stock: a label for each item"),
       files_of("--watch", "records of donor watches"),
       option("--mixture", "PARTS", Takes::text,
              "substances with their percentage, such as acetic-acid:5: a label for its bottle"),
       option("--name", "NAME", Takes::text, "what the mixture is called"),
       option("--ph", "VALUE", Takes::text, "pH of the mixture, if measured"),
       option("--flash", "VALUE", Takes::text, "flash point of the mixture, or none"),
       option("--boiling", "VALUE", Takes::text, "boiling point of the mixture"),
       option("--date", "DATE", Takes::text, "day of mixing, filling or buying (default: a blank to fill in)"),
       option("--copies", "N", Takes::text, "labels of each (default: 1)")},
      "what to label",
      "labels written",
      "a mixture refused, a name not found, words that do not fit or errors in the records, nothing written",
      {}};
  for (OptionInfo& one : grid_options()) label.options.push_back(std::move(one));
  label.options.push_back(option("--to", "DIR", Takes::folder, "put the folder labels here (default: out)"));
  label.options.push_back(overlay_option());
  return label;
}

CommandInfo draft_command() {
  return {"draft",
          "Create a commented record",
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
          "Compare recorded and derived values in two content folders",
          {{"OLD", "folder of the earlier records", Takes::folder, true, false},
           {"NEW", "folder of the later records", Takes::folder, true, false}},
          {flag("--markdown", "print Markdown, for a review"), flag("--json", "print one JSON object", "--markdown"),
           flag("--working", "list every change, with its formula and what it follows from")},
          "two folders, OLD and NEW",
          "no differences",
          "they differ",
          "errors in either folder"};
}

template <typename List, typename Name>
std::vector<std::string> names_of(const List& list, Name name) {
  std::vector<std::string> names;
  for (const auto& one : list) names.emplace_back(name(one));
  return names;
}

}  // namespace

const std::vector<CommandInfo>& commands() {
  static const std::vector<CommandInfo> kCommands = {check_command(),  bind_command(),  find_command(),  reckon_command(),
                                                     ticket_command(), label_command(), draft_command(), changes_command()};
  return kCommands;
}

const std::vector<OptionInfo>& common_options() {
  static const std::vector<OptionInfo> kCommon = {
      option("--content", "DIR", Takes::folder, "folder of records (default: ./content, else the installed one)"),
      option("--schema", "DIR", Takes::folder,
             "folder of schemas and tables (default: beside the content, above this folder, or installed)"),
      {"--color", "auto, always or never", Takes::words, "WHEN", {"auto", "always", "never"}, false, {}},
      flag("--notes", "print notes, not just their number"),
      flag("--quiet", "hide progress and the number of notes")};
  return kCommon;
}

std::string_view program_does() { return "Check watch-repair records, generate a bench handbook and answer questions from it."; }

std::string exit_words(const CommandInfo& command) {
  return "Exit 0: " + command.exit_good + "; 1: " + command.exit_bad + "; 2: usage error, or unreadable or unwritable file" +
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
