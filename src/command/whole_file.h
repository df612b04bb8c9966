#pragma once

#include <filesystem>
#include <string>

namespace benchleaf::command {

/// Writes the whole file or none of it: beside its place first, then into it, in the place of one that was there. False where it
/// cannot be written. A place that is no file, such as a pipe, is written to as it is.
bool write_file(const std::filesystem::path& path, const std::string& text);

enum class NewFile { written, exists, failed };

/// The same for a file that must not be there yet: what is there stays as it is.
NewFile write_new_file(const std::filesystem::path& path, const std::string& text);

}  // namespace benchleaf::command
