#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/mark.h>

#include "model/node.h"
#include "read/source_text.h"
#include "report/finding.h"

namespace benchleaf::read {

inline constexpr std::size_t kMostDepth = 64;
inline constexpr std::size_t kMostNodes = 100000;

/// Words of the one finding that both an alias and an alias without an anchor give.
inline constexpr std::string_view kAliasFound = "found an alias (*), which records do not use";
inline constexpr std::string_view kAliasHint = "write the value out, or put the text in quotes";

/// Thrown through yaml-cpp when a finding has been added after which nothing more of the file can be read.
struct StopReading {};

/// Takes the events of one document and builds the positioned tree of the subset. Each refusal is one finding; those
/// after which the rest still makes sense (a duplicate key, 010) go on, the others throw StopReading.
class YamlBuilder final : public YAML::EventHandler {
 public:
  YamlBuilder(const SourceText& source, report::Findings& findings) : source_(source), findings_(findings) {}

  std::optional<model::Node> take_root() { return std::move(root_); }
  const std::vector<base::Span>& refused() const { return refused_; }

  /// Stretches of the text that are scalars, in their order.
  const std::vector<std::pair<std::size_t, std::size_t>>& scalars() const { return scalars_; }
  /// Where the innermost list or mapping in brackets opened that is not closed yet.
  std::optional<std::size_t> open_bracket() const;
  /// Place after the last scalar that was read.
  std::size_t last_end() const { return last_end_; }
  /// Place of the last scalar that was read, and whether it stood in quotes.
  std::size_t last_start() const { return last_start_; }
  bool last_quoted() const { return last_quoted_; }

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override;
  void OnAlias(const YAML::Mark& mark, YAML::anchor_t anchor) override;
  void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor, const std::string& value) override;
  void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value style) override;
  void OnSequenceEnd() override { close(); }
  void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value style) override;
  void OnMapEnd() override { close(); }
  void OnAnchor(const YAML::Mark& mark, const std::string& name) override;

 private:
  /// A list or mapping that is not closed yet.
  struct Frame {
    model::Node node;
    std::size_t place = 0;
    int column = 0;     ///< bytes in front of its first key or dash
    bool flow = false;  ///< in brackets
    bool told_indent = false;
    bool has_key = false;     ///< a key waits for its value
    bool drop_value = false;  ///< the key was refused, so its value is
    std::string key;
    base::Span key_span;
    std::map<std::string, base::Span, std::less<>> keys;
  };

  [[noreturn]] void stop(report::Rule rule, base::Span where, std::string message, std::string hint);
  /// What holds for every node: no tag, not too many, indented under its bracket.
  void check_node(std::size_t place, int column, const std::string& tag);
  void check_flow_indent(std::size_t place, int column);
  void open(model::NodeType type, const YAML::Mark& mark, const std::string& tag, bool flow);
  void close();
  bool wants_key() const;
  void take_key(const std::string& text, base::Span span);
  void add(model::Node node);
  model::Node plain(const std::string& value, std::size_t place);
  model::Node in_quotes(const std::string& value, std::size_t place);
  bool take_decimal_comma();
  void check_quoted(std::size_t place, std::size_t end);
  void check_block_head(std::size_t place);
  void check_escaped(const std::string& value, base::Span where);
  /// Column of the innermost list or mapping that is not in brackets, or -1.
  int block_column() const;
  base::Span empty_place(std::size_t place) const;

  const SourceText& source_;
  report::Findings& findings_;
  std::optional<model::Node> root_;
  std::vector<Frame> frames_;
  std::vector<base::Span> refused_;
  std::vector<std::pair<std::size_t, std::size_t>> scalars_;
  std::size_t nodes_ = 0;
  std::size_t last_start_ = 0;
  std::size_t last_end_ = 0;
  bool last_quoted_ = false;
};

}  // namespace benchleaf::read
