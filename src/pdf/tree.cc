// In: keys and values in order. Out: a tree of one root and, where one array will not do, leaves below it (PDF Reference,
// third edition, 3.8.4 and 3.8.5).
#include "pdf/tree.h"

#include <algorithm>

namespace benchleaf::pdf {

namespace {

/// Entries of a leaf; 8,191 leaves below the root then hold two million.
constexpr std::size_t kLeafEntries = 256;

std::size_t leaves_of(std::size_t count) { return (count + kLeafEntries - 1) / kLeafEntries; }

void append_list(std::string& out, const TreeEntries& entries, std::size_t first, std::size_t last) {
  out += entries.list;
  out += " [";
  for (std::size_t i = first; i < last; ++i) {
    if (i > first) out += '\n';
    entries.append_key(out, i);
    out += ' ';
    entries.append_value(out, i);
  }
  out += ']';
}

void write_leaf(FileOutput& out, ObjectNumber number, const TreeEntries& entries, std::size_t first, std::size_t last) {
  out.begin(number);
  std::string& bytes = out.bytes();
  bytes += "<</Limits [";
  entries.append_key(bytes, first);
  bytes += ' ';
  entries.append_key(bytes, last - 1);
  bytes += "] ";
  append_list(bytes, entries, first, last);
  bytes += ">>";
  out.end();
}

}  // namespace

int tree_objects(std::size_t count) { return count <= kLeafEntries ? 1 : 1 + static_cast<int>(leaves_of(count)); }

void write_tree(FileOutput& out, ObjectNumber root, const TreeEntries& entries) {
  out.begin(root);
  std::string& bytes = out.bytes();
  bytes += "<<";
  if (tree_objects(entries.count) == 1) {
    append_list(bytes, entries, 0, entries.count);
    bytes += ">>";
    out.end();
    return;
  }
  const int leaves = static_cast<int>(leaves_of(entries.count));
  bytes += "/Kids [";
  for (int leaf = 1; leaf <= leaves; ++leaf) {
    if (leaf > 1) bytes += ' ';
    append_reference(bytes, root + leaf);
  }
  bytes += "]>>";
  out.end();
  for (int leaf = 1; leaf <= leaves; ++leaf) {
    const std::size_t first = static_cast<std::size_t>(leaf - 1) * kLeafEntries;
    write_leaf(out, root + leaf, entries, first, std::min(first + kLeafEntries, entries.count));
  }
}

}  // namespace benchleaf::pdf
