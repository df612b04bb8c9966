// In: the bytes of a record. Out: its tree, or one finding that says why there is none.
// Only the event interface of yaml-cpp is used, for one document; what follows it is looked at, never parsed on, since
// reading further documents can loop without end in version 0.7.
#include "read/yaml_reader.h"

#include <algorithm>
#include <array>
#include <exception>
#include <sstream>
#include <string>
#include <utility>

#include <yaml-cpp/depthguard.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include "read/source_text.h"
#include "read/yaml_builder.h"
#include "read/yaml_bytes.h"
#include "read/yaml_places.h"

namespace benchleaf::read {

namespace {

using report::Rule;

/// Stops at the first event of a second document.
class NothingMore final : public YAML::EventHandler {
 public:
  struct Found {
    std::size_t place;
  };
  void OnDocumentStart(const YAML::Mark& mark) override { throw Found{mark.pos < 0 ? 0 : static_cast<std::size_t>(mark.pos)}; }
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
  void OnAlias(const YAML::Mark&, YAML::anchor_t) override {}
  void OnScalar(const YAML::Mark&, const std::string&, YAML::anchor_t, const std::string&) override {}
  void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {}
  void OnSequenceEnd() override {}
  void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t, YAML::EmitterStyle::value) override {}
  void OnMapEnd() override {}
};

/// Our words for a message of the parser; the ones that need a closer look are not in this list.
struct Wording {
  std::string_view theirs;  ///< how the parser's message begins
  std::string_view ours;
  std::string_view hint;
  bool escape = false;  ///< the parser's place lies behind the backslash that is at fault
};
const std::array<Wording, 10> kWordings = {{
    {YAML::ErrorMsg::END_OF_SEQ, "this line does not line up with the list above it", "indent it as its neighbours are"},
    {YAML::ErrorMsg::BLOCK_ENTRY, "a list item cannot begin here", "begin the list on the line after its key"},
    {YAML::ErrorMsg::MAP_KEY, "a key cannot begin here", "put the text in quotes"},
    {YAML::ErrorMsg::UNKNOWN_TOKEN, "a value cannot begin with this sign", "put the text in quotes"},
    {YAML::ErrorMsg::INVALID_ESCAPE, "unknown escape in a text in double quotes",
     "write two backslashes for one, or use single quotes", true},
    {YAML::ErrorMsg::INVALID_HEX, "an escape with a sign that is no hexadecimal digit", "write the character itself", true},
    {YAML::ErrorMsg::INVALID_UNICODE, "an escape that names no character", "write the character itself", true},
    {YAML::ErrorMsg::FLOW_END, "a closing bracket without an opening one", "take it out, or put the text in quotes"},
    {YAML::ErrorMsg::CHAR_IN_BLOCK, "only |, >, a digit, - or + may stand here", "begin the text on the next line"},
    {YAML::ErrorMsg::ALIAS_NOT_FOUND, "a value cannot begin with a star", "put the text in quotes"},
}};

bool begins(std::string_view text, std::string_view with) { return text.substr(0, with.size()) == with; }

/// What the parser's exception means, in the words of this project.
class Explainer {
 public:
  Explainer(const SourceText& source, const YamlBuilder& builder, report::Findings& findings)
      : source_(source), builder_(builder), findings_(findings) {}

  void explain(const YAML::Exception& exception) {
    const std::string& theirs = exception.msg;
    const bool no_place = exception.mark.is_null() || exception.mark.pos < 0;
    const std::size_t place = no_place ? builder_.last_end() : static_cast<std::size_t>(exception.mark.pos);
    if (theirs == YAML::ErrorMsg::EOF_IN_SCALAR || theirs == YAML::ErrorMsg::DOC_IN_SCALAR) return open_quote(place);
    if (theirs == YAML::ErrorMsg::END_OF_SEQ_FLOW || theirs == YAML::ErrorMsg::END_OF_MAP_FLOW) return bracket(place);
    if (theirs == YAML::ErrorMsg::MAP_VALUE) return colon(place);
    if (begins(theirs, YAML::ErrorMsg::UNKNOWN_ANCHOR)) return alias(place);
    if (theirs == YAML::ErrorMsg::END_OF_MAP) return end_of_map(place);
    for (const Wording& wording : kWordings) {
      if (!begins(theirs, wording.theirs)) continue;
      return tell(wording.escape ? backslash(place) : place, std::string(wording.ours), std::string(wording.hint));
    }
    tell(place, "this cannot be read as YAML", "look for an open quote or bracket above, and at the indentation");
  }

 private:
  void tell(std::size_t place, std::string message, std::string hint) {
    findings_.add(Rule::yaml_syntax, source_.span(place, 1), std::move(message), std::move(hint));
  }

  /// The last backslash before a place.
  std::size_t backslash(std::size_t place) const {
    const std::size_t found = place == 0 ? std::string_view::npos : source_.text().rfind('\\', place - 1);
    return found == std::string_view::npos ? place : found;
  }

  void open_quote(std::size_t place) {
    std::optional<std::size_t> quote = next_quote(source_.text(), builder_.last_end());
    findings_.add(Rule::yaml_open_quote, source_.span(quote.value_or(place), 1),
                  "the text in quotes that opens here is never closed", "close the quote");
  }

