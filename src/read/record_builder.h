#pragma once

#include <string>
#include <vector>

#include "model/knowledge_base.h"
#include "read/checked_file.h"
#include "read/record_names.h"
#include "report/finding.h"

namespace benchleaf::read {

/// What else a record answers to: the id it states and its aliases.
void add_other_names(const CheckedFile& checked, RecordNames& names);

/// The references of a file with the records they mean, added to `references`.
void resolve(const RecordNames& names, ShapeReport& report, std::vector<model::ReferencePlace>& references);

/// A usable file of some kind to its typed record, added to `base`; one of that kind and id that is there already stays.
void add_record(CheckedFile checked, const RecordNames& names, model::KnowledgeBase& base, report::Findings& findings);

}  // namespace benchleaf::read
