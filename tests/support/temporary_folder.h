// In: a word that tells whose folder it is. Out: a new empty folder below the system's temporary one, removed with the object.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>

namespace benchleaf::test {

class TemporaryFolder {
 public:
  /// Throws std::runtime_error when there is no room or no right to make a folder.
  explicit TemporaryFolder(const std::string& owner) {
    constexpr std::size_t kPlaceholders = 6;  // what mkdtemp asks for at the end of the name
    std::string name =
        (std::filesystem::temp_directory_path() / ("benchleaf-" + owner + "-")).string() + std::string(kPlaceholders, 'X');
    if (mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for " + owner);
    path_ = name;
  }
  ~TemporaryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

}  // namespace benchleaf::test
