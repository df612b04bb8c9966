#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

#include "pdf/file_output.h"

namespace benchleaf::pdf {

/// The entries of a name tree (`/Names`) or number tree (`/Nums`), in the order of their keys.
struct TreeEntries {
  std::string_view list;
  std::size_t count = 0;
  std::function<void(std::string&, std::size_t)> append_key;
  std::function<void(std::string&, std::size_t)> append_value;
};

/// How many objects a tree of so many entries takes.
int tree_objects(std::size_t count);

/// Writes the tree as the objects from `root` on. No array gets longer than PDF/A allows.
void write_tree(FileOutput& out, ObjectNumber root, const TreeEntries& entries);

}  // namespace benchleaf::pdf
