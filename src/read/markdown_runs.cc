// In: the inline nodes of one block. Out: runs of text with style, links to records and facts.
#include "read/markdown_runs.h"

#include <optional>
#include <utility>

#include "model/record.h"
#include "read/markdown.h"
#include "read/shape_words.h"
#include "read/yaml_bytes.h"

namespace benchleaf::read {

namespace {

using model::Style;
using report::Rule;

constexpr int kMostNesting = 32;

std::string_view literal(cmark_node* node) {
  const char* text = cmark_node_get_literal(node);
  return text == nullptr ? std::string_view() : std::string_view(text);
}

bool is_outside(std::string_view address) {
  return address.substr(0, 8) == "https://" || address.substr(0, 7) == "http://" || address.substr(0, 7) == "mailto:";
}

/// Adds text, to the run before where nothing but the words differs.
void add_text(model::Runs& out, std::string_view text, Style style, const std::string& target) {
  bool joins = !out.empty() && out.back().kind == model::Run::Kind::text && out.back().style == style &&
               out.back().target == target && out.back().fact.empty();
  if (joins) {
    out.back().text += text;
  } else {
    out.push_back(model::link_run(std::string(text), target, style));
  }
}

}  // namespace

base::Span line_span(const SourceText& source, cmark_node* block) {
  const int line = cmark_node_get_start_line(block);
  const std::size_t index = line < 1 ? 0 : static_cast<std::size_t>(line) - 1;
  if (index >= source.line_count()) return source.whole_file();
  const std::string_view text = source.line(index);
  const std::size_t blank = text.find_first_not_of(" \t");
  const std::size_t start = blank == std::string_view::npos ? 0 : blank;
  return source.span(source.line_start(index) + start, text.size() - start);
}

void RunReader::refuse(Rule rule, base::Span where, std::string message, std::string hint) {
  page_.whole = false;
  findings_.add(rule, where, std::move(message), std::move(hint));
}

model::Runs RunReader::of(cmark_node* block) {
  model::Runs runs;
  const int line = cmark_node_get_start_line(block);
  if (line >= 1) {
    block_ = line_span(source_, block);
    const std::size_t index = static_cast<std::size_t>(line) - 1;
    if (index < source_.line_count()) searched_ = std::max(searched_, source_.line_start(index));
  }
  children(block, Style::plain, {}, 0, runs);
  return runs;
}

void RunReader::children(cmark_node* node, Style style, const std::string& target, int depth, model::Runs& out) {
  for (cmark_node* child = cmark_node_first_child(node); child != nullptr; child = cmark_node_next(child)) {
    inline_text(child, style, target, depth + 1, out);
  }
}

/// An entity can bring in what may not stand in the file itself: &#8203; hides as well as the sign.
void RunReader::words(cmark_node* node, Style style, const std::string& target, model::Runs& out) {
  const std::string_view text = literal(node);
  add_text(out, text, style, target);
  if (!clean_) return;
  std::optional<CharacterFault> fault = find_character_fault(text);
  if (fault) refuse(fault->rule, block_, std::move(fault->message) + ", by an entity", std::move(fault->hint));
}

void RunReader::inline_text(cmark_node* node, Style style, const std::string& target, int depth, model::Runs& out) {
  if (depth > kMostNesting) {
    return refuse(Rule::markdown_depth, block_, "emphasis nested deeper than " + std::to_string(kMostNesting), {});
  }
  switch (cmark_node_get_type(node)) {
    case CMARK_NODE_TEXT: return words(node, style, target, out);
    case CMARK_NODE_SOFTBREAK: return add_text(out, " ", style, target);
    case CMARK_NODE_CODE: return add_text(out, literal(node), style | Style::code, target);
    case CMARK_NODE_EMPH: return children(node, style | Style::italic, target, depth, out);
    case CMARK_NODE_STRONG: return children(node, style | Style::bold, target, depth, out);
    case CMARK_NODE_LINK: return link(node, style, depth, out);
    case CMARK_NODE_LINEBREAK: {
      model::Run line_break;
      line_break.kind = model::Run::Kind::line_break;
      out.push_back(std::move(line_break));
      return;
    }
    case CMARK_NODE_IMAGE:
      return refuse(Rule::markdown_image, block_, "found an image, which pages do not use",
                    "figures are drawn from data: ask for one with a bench block");
    default: return refuse(Rule::markdown_html, block_, "found raw HTML, which pages do not use", "write it as Markdown");
  }
}

/// The next place after the last link where this address stands, or the block's line where it is written in another way.
base::Span RunReader::place_of(const std::string& address) {
  const std::size_t place = address.empty() ? std::string_view::npos : source_.text().find(address, searched_);
  if (place == std::string_view::npos) return block_;
  searched_ = place + address.size();
  return source_.span(place, address.size());
}

void RunReader::link(cmark_node* node, Style style, int depth, model::Runs& out) {
  const char* url = cmark_node_get_url(node);
  const std::string address = url == nullptr ? std::string() : std::string(url);
  if (!is_outside(address)) return record_link(node, address, style, depth, out);
  // a printed page cannot be clicked, and the handbook opens with no network: the address is set as words
  model::Runs words;
  children(node, style, {}, depth, words);
  const bool same = model::plain_text(words) == address;
  out.insert(out.end(), words.begin(), words.end());
  if (!same) add_text(out, " (" + address + ")", style, {});
}

void RunReader::record_link(cmark_node* node, const std::string& address, Style style, int depth, model::Runs& out) {
  const base::Span where = place_of(address);
  const model::RecordRef record(model::FactId(address).record);
  const bool asks_fact = record.text().size() < address.size();
  if (!record.kind()) {
    return refuse(Rule::markdown_link, where, "found a link to " + in_marks(address) + ", expected KIND/ID or KIND/ID#FACT",
                  "link to a record, or write an outside address with https://");
  }
  page_.references.push_back({{}, record, {}, where, asks_fact ? address : std::string()});
  if (!asks_fact) return children(node, style, record, depth, out);
  model::Runs words;
  children(node, style, record, depth, words);
  if (words.empty()) words.push_back(model::link_run({}, record, style));
  for (model::Run& run : words) run.fact = address;
  out.insert(out.end(), words.begin(), words.end());
}

}  // namespace benchleaf::read
