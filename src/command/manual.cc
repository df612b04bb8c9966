// In: the description of the command line, the shapes of records. Out: pages of the manual.

#include "command/manual.h"

#include <algorithm>

#include "command/command_line.h"
#include "compose/desk.h"
#include "model/signs.h"

namespace benchleaf::command {
namespace {

/// Words as the macros take them: no line begins with a command, a hyphen is one to be typed.
std::string roff(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\') {
      out += "\\e";
    } else if (c == '-') {
      out += "\\-";
    } else if (c == '"') {
      out += "\\(dq";
    } else {
      out += c;
    }
  }
  const bool command = !out.empty() && (out.front() == '.' || out.front() == '\'');
  return command ? "\\&" + out : out;
}

std::string head_line(const std::string& name, const char* section, const ManualHead& head) {
  return ".TH " + name + " " + section + " \"" + head.date + "\" \"benchleaf " + head.version + "\" \"Benchleaf\"\n";
}

std::string section(const std::string& title) { return ".SH " + title + "\n"; }
std::string paragraph(const std::string& text) { return ".PP\n" + roff(text) + "\n"; }
std::string entry(const std::string& term, const std::string& text) {
  return ".TP\n\\fB" + roff(term) + "\\fR\n" + roff(text) + "\n";
}
std::string sample(const std::string& text) { return ".PP\n.nf\n" + text + ".fi\n"; }

std::string option_entry(const OptionInfo& option) {
  return entry(option.value.empty() ? option.name : option.name + " " + option.value,
               compose::sentence_case(option.does) + (option.excludes.empty() ? "" : "; not beside " + option.excludes) + ".");
}

std::string command_section(const CommandInfo& command) {
  std::string text = ".SS \"" + roff(synopsis(command)) + "\"\n" + roff(compose::sentence_case(command.does)) + ".\n";
  for (const ArgumentInfo& argument : command.arguments)
    text += entry(argument.name, compose::sentence_case(argument.does) + ".");
  for (const OptionInfo& option : command.options) text += option_entry(option);
  return text + paragraph(exit_words(command));
}

bool same_words(const ShapeField& one, const ShapeField& other) {
  return one.name == other.name && one.description == other.description;
}

/// Whether every kind has this field in the same words.
bool is_common(const ShapeField& field, const std::vector<RecordShape>& shapes) {
  return std::all_of(shapes.begin(), shapes.end(), [&field](const RecordShape& shape) {
    return std::any_of(shape.fields.begin(), shape.fields.end(),
                       [&field](const auto& other) { return same_words(field, other); });
  });
}

std::string field_entry(const ShapeField& field) {
  const bool list = field.form == ShapeField::Form::list;
  const ShapeField& inner = list ? field.fields.front() : field;
  std::string about = field.description;
  if (list) about += " A list.";
  if (list && inner.form != ShapeField::Form::mapping) about += " " + inner.description;
  const std::string values = value_words(inner);
  if (!values.empty()) about += " " + values + ".";
  if (!inner.example.empty()) about += " Example: " + inner.example;
  std::string text = entry(field.name + (field.required ? " (required)" : ""), about);
  if (inner.form != ShapeField::Form::mapping) return text;
  text += ".RS\n";
  for (const ShapeField& below : inner.fields) text += field_entry(below);
  return text + ".RE\n";
}

constexpr model::Trust kTrusts[] = {model::Trust::standard, model::Trust::handbook, model::Trust::dataset,
                                    model::Trust::trade,    model::Trust::memory,   model::Trust::invented};

}  // namespace

std::string program_manual(const ManualHead& head) {
  std::string text = head_line("BENCHLEAF", "1", head) + section("NAME") + "benchleaf \\- bench handbook from a knowledge base\n";
  text += section("SYNOPSIS");
  for (const CommandInfo& command : commands()) text += ".B " + roff(synopsis(command)) + "\n.br\n";
  text += section("DESCRIPTION") + roff(std::string(program_does())) + "\n";
  text += paragraph("Data goes to standard output, findings and one line of progress to standard error.");
  text += section("COMMANDS");
  for (const CommandInfo& command : commands()) text += command_section(command);
  text += section("OPTIONS") + roff("Every command takes these besides.") + "\n";
  for (const OptionInfo& option : common_options()) text += option_entry(option);
  text += entry("--help", "Says what the program or one command takes.");
  text += entry("--version", "Prints the version.");
  text += section("ENVIRONMENT") + entry("NO_COLOR", "If it is set and not empty, findings are printed without colour.");
  text += section("FILES");
  text += entry("content",
                "The folder of records, in the current folder; else the one that was installed with the program, "
                "../share/benchleaf/content from it.");
  text += entry("schema",
                "Shapes and tables: beside the content, else upwards from the current folder, else "
                "../share/benchleaf/schema from the program.");
  return text + section("\"SEE ALSO\"") + ".BR benchleaf\\-record (5)\n";
}

std::string record_manual(const ManualHead& head, const std::vector<RecordShape>& shapes) {
  std::string text = head_line("BENCHLEAF\\-RECORD", "5", head) + section("NAME") +
                     "benchleaf\\-record \\- a record of the knowledge base\n" + section("DESCRIPTION");
  text += roff("One file a record, content/KIND/ID.yaml; a page of prose is content/page/ID.md, Markdown under a head in YAML.") +
          "\n";
  text += paragraph(
      "An id has small letters, digits and single hyphens, at most 48, begins with a letter, equals the file name, "
      "and is kept for good. One record names another by its id, or by KIND/ID where several kinds may stand.");
  text += paragraph(
      "A quantity is a text with its unit, dimension-checked and printed as written: 7.9 mm, 4.0 to 4.2 mm, "
      "11.6 mm +0 -0.2. In its place may stand: not stated, not known, none.");
  text += paragraph(
      "benchleaf draft KIND ID writes a record with every field of its kind, and benchleaf check says what is wrong "
      "with it.");
  text += section("EXAMPLE");
  text += sample(
      "id: sr754w\ndesignation: SR754W\nsystem: silver\\-oxide\nsize: { diameter: 7.9 mm, height: 5.4 mm }\n"
      "nominal: 1.55 V\nbasis:\n  size: { source: battery\\-handbook, where: table 4.9a, trust: handbook }\n");
  text += section("TRUST");
  for (const model::Trust trust : kTrusts) {
    text += entry(std::string(model::trust_name(trust)), std::string(model::trust_legend(trust)) + ".");
  }
  text += section("\"FIELDS OF EVERY RECORD\"");
  for (const ShapeField& field : shapes.empty() ? std::vector<ShapeField>() : shapes.front().fields) {
    if (is_common(field, shapes)) text += field_entry(field);
  }
  text += section("KINDS");
  for (const RecordShape& shape : shapes) {
    text += ".SS " + shape.kind + "\n" + roff(shape.description) + "\n";
    for (const ShapeField& field : shape.fields) {
      if (!is_common(field, shapes)) text += field_entry(field);
    }
  }
  return text + section("\"SEE ALSO\"") + ".BR benchleaf (1)\n";
}

}  // namespace benchleaf::command
