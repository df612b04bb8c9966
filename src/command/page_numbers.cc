// In: the content, the A4 handbook. Out: the file by which find names pages without setting the book, and what it says.

#include "command/page_numbers.h"

#include <sstream>
#include <vector>

#include "base/sha256.h"
#include "command/disk_files.h"
#include "command/output_folder.h"
#include "command/schema_folder.h"

namespace benchleaf::command {
namespace {

constexpr std::string_view kHead = "benchleaf-pages 1";
constexpr const char* kOutput = "out";

void add_folder(const std::filesystem::path& folder, std::string& text) {
  const DiskFiles files(folder);
  const auto list = files.list();
  if (!list) return;
  for (const auto& file : *list) {
    if (const auto bytes = files.read(file.path)) text += file.path + "\n" + std::to_string(bytes->size()) + "\n" + *bytes;
  }
}

}  // namespace

std::string content_mark(const CommonOptions& options) {
  std::string text;
  add_folder(find_content(options.content), text);
  for (const std::string& overlay : options.overlays) add_folder(overlay, text);
  return base::sha256(text);
}

std::string page_numbers_text(const std::string& mark, const std::map<std::string, std::string>& pages) {
  std::string text = std::string(kHead) + "\ncontent " + mark + "\n";
  for (const auto& [record, page] : pages) text += record + " " + page + "\n";
  return text;
}

std::function<std::string(const std::string&)> page_numbers(const CommonOptions& options) {
  const auto none = [](const std::string&) { return std::string(); };
  const auto file = read_file(std::filesystem::path(kOutput) / kBookFolder / kPageNumbersName);
  if (!file) return none;
  std::istringstream lines(*file);
  std::string head, mark;
  std::getline(lines, head);
  std::getline(lines, mark);
  if (head != kHead || mark != "content " + content_mark(options)) return none;
  std::map<std::string, std::string> pages;
  for (std::string record, page; lines >> record >> page;) pages.emplace(record, page);
  return [pages](const std::string& record) {
    const auto found = pages.find(record);
    return found == pages.end() ? std::string() : found->second;
  };
}

}  // namespace benchleaf::command
