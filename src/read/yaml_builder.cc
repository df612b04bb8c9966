// In: the events of yaml-cpp for one document. Out: the tree of the subset, each key and value with its span.
// yaml-cpp 0.7 keeps duplicate keys, resolves anchors into cycles and marks an empty value at the next token; all
// three end here.
#include "read/yaml_builder.h"

#include <utility>

#include "read/yaml_bytes.h"
#include "read/yaml_places.h"
#include "read/yaml_scalar.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;
using report::Rule;

/// A text as a message shows it: its beginning, where it is long.
std::string brief(const std::string& text) {
  constexpr std::size_t kMostShown = 60;
  std::size_t end = kMostShown;
  if (text.size() <= kMostShown) return text;
  while ((static_cast<unsigned char>(text.at(end)) & 0xC0) == 0x80) --end;  // never in the middle of a letter
  return text.substr(0, end) + "…";
}

std::size_t place_of(const YAML::Mark& mark) { return mark.pos < 0 ? 0 : static_cast<std::size_t>(mark.pos); }

}  // namespace

void YamlBuilder::stop(Rule rule, base::Span where, std::string message, std::string hint) {
  findings_.add(rule, where, std::move(message), std::move(hint));
  throw StopReading{};
}

std::optional<std::size_t> YamlBuilder::open_bracket() const {
  for (auto frame = frames_.rbegin(); frame != frames_.rend(); ++frame) {
    if (frame->flow) return frame->place;
  }
  return std::nullopt;
}

int YamlBuilder::block_column() const {
  for (auto frame = frames_.rbegin(); frame != frames_.rend(); ++frame) {
    if (!frame->flow) return frame->column;
  }
  return -1;
}

bool YamlBuilder::wants_key() const {
  return !frames_.empty() && frames_.back().node.type == NodeType::mapping && !frames_.back().has_key;
}

void YamlBuilder::check_node(std::size_t place, int column, const std::string& tag) {
  bool signed_tag = place < source_.text().size() && source_.text().at(place) == '!';
  if (signed_tag || (tag != "?" && tag != "!")) {
    stop(Rule::yaml_tag, source_.span(place, 1), "found a tag, which records do not use",
         "take the word with the exclamation mark out");
  }
  if (++nodes_ > kMostNodes) {
    stop(Rule::yaml_nodes, source_.span(place, 1), "more than " + std::to_string(kMostNodes) + " keys and values in one file",
         "split the record");
  }
  check_flow_indent(place, column);
}

void YamlBuilder::check_flow_indent(std::size_t place, int column) {
  if (frames_.empty() || !frames_.back().flow || frames_.back().told_indent) return;
  Frame& frame = frames_.back();
  bool later_line = source_.line_index(place) > source_.line_index(frame.place);
  if (!later_line || column > block_column()) return;
  frame.told_indent = true;
  report::Finding& finding =
      findings_.add(Rule::yaml_indentation, source_.span(place, 1),
                    "this line stands inside brackets but is not indented under their key", "indent the line");
  finding.notes.push_back({source_.span(frame.place, 1), "the brackets open here"});
}

void YamlBuilder::open(NodeType type, const YAML::Mark& mark, const std::string& tag, bool flow) {
  const std::size_t place = place_of(mark);
  check_node(place, mark.column, tag);
  if (wants_key()) {
    // a bracket that is never closed looks like a key to the parser, too
    stop(Rule::yaml_key_form, source_.span(place, 1), "found a list or a mapping as a key, expected a word",
         "use a word as key, or close the bracket");
  }
  if (frames_.size() >= kMostDepth) {
    stop(Rule::yaml_depth, source_.span(place, 1), "nested deeper than " + std::to_string(kMostDepth) + " levels",
         "make the record flatter");
  }
  Frame frame;
  frame.node.type = type;
  frame.node.span = source_.span(place, 1);
  frame.place = place;
  frame.column = mark.column;
  frame.flow = flow;
  frames_.push_back(std::move(frame));
}

void YamlBuilder::close() {
  Node node = std::move(frames_.back().node);
  frames_.pop_back();
  if (node.type == NodeType::mapping && !node.members.empty() && node.span.length == 1) {
    const base::Span& first = node.members.front().key_span;  // a mapping in brackets begins before its first key
    if (first.line == node.span.line && first.column == node.span.column) node.span = first;
  }
  add(std::move(node));
}

void YamlBuilder::take_key(const std::string& text, base::Span span) {
  Frame& frame = frames_.back();
  frame.has_key = true;
  frame.key = text;
  frame.key_span = span;
  frame.drop_value = true;
  if (text == "<<") {
    findings_.add(Rule::yaml_merge_key, span, "found the merge key \"<<\", which records do not use", "write the members out");
    return;
  }
  auto [first, is_new] = frame.keys.emplace(text, span);
  frame.drop_value = !is_new;
  if (is_new) return;
  report::Finding& finding =
      findings_.add(Rule::yaml_duplicate_key, span, "the key \"" + brief(text) + "\" stands here again", "keep one of the two");
  finding.notes.push_back({first->second, "first used here; this value is the one that is read"});
}

