#pragma once

#include <string>
#include <vector>

#include "command/shape_fields.h"

namespace benchleaf::command {

/// What stands at the head and foot of a page of the manual.
struct ManualHead {
  std::string version;
  std::string date;  ///< 2026-11-01
};

/// benchleaf(1) in the man macros: what the description of the command line says.
std::string program_manual(const ManualHead& head);

/// benchleaf-record(5): how a record is written, and the fields of each kind as its shape describes them. Fields that every kind
/// has in the same words stand there once.
std::string record_manual(const ManualHead& head, const std::vector<RecordShape>& shapes);

}  // namespace benchleaf::command
