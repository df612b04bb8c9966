// In: the files of one run. Out: the list by which anybody can check them.

#include "command/manifest.h"

#include "base/number.h"
#include "base/sha256.h"

namespace benchleaf::command {

namespace {

std::string points(double value) { return base::fixed_text(value, 2); }

/// Empty where the run had no use for the file.
std::string file_line(const std::string& what, const page::FontFile& file) {
  return file.hash.empty() ? std::string() : what + " " + file.hash + " " + file.file + "\n";
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
  for (const auto& [name, bytes] : bound.files) text += "file " + base::sha256(bytes) + " " + name + "\n";
  return text;
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