void YamlBuilder::add(Node node) {
  if (frames_.empty()) {
    root_ = std::move(node);
    return;
  }
  Frame& frame = frames_.back();
  if (frame.node.type == NodeType::sequence) {
    frame.node.items.push_back(std::move(node));
    return;
  }
  frame.has_key = false;
  if (!frame.drop_value) frame.node.members.push_back({std::move(frame.key), frame.key_span, std::move(node)});
}

base::Span YamlBuilder::empty_place(std::size_t place) const {
  if (frames_.empty()) return source_.span(place, 1);
  const Frame& frame = frames_.back();
  if (frame.node.type == NodeType::mapping) return frame.key_span;
  std::optional<std::size_t> dash = dash_before(source_.text(), place);
  return dash ? source_.span(*dash, 1) : frame.node.span;
}

void YamlBuilder::OnNull(const YAML::Mark& mark, YAML::anchor_t) {
  const std::size_t place = place_of(mark);
  const std::string_view text = source_.text();
  if (wants_key()) {
    // `null: 3` is a key like any other word here; what is left is a colon with nothing before it
    std::size_t end = place < text.size() ? text.find_first_of(": \t\r\n", place) : std::string_view::npos;
    std::string_view word = text.substr(std::min(place, text.size()), end == std::string_view::npos ? end : end - place);
    if (word.empty() || !is_null_word(word)) {
      stop(Rule::yaml_key_form, source_.span(place, 1), "found a value without a key", "write the key before the colon");
    }
    check_node(place, mark.column, "?");
    take_key(std::string(word), source_.span(place, word.size()));
    return;
  }
  if (!frames_.empty() && frames_.back().has_key && !frames_.back().flow && place == last_start_) {
    // the parser takes a word without a colon for a key without a value, and marks the value at the word
    stop(Rule::yaml_syntax, frames_.back().key_span, "this is no key, since no colon follows, and no part of the value above",
         "write the colon, or indent the line");
  }
  if (take_decimal_comma()) return;
  const std::size_t length = null_word_length(text, place);
  bool empty_item = length == 0 && !frames_.empty() && frames_.back().flow && frames_.back().node.type == NodeType::sequence;
  if (empty_item) {
    stop(Rule::yaml_empty_item, source_.span(place, 1), "found nothing between two commas, expected a value",
         "take one comma out");
  }
  if (length > 0) check_node(place, mark.column, "?");
  Node node;
  node.text = std::string(text.substr(std::min(place, text.size()), length));
  node.span = length > 0 ? source_.span(place, length) : empty_place(place);
  add(std::move(node));
}

/// `{ height: 5,4 mm }` is a 5 and a key `4 mm` to the parser, and a decimal comma to everybody else. True where it was one.
bool YamlBuilder::take_decimal_comma() {
  if (frames_.empty() || !frames_.back().flow || !frames_.back().has_key) return false;
  Frame& frame = frames_.back();
  const std::string_view text = source_.text();
  const auto is_digit = [&](std::size_t place) { return text.at(place) >= '0' && text.at(place) <= '9'; };
  const std::size_t key = last_start_;
  if (frame.node.members.empty() || key < 2 || text.at(key - 1) != ',' || !is_digit(key - 2) || !is_digit(key)) return false;
  Node& value = frame.node.members.back().value;
  const std::string whole = value.text + "," + frame.key;
  value.type = NodeType::string;
  value.span.length += 1 + frame.key_span.length;
  findings_.add(Rule::quantity_number, value.span, "found a comma in a number (" + whole + "), expected a decimal point",
                value.text + "." + frame.key);
  value.text = whole;
  refused_.push_back(value.span);
  frame.has_key = false;
  return true;
}

void YamlBuilder::OnAlias(const YAML::Mark& mark, YAML::anchor_t) {
  stop(Rule::yaml_alias, source_.span(place_of(mark), 1), std::string(kAliasFound), std::string(kAliasHint));
}

void YamlBuilder::OnAnchor(const YAML::Mark& mark, const std::string& name) {
  stop(Rule::yaml_anchor, source_.span(place_of(mark), 1 + name.size()),
       "found an anchor (&" + brief(name) + "), which records do not use", "take it out, or put the text in quotes");
}

void YamlBuilder::OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t, const std::string& value) {
  const std::size_t place = place_of(mark);
  check_node(place, mark.column, tag);
  Node node = tag == "!" ? in_quotes(value, place) : plain(value, place);
  if (wants_key()) {
    take_key(value, node.span);
  } else {
    add(std::move(node));
  }
}

