// In: the list of fonts and what goes with them. Out: their bytes and hashes, from the folders of the distribution.

#include "command/font_files.h"

#include <utility>

#include "base/sha256.h"
#include "command/disk_files.h"

namespace benchleaf::command {
namespace {

using report::Rule;

bool read_one(const read::FontEntry& entry, page::FontFile& file, report::Findings& findings) {
  auto bytes = read_file(entry.path);
  if (!bytes) {
    findings.add(Rule::font_file, entry.span, "cannot read " + entry.path, "install the package " + entry.package);
    return false;
  }
  file.file = entry.file;
  file.bytes = std::move(*bytes);
  file.hash = base::sha256(file.bytes);
  if (file.hash != entry.sha256) {
    findings.add(
        Rule::font_version, entry.span, entry.file + " is another than the one recorded: SHA-256 " + file.hash,
        "the book will be set, but not to the same bytes; " + entry.package + " " + entry.version + " has the recorded one");
  }
  return true;
}

}  // namespace

FontBytes read_font_files(const read::FontList& list, report::Findings& findings) {
  FontBytes out;
  for (const auto& entry : list.fonts) {
    const auto face = page::face_named(entry.role);
    if (!face) continue;
    page::FontFile file;
    file.face = *face;
    if (read_one(entry, file, findings)) out.fonts.push_back(std::move(file));
  }
  read_one(list.hyphenation, out.hyphenation, findings);
  read_one(list.profile, out.profile, findings);
  return out;
}

}  // namespace benchleaf::command
