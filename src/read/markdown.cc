// In: the body of a page. Out: its blocks as the book knows them, requests for derived blocks, and the records named.
// The parser is cmark-gfm with its table extension alone: its autolinks make wrong links of part numbers, and pages are
// guarded before it sees them (markdown_guard.h).
#include "read/markdown.h"

#include <memory>
#include <string>
#include <utility>

#include <cmark-gfm-core-extensions.h>
#include <cmark-gfm-extension_api.h>
#include <cmark-gfm.h>

#include "read/markdown_guard.h"
#include "read/markdown_runs.h"
#include "read/source_text.h"
#include "read/yaml_bytes.h"
#include "read/yaml_reader.h"

namespace benchleaf::read {

namespace {

using model::Block;
using model::Blocks;
using report::Rule;

constexpr int kMostNesting = 32;

struct NodeFree {
  void operator()(cmark_node* node) const { cmark_node_free(node); }
};
struct ParserFree {
  void operator()(cmark_parser* parser) const { cmark_parser_free(parser); }
};
using Tree = std::unique_ptr<cmark_node, NodeFree>;

Tree parse(std::string_view text) {
  cmark_gfm_core_extensions_ensure_registered();
  std::unique_ptr<cmark_parser, ParserFree> parser(cmark_parser_new(CMARK_OPT_DEFAULT));
  cmark_parser_attach_syntax_extension(parser.get(), cmark_find_syntax_extension("table"));
  cmark_parser_feed(parser.get(), text.data(), text.size());
  return Tree(cmark_parser_finish(parser.get()));
}

std::string_view type_name(cmark_node* node) { return cmark_node_get_type_string(node); }

std::string_view literal(cmark_node* node) {
  const char* text = cmark_node_get_literal(node);
  return text == nullptr ? std::string_view() : std::string_view(text);
}

/// Walks the blocks of one page.
class PageWalker {
 public:
  PageWalker(const SourceText& source, report::Findings& findings, MarkdownPage& page)
      : source_(source), findings_(findings), page_(page), runs_(source, page.whole, findings, page) {}

  void walk(cmark_node* document) {
    for (cmark_node* node = cmark_node_first_child(document); node != nullptr; node = cmark_node_next(node)) {
      if (is_request(node)) {
        request(node);
        continue;
      }
      Blocks blocks;
      block(node, blocks, 0);
      for (Block& one : blocks) page_.parts.emplace_back(std::move(one));
    }
  }

 private:
  static bool is_request(cmark_node* node) {
    if (cmark_node_get_type(node) != CMARK_NODE_CODE_BLOCK) return false;
    return std::string_view(cmark_node_get_fence_info(node)) == "bench";
  }

  void refuse(Rule rule, cmark_node* node, std::string message, std::string hint) {
    page_.whole = false;
    findings_.add(rule, line_span(source_, node), std::move(message), std::move(hint));
  }

  void request(cmark_node* node) {
    std::string_view text = literal(node);
    // The last line break belongs to the fence: behind it lies a line that a page with an open fence does not have.
    if (text.ends_with('\n')) text.remove_suffix(1);
    const int line = line_span(source_, node).line;
    YamlTree tree = read_yaml({text, source_.file(), line + 1}, findings_);
    if (!tree.root || !tree.refused.empty()) {
      page_.whole = false;
      return;
    }
    page_.parts.emplace_back(model::DerivedRequest{std::move(*tree.root), line_span(source_, node)});
  }

  void block(cmark_node* node, Blocks& out, int depth) {
    if (depth > kMostNesting) {
      if (std::exchange(told_depth_, true)) return;
      return refuse(Rule::markdown_depth, node, "lists and quotations nested deeper than " + std::to_string(kMostNesting),
                    "make the text flatter");
    }
    const cmark_node_type type = cmark_node_get_type(node);
    if (type == CMARK_NODE_PARAGRAPH) {
      out.push_back({model::Paragraph{runs_.of(node), model::Paragraph::Role::body}});
    } else if (type == CMARK_NODE_HEADING) {
      heading(node, out);
    } else if (type == CMARK_NODE_LIST) {
      list(node, out, depth);
    } else if (type == CMARK_NODE_BLOCK_QUOTE) {
      quotation(node, out, depth);
    } else if (type == CMARK_NODE_CODE_BLOCK) {
      code(node, out);
    } else if (type_name(node) == "table") {
      table(node, out);
    } else if (type == CMARK_NODE_HTML_BLOCK) {
      refuse(Rule::markdown_html, node, "found raw HTML, which pages do not use", "write it as Markdown");
    } else {
      refuse(Rule::markdown_construct, node, "found a horizontal rule, which pages do not use",
             "begin a section with a heading instead");
    }
  }

