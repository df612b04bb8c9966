#pragma once

#include <string>

#include "model/knowledge_base.h"

namespace benchleaf::command {

/// What describes facts.jsonl to programs that read tables: datapackage.json by the Data Package standard, version 1
/// (Frictionless Data), with size, hash and the type of every field.
std::string data_package(const model::Handbook& handbook, const std::string& facts);

}  // namespace benchleaf::command
