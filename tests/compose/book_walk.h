#pragma once

#include <functional>
#include <memory>
#include <variant>
#include <vector>

#include "model/book.h"

namespace benchleaf::test {

/// Visits every block of a book in book order, those inside lists and entries as well.
class BookWalk {
 public:
  std::function<void(const model::Block&)> on_block = [](const model::Block&) {};
  std::function<void(const model::Runs&)> on_runs = [](const model::Runs&) {};
  std::function<void(const model::Drawing&)> on_drawing = [](const model::Drawing&) {};

  void walk(const model::Book& book) const {
    walk(book.cover_notes);
    for (const model::Chapter& chapter : book.chapters) {
      on_runs(chapter.door.line);
      walk(chapter.blocks);
    }
  }

  void walk(const model::Blocks& blocks) const {
    for (const model::Block& block : blocks) walk(block);
  }

  void walk(const model::Block& block) const {
    on_block(block);
    std::visit([this](const auto& what) { inside(what); }, block.what);
  }

 private:
  void draw(const std::shared_ptr<const model::Drawing>& drawing) const {
    if (drawing) on_drawing(*drawing);
  }
  void inside(const model::Heading& heading) const { on_runs(heading.runs); }
  void inside(const model::Paragraph& paragraph) const { on_runs(paragraph.runs); }
  void inside(const model::SideBySide& blocks) const {
    for (const model::Blocks& column : blocks.columns) walk(column);
  }
  void inside(const model::List& list) const {
    for (const model::Blocks& item : list.items) walk(item);
  }
  void inside(const model::Table& table) const {
    on_runs(table.caption);
    for (const model::Column& column : table.columns) on_runs(column.head);
    for (const model::TableRow& row : table.rows) {
      for (const model::TableCell& cell : row.cells) {
        on_runs(cell.runs);
        draw(cell.drawing);
      }
    }
  }
  void inside(const model::Message& message) const {
    on_runs(message.hazard);
    on_runs(message.avoid);
  }
  void inside(const model::Step& step) const {
    on_runs(step.runs);
    on_runs(step.proof);
  }
  void inside(const model::Entry& entry) const {
    for (const auto* runs : {&entry.key, &entry.second, &entry.aliases}) on_runs(*runs);
    draw(entry.drawing);
    for (const model::MarginNote& note : entry.margin) {
      on_runs(note.label);
      on_runs(note.more);
    }
    for (const auto& block : entry.blocks) walk(*block);
  }
  void inside(const model::IndexList&) const {}
};

}  // namespace benchleaf::test
