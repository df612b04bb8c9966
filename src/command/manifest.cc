// In: the files of one run. Out: the list by which anybody can check them.

#include "command/manifest.h"

#include <sstream>
#include <vector>

#include "base/number.h"
#include "base/sha256.h"
#include "read/two_threads.h"

namespace benchleaf::command {

namespace {

std::string points(double value) { return base::fixed_text(value, 2); }

/// Empty where the run had no use for the file.
std::string file_line(const std::string& what, const page::FontFile& file) {
  return file.hash.empty() ? std::string() : what + " " + file.hash + " " + file.file + "\n";
}

/// One line a file, in the order of their names. Twenty megabytes are hashed, so on both threads.
std::string lines_of(const Files& files) {
  std::vector<Files::const_iterator> each;
  for (auto file = files.begin(); file != files.end(); ++file) each.push_back(file);
  std::vector<std::string> lines(each.size());
  read::on_two_threads(each.size(),
                       [&](std::size_t i) { lines[i] = "file " + base::sha256(each[i]->second) + " " + each[i]->first + "\n"; });
  std::string text;
  for (const std::string& line : lines) text += line;
  return text;
}

}  // namespace

std::string manifest_text(const model::Handbook& handbook, const Bound& bound) {
  std::string text = "benchleaf-manifest 1\n";
  text += "title " + handbook.title + "\n";
  text += "edition " + handbook.edition + "\n";
  text += "date " + handbook.date + "\n";
  text += std::string("program benchleaf ") + BENCHLEAF_VERSION + "\n";
  for (const auto& font : bound.fonts.fonts) text += file_line("font", font);
  text += file_line("hyphenation", bound.fonts.hyphenation) + file_line("profile", bound.fonts.profile);
  for (const std::string& remark : bound.remarks) text += "type " + remark + "\n";
  text += lines_of(bound.files);
  for (const auto& [name, hash] : bound.kept) text += "kept " + hash + " " + name + "\n";
  return text;
}

std::set<std::string> files_of_manifest(const std::string& manifest) {
  std::set<std::string> names;
  std::istringstream lines(manifest);
  std::string line;
  if (!std::getline(lines, line) || line.rfind("benchleaf-manifest ", 0) != 0) return names;
  while (std::getline(lines, line)) {
    std::istringstream words(line);
    std::string word, hash, name;
    if (words >> word >> hash && std::getline(words >> std::ws, name) && (word == "file" || word == "kept")) names.insert(name);
  }
  return names;
}

std::string fit_text(const std::string& file, std::size_t side, const page::SheetFit& fit) {
  std::string text = file + " side " + std::to_string(side) + " words " + points(fit.words_pt) + " pt numbers " +
                     points(fit.words_pt * page::kNumberScale) + " pt columns " + std::to_string(fit.columns) + " covers " +
                     std::to_string(static_cast<int>(fit.covered * 100)) + " % limited by";
  for (const std::string& panel : fit.limited_by) text += " \"" + panel + "\"";
  if (!fit.dropped.empty()) text += " no room for";
  for (const std::string& panel : fit.dropped) text += " \"" + panel + "\"";
  return text;
}

}  // namespace benchleaf::command
