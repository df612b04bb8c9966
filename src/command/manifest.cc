// In: the files of one run. Out: the list by which anybody can check them.

#include "command/manifest.h"

#include "base/sha256.h"

namespace benchleaf::command {

std::string manifest_text(const model::Handbook& handbook, const FontBytes& fonts,
                          const std::map<std::string, std::string>& files) {
  std::string text = "benchleaf-manifest 1\n";
  text += "title " + handbook.title + "\n";
  text += "edition " + handbook.edition + "\n";
  text += "date " + handbook.date + "\n";
  text += std::string("program benchleaf ") + BENCHLEAF_VERSION + "\n";
  for (const auto& font : fonts.fonts) text += "font " + font.hash + " " + font.file + "\n";
  if (!fonts.profile.hash.empty()) text += "profile " + fonts.profile.hash + " " + fonts.profile.file + "\n";
  for (const auto& [name, bytes] : files) text += "file " + base::sha256(bytes) + " " + name + "\n";
  return text;
}

}  // namespace benchleaf::command
