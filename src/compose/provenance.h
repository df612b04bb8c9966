#pragma once

#include <string>

#include "compose/desk.h"
#include "model/book.h"
#include "model/knowledge_base.h"

namespace benchleaf::compose {

/// `Added by NAME` or `Replaced by NAME` where an overlay has the record, else empty.
std::string provenance_words(const model::KnowledgeBase& records, const model::Record& record);

/// The same as the paragraph that opens an entry or a page; ask where the words are not empty.
model::Block provenance_mark(const model::KnowledgeBase& records, const model::Record& record);

/// What each overlay replaced and added, every record by name: the colophon. Nothing without overlays.
model::Blocks overlay_notes(const Desk& desk);

}  // namespace benchleaf::compose