  /// The title of a page stands in its head, so sections begin at level 2, and no level is left out on the way down.
  void heading(cmark_node* node, Blocks& out) {
    const int level = cmark_node_get_heading_level(node);
    if (level < 2 || level > 4) {
      return refuse(Rule::markdown_heading, node, "found a heading of level " + std::to_string(level) + ", expected 2 to 4",
                    "the title stands in the head of the page; begin sections with ##");
    }
    if (level > last_level_ + 1) {
      return refuse(Rule::markdown_heading, node,
                    "found a heading of level " + std::to_string(level) + " under one of level " + std::to_string(last_level_),
                    "use level " + std::to_string(last_level_ + 1));
    }
    last_level_ = level;
    out.push_back({model::Heading{level, runs_.of(node), {}}});
  }

  void list(cmark_node* node, Blocks& out, int depth) {
    model::List list;
    list.ordered = cmark_node_get_list_type(node) == CMARK_ORDERED_LIST;
    for (cmark_node* item = cmark_node_first_child(node); item != nullptr; item = cmark_node_next(item)) {
      Blocks blocks;
      children(item, blocks, depth + 1);
      list.items.push_back(std::move(blocks));
    }
    out.push_back({std::move(list)});
  }

  void children(cmark_node* node, Blocks& out, int depth) {
    for (cmark_node* child = cmark_node_first_child(node); child != nullptr; child = cmark_node_next(child)) {
      if (is_request(child)) {
        refuse(Rule::markdown_construct, child, "found a derived block inside a list or a quotation",
               "move it out to the margin of the page");
      } else {
        block(child, out, depth);
      }
    }
  }

  /// A quotation is how a page writes a note.
  void quotation(cmark_node* node, Blocks& out, int depth) {
    Blocks blocks;
    children(node, blocks, depth + 1);
    for (Block& one : blocks) {
      if (auto* paragraph = std::get_if<model::Paragraph>(&one.what)) paragraph->role = model::Paragraph::Role::note;
      out.push_back(std::move(one));
    }
  }

  void code(cmark_node* node, Blocks& out) {
    model::Paragraph paragraph;
    std::string_view text = literal(node);
    while (!text.empty()) {
      const std::size_t end = text.find('\n');
      if (!paragraph.runs.empty()) {
        model::Run line_break;
        line_break.kind = model::Run::Kind::line_break;
        paragraph.runs.push_back(std::move(line_break));
      }
      paragraph.runs.push_back(model::text_run(std::string(text.substr(0, end)), model::Style::code));
      text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
    }
    out.push_back({std::move(paragraph)});
  }

  static model::Column::Align alignment(std::uint8_t sign) {
    if (sign == 'c') return model::Column::Align::centre;
    return sign == 'r' ? model::Column::Align::right : model::Column::Align::left;
  }

  void table(cmark_node* node, Blocks& out) {
    model::Table table;
    const std::uint8_t* signs = cmark_gfm_extensions_get_table_alignments(node);
    const std::size_t columns = cmark_gfm_extensions_get_table_columns(node);
    for (cmark_node* row = cmark_node_first_child(node); row != nullptr; row = cmark_node_next(row)) {
      const bool head = cmark_gfm_extensions_get_table_row_is_header(row) != 0;
      model::TableRow cells;
      for (cmark_node* cell = cmark_node_first_child(row); cell != nullptr; cell = cmark_node_next(cell)) {
        model::Runs runs = runs_.of(cell);
        if (head) {
          model::Column column;
          column.head = std::move(runs);
          column.align = alignment(signs[table.columns.size()]);
          table.columns.push_back(std::move(column));
        } else {
          cells.cells.push_back({std::move(runs), nullptr});
        }
      }
      cells.cells.resize(head ? 0 : columns);
      if (!head) table.rows.push_back(std::move(cells));
    }
    out.push_back({std::move(table)});
  }

  const SourceText& source_;
  report::Findings& findings_;
  MarkdownPage& page_;
  RunReader runs_;
  int last_level_ = 1;
  bool told_depth_ = false;
};

}  // namespace

MarkdownPage read_markdown(const MarkdownText& input, report::Findings& findings) {
  MarkdownPage page;
  const SourceText source(input.text, input.file, input.first_line);
  if (!check_markdown_size(source, findings)) {
    page.whole = false;
    return page;
  }
  page.whole = check_characters(source, findings).empty();
  Tree tree = parse(input.text);
  PageWalker(source, findings, page).walk(tree.get());
  return page;
}

}  // namespace benchleaf::read
