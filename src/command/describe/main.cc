// In: the folder of shapes, version, date. Out: what goes with the program and says nothing of its own: completions and the
// manual. Run by the build: benchleaf_describe SHAPES VERSION DATE OUT.

#include <cstdio>
#include <exception>
#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "command/completion.h"
#include "command/disk_files.h"
#include "command/manual.h"
#include "command/whole_file.h"
#include "model/record.h"

namespace {

using namespace benchleaf;
namespace fs = std::filesystem;

std::vector<command::RecordShape> read_all(const fs::path& shapes) {
  std::vector<command::RecordShape> all;
  for (const model::Kind kind : model::all_kinds()) {
    const auto json = command::read_file(shapes / (std::string(model::kind_name(kind)) + ".schema.json"));
    auto shape = json ? command::read_record_shape(*json) : std::nullopt;
    if (shape) all.push_back(std::move(*shape));
  }
  return all;
}

int describe(const fs::path& shape_folder, const command::ManualHead& head, const fs::path& out) {
  const auto shapes = read_all(shape_folder);
  if (shapes.size() != model::all_kinds().size()) {
    std::fprintf(stderr, "benchleaf_describe: a shape is missing in %s\n", shape_folder.c_str());
    return 1;
  }
  const std::pair<const char*, std::string> files[] = {{"benchleaf.bash", command::bash_completion()},
                                                       {"_benchleaf", command::zsh_completion()},
                                                       {"benchleaf.1", command::program_manual(head)},
                                                       {"benchleaf-record.5", command::record_manual(head, shapes)}};
  for (const auto& [name, text] : files) {
    if (command::write_file(out / name, text)) continue;
    std::fprintf(stderr, "benchleaf_describe: %s cannot be written\n", name);
    return 1;
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    constexpr int kWords = 5;
    if (argc == kWords) return describe(argv[1], {argv[2], argv[3]}, argv[4]);
    std::fputs("usage: benchleaf_describe SHAPES VERSION DATE OUT\n", stderr);
  } catch (const std::exception& fault) {
    std::fprintf(stderr, "benchleaf_describe: %s\n", fault.what());
  }
  return 1;
}