Node YamlBuilder::plain(const std::string& value, std::size_t place) {
  Node node;
  const std::size_t length = plain_length(source_.text(), place, value);
  if (value == "-" || value == "?") {
    stop(Rule::yaml_syntax, source_.span(place, 1), "found the sign " + value + " as a value", "put it in quotes");
  }
  last_start_ = place;
  last_end_ = place + length;
  scalars_.emplace_back(last_start_, last_end_);
  last_quoted_ = false;
  node.type = plain_scalar_type(value);
  node.text = value;
  node.span = source_.span(place, length);
  if (wants_key()) return node;
  if (has_leading_zero(value)) {
    findings_.add(Rule::yaml_leading_zero, node.span,
                  "found " + brief(value) + ", a number with a zero in front, which some readers take for an octal one",
                  "write \"" + brief(value) + "\" for a code, or the number without the zero");
    refused_.push_back(node.span);
  } else if (is_odd_number(value)) {
    findings_.add(Rule::yaml_number_form, node.span, "found " + brief(value) + ", a form of number that records do not use",
                  "write a decimal number, or the text in quotes");
    refused_.push_back(node.span);
  }
  return node;
}

Node YamlBuilder::in_quotes(const std::string& value, std::size_t place) {
  Node node;
  node.type = NodeType::string;
  node.quoted = true;
  node.text = value;
  const std::string_view text = source_.text();
  const char sign = place < text.size() ? text.at(place) : '\0';
  std::size_t end = place + 1;  // a block text is placed at its sign
  if (sign == '|' || sign == '>') check_block_head(place);
  if (sign == '"' || sign == '\'') {
    std::optional<std::size_t> closing = end_of_quotes(text, place);
    bool runs_over = closing && shallow_line(text, place, *closing, block_column());
    if (!closing || runs_over) {
      stop(Rule::yaml_open_quote, source_.span(place, 1), "the text in quotes that opens here is not closed on its lines",
           "close the quote, or indent the lines that belong to the text");
    }
    end = *closing;
    check_quoted(place, end);
  }
  last_start_ = place;
  last_end_ = end;
  const bool block = sign == '|' || sign == '>';
  scalars_.emplace_back(place, block ? end_of_block(text, place, block_column()) : end);
  last_quoted_ = end > place + 1;
  node.span = source_.span(place, end - place);
  const bool escapes = sign == '"' && text.substr(place, end - place).find('\\') != std::string_view::npos;
  if (escapes) check_escaped(value, node.span);
  return node;
}

/// What the parser reads in texts in quotes that YAML does not.
void YamlBuilder::check_quoted(std::size_t place, std::size_t end) {
  const std::string_view quoted = source_.text().substr(place, end - place);
  if (std::optional<std::size_t> wrong = wrong_escape(quoted)) {
    stop(Rule::yaml_syntax, source_.span(place + *wrong, 2), "unknown escape in a text in double quotes",
         "write two backslashes for one, or use single quotes");
  }
  const bool only_line_ends = quoted.find('\n') != std::string_view::npos &&
                              quoted.substr(1, quoted.size() - 2).find_first_not_of(" \t\r\n") == std::string_view::npos;
  if (only_line_ends) {
    stop(Rule::yaml_syntax, source_.span(place, 1), "the text in quotes that opens here holds nothing but line ends",
         "write \"\", or the text");
  }
}

/// The head of a block text: its signs, then a blank before a comment; and no blank line deeper than the first other one.
void YamlBuilder::check_block_head(std::size_t place) {
  if (std::optional<std::size_t> wrong = wrong_block_head(source_.text(), place)) {
    stop(Rule::yaml_syntax, source_.span(*wrong, 1), "this cannot stand at the beginning of a block text",
         "put a blank in front of a comment, and take the blanks out of empty lines");
  }
}

/// What an escape brings in is looked at as what stands in the file has been: "\u200B" hides as well as the sign itself.
void YamlBuilder::check_escaped(const std::string& value, base::Span where) {
  std::optional<CharacterFault> fault = find_character_fault(value);
  if (!fault) return;
  findings_.add(fault->rule, where, std::move(fault->message) + ", by an escape", std::move(fault->hint));
  refused_.push_back(where);
}

void YamlBuilder::OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t,
                                  YAML::EmitterStyle::value style) {
  open(NodeType::sequence, mark, tag, style == YAML::EmitterStyle::Flow);
}

void YamlBuilder::OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t, YAML::EmitterStyle::value style) {
  open(NodeType::mapping, mark, tag, style == YAML::EmitterStyle::Flow);
}

}  // namespace benchleaf::read