  void alias(std::size_t place) {
    findings_.add(Rule::yaml_alias, source_.span(place, 1), std::string(kAliasFound), std::string(kAliasHint));
  }

  void bracket(std::size_t place) {
    std::size_t opening = builder_.open_bracket().value_or(place);
    report::Finding& finding = findings_.add(Rule::yaml_syntax, source_.span(opening, 1),
                                             "the bracket that opens here is not closed", "close it, or take it out");
    finding.notes.push_back({source_.span(place, 1), "reading stopped here"});
  }

  void colon(std::size_t place) {
    bool value_above = source_.line_index(builder_.last_start()) < source_.line_index(place);
    if (value_above) {
      tell(place, "this key is indented deeper than the key above, whose value stands on its own line",
           "indent it as the key above");
    } else {
      tell(place, "a second colon in one line", "put the value in quotes, or its keys on lines of their own");
    }
  }

  void end_of_map(std::size_t place) {
    bool same_line = source_.line_index(builder_.last_start()) == source_.line_index(place);
    if (builder_.last_quoted() && same_line) {
      tell(place, "text after the closing quote", "put the whole text in quotes");
    } else {
      tell(place, "this line does not line up with the keys above it", "indent it as they are, and end it with its value");
    }
  }

  const SourceText& source_;
  const YamlBuilder& builder_;
  report::Findings& findings_;
};

/// The parser takes `"a"# b` for a text and a comment.
bool check_comments(const SourceText& source, const YamlBuilder& builder, report::Findings& findings) {
  std::optional<std::size_t> place = wrong_comment(source.text(), builder.scalars());
  if (!place) return true;
  findings.add(Rule::yaml_syntax, source.span(*place, 1), "a comment needs a blank in front of it", "put one in");
  return false;
}

/// Runs the parser over one document; false where a finding was raised.
bool parse_one(const SourceText& source, YamlBuilder& builder, report::Findings& findings) {
  try {
    std::string text(source.text());
    if (!text.empty() && text.back() != '\n') text += '\n';  // without it the parser loses blanks at the end of a block text
    std::istringstream stream{std::move(text)};
    YAML::Parser parser(stream);
    bool any = parser.HandleNextDocument(builder);
    NothingMore nothing_more;
    if (any) parser.HandleNextDocument(nothing_more);
    return check_comments(source, builder, findings);
  } catch (const StopReading&) {
    return false;
  } catch (const NothingMore::Found& found) {
    findings.add(Rule::yaml_second_document, source.span(found.place, 1), "something stands after the end of the record",
                 "one file holds one record");
  } catch (const YAML::DeepRecursion&) {
    findings.add(Rule::yaml_depth, source.whole_file(), "nested deeper than " + std::to_string(kMostDepth) + " levels",
                 "make the record flatter");
  } catch (const YAML::Exception& exception) {
    Explainer(source, builder, findings).explain(exception);
  } catch (const std::exception&) {
    findings.add(Rule::yaml_syntax, source.whole_file(), "the file cannot be read as YAML", {});
  }
  return false;
}

bool overlap(const base::Span& one, const base::Span& other) {
  return one.line == other.line && one.column < other.column + other.length && other.column < one.column + one.length;
}

/// Adds the places of all keys and single values that hold one of the bad places.
void refuse_places(const model::Node& node, const std::vector<base::Span>& bad, std::vector<base::Span>& refused) {
  auto refuse_if_bad = [&](const base::Span& span) {
    if (std::any_of(bad.begin(), bad.end(), [&](const base::Span& one) { return overlap(one, span); })) refused.push_back(span);
  };
  if (node.is_scalar()) refuse_if_bad(node.span);
  for (const model::Node& item : node.items) refuse_places(item, bad, refused);
  for (const model::Member& member : node.members) {
    refuse_if_bad(member.key_span);
    refuse_places(member.value, bad, refused);
  }
}

}  // namespace

YamlTree read_yaml(const YamlText& input, report::Findings& findings) {
  const SourceText source(input.text, input.file, input.first_line);
  YamlTree tree;
  if (input.text.size() > kMostRecordBytes) {
    findings.add(Rule::yaml_size, source.whole_file(),
                 "a record of " + std::to_string(input.text.size()) + " bytes, more than " + std::to_string(kMostRecordBytes),
                 "split the record");
    return tree;
  }
  if (!check_encoding(source, findings)) return tree;
  const std::vector<base::Span> bad = check_characters(source, findings);
  if (!check_yaml_lines(source, findings)) return tree;
  YamlBuilder builder(source, findings);
  if (!parse_one(source, builder, findings)) return tree;
  tree.root = builder.take_root();
  tree.refused = builder.refused();
  const bool nothing = !tree.root || (tree.root->type == model::NodeType::null && tree.root->text.empty());
  if (nothing) {
    tree.root.reset();
    findings.add(Rule::yaml_empty, source.whole_file(), "the file says nothing", "write the record, or remove the file");
  } else if (!bad.empty()) {
    refuse_places(*tree.root, bad, tree.refused);
  }
  return tree;
}

}  // namespace benchleaf::read
