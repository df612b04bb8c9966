#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <variant>

#include "base/span.h"
#include "command/options.h"
#include "derive/derive.h"
#include "model/knowledge_base.h"
#include "model/tables.h"
#include "read/table_reader.h"
#include "report/finding.h"

namespace benchleaf::command {

/// What lies ready after reading, deriving and proving. Findings say what is wrong with it.
struct Workbench {
  std::filesystem::path schema;  ///< the folder of shapes and tables
  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  read::FontList fonts;
  model::KnowledgeBase base;
  derive::Derived derived;
};

/// One line for stderr: why nothing could be read at all.
struct Unreadable {
  std::string why;
};

/// Files of elsewhere by the path below the content that they stand for: `watch/quillfen-d-001.yaml`.
using ExtraRecords = std::map<std::string, std::filesystem::path>;

/// Reads schema and content, derives, proves. A measure of an extra record that states no basis is the user's own: `given`.
std::variant<Workbench, Unreadable> open_workbench(const CommonOptions& options, const ExtraRecords& extra = {});

/// Tables and what records could be read, for a calculator, which names the ones that it lacks: findings are those of the
/// tables and of what lies in an overlay alone, and without a folder of content there are no records.
std::variant<Workbench, Unreadable> open_records(const CommonOptions& options);

/// Tables and the records that could be read, for a look-up: nothing is derived or proven, and findings are those of reading.
std::variant<Workbench, Unreadable> open_content(const CommonOptions& options);

/// `2 files have errors and are left out; benchleaf check names them`, or empty where all could be read.
std::string left_out_line(const Workbench& bench);

/// `447 records`.
std::string record_count(const Workbench& bench);

}  // namespace benchleaf::command
