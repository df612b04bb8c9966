#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/knowledge_base.h"
#include "prove/rule_files.h"

namespace benchleaf::test {

/// What a value of a record is to a hand that copies it. Prose is what only a reader can judge.
enum class Sort { quantity, reference, code, prose };

/// One value of a record.
struct Place {
  const model::Record* record;
  std::string path;   ///< `grades.3.median`
  std::string field;  ///< `abrasive grades.*.median`
  Sort sort;
  const model::Node* node;
  const model::ReferencePlace* reference;  ///< of a reference, else nullptr
};

/// A value together with its name in a mapping.
struct MemberPlace {
  const model::Record* record;
  std::string field;
  const model::Node* mapping;
  std::size_t index;
  bool within_prose;  ///< the value is a sentence, or a list of sentences
};

/// Every place where a slip can happen, by field.
struct Places {
  std::map<std::string, std::vector<Place>> values;
  std::map<std::string, std::vector<MemberPlace>> members;
};

Places places_of(const model::KnowledgeBase& base);

/// `cell/sr44w.yaml`, `page/cells.md`.
std::string file_of(const model::Record& record);

/// A stretch of a file's bytes with what stands there instead.
struct Change {
  std::size_t begin, end;
  std::string text;
};

/// Byte place of a code point of a line, both from 1.
std::size_t byte_at(const std::string& text, int line, int column);
/// Where a scalar stands without its quotes; nothing where it is written in some other form than it is read.
std::optional<Change> stretch_of(const std::string& text, const model::Node& node);
/// Where a member of a mapping stands, with what parts it from the next; nothing where it cannot be taken out alone.
std::optional<Change> stretch_of_member(const std::string& text, const model::Node& mapping, std::size_t index);

}  // namespace benchleaf::test
