#pragma once

#include <map>
#include <string>
#include <vector>

namespace benchleaf::test {

using ContentText = std::map<std::string, std::string>;  ///< the files of a content folder by their paths

/// One change that a contributor may rightly make: the file of that path then reads so.
struct Edit {
  std::string what;
  std::string path;
  std::string text;
};

/// 300 legitimate edits of a content folder, the same for the same content.
std::vector<Edit> legitimate_edits(const ContentText& content);

}  // namespace benchleaf::test
