#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "model/knowledge_base.h"

namespace benchleaf::read {

/// The head of the handbook and the records of some kinds as lines of plain text, for a page that reads no YAML. Pages have no
/// such form: their prose is Markdown.
std::string record_lines(const model::KnowledgeBase& base, const std::vector<model::Kind>& kinds);

/// The knowledge base that such a text holds, typed as by read_content, with its lines as places; nothing for a text that is
/// none.
std::optional<model::KnowledgeBase> read_record_lines(std::string_view lines);

}  // namespace benchleaf::read
