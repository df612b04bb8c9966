// In: the shape of a kind of record, and an id. Out: a commented record to start from.

#include "command/draft_text.h"

#include <algorithm>
#include <sstream>

namespace benchleaf::command {
namespace {

using Form = ShapeField::Form;

constexpr std::size_t kWidth = 100;
constexpr std::size_t kStep = 2;

/// `open`: to be filled in. `closed`: the line stands behind `#`.
enum class Gate { open, closed };

class Draft {
 public:
  explicit Draft(std::string id) : id_(std::move(id)) {}

  void say(const std::string& text) { comment(text, 0, Gate::open); }
  void line(const std::string& text) { text_ += text + "\n"; }

  /// Of an entry that needs no field in particular, the first waits: it must not stay empty.
  void fields(const std::vector<ShapeField>& all, std::size_t indent, Gate gate) {
    bool said = false;
    const bool none_needed =
        indent > 0 && std::none_of(all.begin(), all.end(), [](const ShapeField& one) { return one.required; });
    for (const ShapeField& one : all) {
      if (indent == 0) text_ += "\n";
      if (indent == 0 && !one.required && !said) {
        say("What follows may be left out: take away the # of the lines that you fill in, and delete the others.");
        text_ += "\n";
        said = true;
      }
      const bool needed = one.required || (none_needed && &one == &all.front());
      field(one, indent, needed ? gate : Gate::closed);
    }
  }

  std::string take() { return std::move(text_); }

 private:
  void field(const ShapeField& one, std::size_t indent, Gate gate) {
    comment(description(one), indent, gate);
    if (one.name == "id" && indent == 0) return put(indent, gate, "id: " + id_);
    if (one.form == Form::scalar) return put(indent, gate, one.name + ":" + value(one, gate));
    put(indent, gate, one.name + ":");
    if (one.form == Form::mapping) return fields(one.fields, indent + kStep, gate);
    entry(one.fields.front(), indent + kStep, gate);
  }

  /// One entry of a list. Its dash stands alone where the entry has fields, so that each keeps its comment.
  void entry(const ShapeField& one, std::size_t indent, Gate gate) {
    if (one.form == Form::scalar) {
      comment(description(one), indent, gate);
      return put(indent, gate, "-" + value(one, gate));
    }
    put(indent, gate, "-");
    if (one.form == Form::mapping) return fields(one.fields, indent + kStep, gate);
    entry(one.fields.front(), indent + kStep, gate);
  }

  /// A field behind a gate shows what could stand there; an open one waits.
  static std::string value(const ShapeField& one, Gate gate) {
    return gate == Gate::closed && !one.example.empty() ? " " + one.example : std::string();
  }

  static std::string description(const ShapeField& one) {
    std::string text = one.description;
    const std::string words = value_words(one);
    if (!words.empty()) text += " " + words + ".";
    if (one.needs_basis) text += " Needs a basis below.";
    return one.example.empty() || one.name == "id" ? text : text + " Example: " + one.example;
  }

  void put(std::size_t indent, Gate gate, const std::string& text) {
    line((gate == Gate::closed ? "#" : "") + std::string(indent, ' ') + text);
  }

  void comment(const std::string& text, std::size_t indent, Gate gate) {
    const std::string start = (gate == Gate::closed && indent > 0 ? "#" : "") + std::string(indent, ' ') + "#";
    const std::size_t mark = text.rfind(" Example: ");  // an example stays in one line, to be copied
    const std::string prose = text.substr(0, mark);
    std::string current = start;
    std::istringstream words(prose);
    for (std::string word; words >> word;) {
      if (current.size() + 1 + word.size() > kWidth && current != start) {
        line(current);
        current = start;
      }
      current += " " + word;
    }
    line(current);
    if (mark != std::string::npos) line(start + text.substr(mark));
  }

  std::string id_;
  std::string text_;
};

}  // namespace

std::string draft_text(const RecordShape& shape, const std::string& id) {
  const bool page = shape.kind == "page";
  Draft draft(id);
  if (page) draft.line("---");
  draft.line("# yaml-language-server: $schema=../../schema/shapes/" + shape.kind + ".schema.json");
  draft.say(shape.description);
  draft.fields(shape.fields, 0, Gate::open);
  if (page) draft.line("---\n\nText in Markdown, headings from ## on.");
  return draft.take();
}

}  // namespace benchleaf::command
