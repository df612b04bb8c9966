// In: schema and content. Out: the book of them, and the words of its entries for tests to look at.
#include "compose/real_book.h"

#include "compose/book_walk.h"
#include "model/signs.h"
#include "read/content_reader.h"
#include "read/disk_files.h"
#include "read/table_reader.h"

namespace benchleaf::test {

MadeBook::MadeBook(const read::FileSource& schema, const read::FileSource& content) {
  const read::Shapes shapes = read::load_shapes(schema, files, findings);
  tables = read::read_tables(schema, shapes, files, findings);
  records = read::read_content(content, shapes, files, findings);
  derived = derive::derive(records, tables, findings);
  book = compose::make_book(records, tables, derived, compose::Medium::screen, findings);
  report::Findings said;
  paper = compose::make_book(records, tables, derived, compose::Medium::paper, said);
}

const MadeBook& real_book() {
  static const MadeBook kBook{DiskFiles("schema"), DiskFiles("content")};
  return kBook;
}

MadeBook book_of(std::map<std::string, std::string> content) {
  return MadeBook(DiskFiles("schema"), read::MemoryFiles("content", std::move(content)));
}

const model::Entry* entry_of(const model::Book& book, std::string_view anchor) {
  const model::Entry* found = nullptr;
  BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    const auto* entry = std::get_if<model::Entry>(&block.what);
    if (entry != nullptr && entry->anchor == anchor) found = entry;
  };
  walk.walk(book);
  return found;
}

std::string words_of(const model::Entry& entry) {
  std::string words;
  BookWalk walk;
  walk.on_block = [&](const model::Block& block) {
    if (const auto* message = std::get_if<model::Message>(&block.what)) {
      words += "\n" + std::string(model::message_word(message->word)) + ": ";
    } else if (const auto* step = std::get_if<model::Step>(&block.what)) {
      words += "\n" + std::to_string(step->number) + ". ";
    } else {
      words += "\n";
    }
  };
  walk.on_runs = [&](const model::Runs& runs) { words += model::plain_text(runs) + "|"; };
  for (const auto& block : entry.blocks) walk.walk(*block);
  return words;
}

std::string rules_of(const report::Findings& findings) {
  std::string rules;
  for (const report::Finding& finding : findings.all()) {
    rules += (rules.empty() ? "" : ", ") + std::string(report::rule_info(finding.rule).id);
  }
  return rules;
}

}  // namespace benchleaf::test
