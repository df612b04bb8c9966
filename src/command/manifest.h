#pragma once

#include <cstddef>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "command/font_files.h"
#include "model/records/handbook.h"
#include "page/sheet/fit.h"

namespace benchleaf::command {

using Files = std::map<std::string, std::string>;  ///< name in the folder, bytes

/// What a run made, before any of it is written.
struct Bound {
  Files files;
  std::map<std::string, std::string> kept;  ///< SHA-256 of files of an earlier run that this one leaves as they are, by name
  FontBytes fonts;
  std::vector<std::string> remarks;  ///< how large the charts came out
};

/// MANIFEST: what was written, from what: edition, fonts and hyphenation patterns with their hashes, remarks, every file with its
/// SHA-256, in order, those of an earlier run as `kept`.
std::string manifest_text(const model::Handbook& handbook, const Bound& bound);

/// The names of the files that a manifest lists; empty for a text that is none.
std::set<std::string> files_of_manifest(const std::string& manifest);

/// `chart-cells-a3.pdf side 1 words 12.40 pt numbers 19.93 pt columns 3 limited by "By size"`
std::string fit_text(const std::string& file, std::size_t side, const page::SheetFit& fit);

}  // namespace benchleaf::command
