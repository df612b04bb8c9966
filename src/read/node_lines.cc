// In and out: a tree and its line format.
//   depth type key text        (type: one of the letters below; key: of a member; text: of a scalar)
// Parts stand between tabs, as base/line_parts.h writes them.
#include "read/node_lines.h"

#include <cstddef>
#include <utility>

#include "base/line_parts.h"
#include "base/number.h"

namespace benchleaf::read {

namespace {

using model::Node;
using model::NodeType;

constexpr std::size_t kParts = 4;
constexpr std::string_view kTypes = "-bins[{";  // in the order of NodeType
constexpr char kQuoted = 'q';
constexpr std::size_t kDeepest = 64;

std::string type_letter(const Node& node) {
  if (node.type == NodeType::string && node.quoted) return {kQuoted};
  return {kTypes.at(static_cast<std::size_t>(node.type))};
}

void add_lines(const Node& node, std::size_t depth, std::string_view key, std::string& lines) {
  lines += base::line_of({std::to_string(depth), type_letter(node), key, node.text}) + "\n";
  for (const Node& item : node.items) add_lines(item, depth + 1, {}, lines);
  for (const model::Member& member : node.members) add_lines(member.value, depth + 1, member.key, lines);
}

/// One line, taken apart.
struct Line {
  std::size_t depth = 0;
  std::string key;
  Node node;
};

std::optional<Line> read_line(std::string_view text, base::Span place) {
  std::vector<std::string> parts = base::parts_of(text);
  if (parts.size() != kParts || parts[1].size() != 1) return std::nullopt;
  const auto depth = base::parse_decimal(parts[0]);
  if (!depth || *depth < 0 || *depth > static_cast<double>(kDeepest)) return std::nullopt;
  Line line{static_cast<std::size_t>(*depth), std::move(parts[2]), {}};
  const char letter = parts[1].front();
  const std::size_t type = kTypes.find(letter == kQuoted ? 's' : letter);
  if (type == std::string_view::npos) return std::nullopt;
  line.node.type = static_cast<NodeType>(type);
  line.node.quoted = letter == kQuoted;
  line.node.text = std::move(parts[3]);
  line.node.span = place;
  return line;
}

/// Takes lines one by one; each closes what stands deeper than itself.
class TreeReader {
 public:
  bool take(Line line) {
    if (open_.empty() ? line.depth != 0 : line.depth == 0 || line.depth > open_.size()) return false;
    while (open_.size() > line.depth) close();
    const bool fits = open_.empty() || !open_.back().node.is_scalar();
    open_.push_back(std::move(line));
    return fits;
  }

  std::optional<Node> tree() {
    if (open_.empty()) return std::nullopt;
    while (open_.size() > 1) close();
    return std::move(open_.front().node);
  }

 private:
  void close() {
    Line done = std::move(open_.back());
    open_.pop_back();
    Node& parent = open_.back().node;
    if (parent.type == NodeType::sequence)
      parent.items.push_back(std::move(done.node));
    else
      parent.members.push_back({std::move(done.key), done.node.span, std::move(done.node)});
  }

  std::vector<Line> open_;  ///< the way from the root to the last line
};

}  // namespace

std::string node_lines(const Node& root) {
  std::string lines;
  add_lines(root, 0, {}, lines);
  return lines;
}

std::optional<Node> read_node_lines(std::string_view lines, base::FileId file, int first_line) {
  TreeReader reader;
  for (int number = first_line; !lines.empty(); ++number) {
    auto line = read_line(base::take_line(lines), {file, number, 1, 1});
    if (!line || !reader.take(std::move(*line))) return std::nullopt;
  }
  return reader.tree();
}

std::vector<std::string> node_line_paths(std::string_view lines) {
  std::vector<std::string> paths;
  std::vector<std::string> way;         // path of each open value
  std::vector<std::size_t> items = {};  // how many values each has had
  while (!lines.empty()) {
    const auto line = read_line(base::take_line(lines), {});
    if (!line || line->depth > way.size()) break;
    way.resize(line->depth);
    items.resize(line->depth);
    std::string path;
    if (!way.empty()) {
      const std::string step = line->key.empty() ? std::to_string(items.back()) : line->key;
      path = way.back().empty() ? step : way.back() + "." + step;
      ++items.back();
    }
    way.push_back(path);
    items.push_back(0);
    paths.push_back(std::move(path));
  }
  return paths;
}

}  // namespace benchleaf::read
