#pragma once

#include <map>
#include <string>
#include <string_view>

#include "compose/entries/book.h"
#include "read/file_source.h"

namespace benchleaf::test {

/// Everything from files to book, made as the commands make it.
struct MadeBook {
  MadeBook(const read::FileSource& schema, const read::FileSource& content);

  base::FileTable files;
  report::Findings findings;
  model::Tables tables;
  model::KnowledgeBase records;
  derive::Derived derived;
  model::Book book;   ///< for the screen
  model::Book paper;  ///< the same for paper
};

/// The handbook of content/, made once for all tests.
const MadeBook& real_book();
/// A book of a few records that a test writes itself, under the project's schema.
MadeBook book_of(std::map<std::string, std::string> content);

/// The entry with this anchor, or nullptr.
const model::Entry* entry_of(const model::Book& book, std::string_view anchor);
/// All words of an entry's blocks, one block a line: `warning: ...` for a message, `1. ...` for a step.
std::string words_of(const model::Entry& entry);
/// Rules of all findings, joined by `, `.
std::string rules_of(const report::Findings& findings);

}  // namespace benchleaf::test
