#pragma once

#include <algorithm>
#include <array>
#include <cstdio>
#include <memory>
#include <string>
#include <vector>

namespace benchleaf::base {

/// What another program printed, line by line; empty where it cannot be run. The tests that use it need the tool.
inline std::vector<std::string> lines_of(const std::string& command) {
  struct Close {
    void operator()(std::FILE* pipe) const { pclose(pipe); }
  };
  const std::unique_ptr<std::FILE, Close> pipe(popen(command.c_str(), "r"));
  std::vector<std::string> lines;
  if (!pipe) return lines;
  std::string text;
  std::array<char, 4096> chunk{};
  while (const std::size_t read = std::fread(chunk.data(), 1, chunk.size(), pipe.get())) text.append(chunk.data(), read);
  for (std::size_t start = 0; start < text.size();) {
    const std::size_t end = std::min(text.find('\n', start), text.size());
    lines.push_back(text.substr(start, end - start));
    start = end + 1;
  }
  return lines;
}

}  // namespace benchleaf::base
