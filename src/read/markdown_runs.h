#pragma once

#include <string>
#include <string_view>

#include <cmark-gfm.h>

#include "model/book.h"
#include "read/source_text.h"
#include "report/finding.h"

namespace benchleaf::read {

struct MarkdownPage;

/// The first line of a block.
base::Span line_span(const SourceText& source, cmark_node* block);

/// Inline text to runs. Links are looked up in the text in their order, since the parser does not place them well.
class RunReader {
 public:
  /// `clean`: the page as it stands in the file holds no character that a reader cannot see.
  RunReader(const SourceText& source, bool clean, report::Findings& findings, MarkdownPage& page)
      : source_(source), clean_(clean), findings_(findings), page_(page) {}

  /// The runs of a paragraph, heading or cell.
  model::Runs of(cmark_node* block);

 private:
  void inline_text(cmark_node* node, model::Style style, const std::string& target, int depth, model::Runs& out);
  void children(cmark_node* node, model::Style style, const std::string& target, int depth, model::Runs& out);
  void words(cmark_node* node, model::Style style, const std::string& target, model::Runs& out);
  void link(cmark_node* node, model::Style style, int depth, model::Runs& out);
  void record_link(cmark_node* node, const std::string& address, model::Style style, int depth, model::Runs& out);
  base::Span place_of(const std::string& address);
  void refuse(report::Rule rule, base::Span where, std::string message, std::string hint);

  const SourceText& source_;
  const bool clean_;
  report::Findings& findings_;
  MarkdownPage& page_;
  base::Span block_;          ///< line of the block that is read
  std::size_t searched_ = 0;  ///< bytes in which links have been found
};

}  // namespace benchleaf::read
