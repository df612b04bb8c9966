#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "compose/desk.h"
#include "compose/line.h"
#include "model/book.h"

namespace benchleaf::compose {

/// A value of a record: what the page calls it, and where it stands.
struct Labelled {
  std::string label;
  std::string path;
};

/// Where a message stands, which decides its length.
enum class MessagePlace {
  own_entry,    ///< where all of it is said
  head,         ///< at the head of an entry or on a page
  before_step,  ///< directly above the step that it guards
};

/// Builds the entry of one record. What the record does not say leaves no trace.
class EntryMaker {
 public:
  EntryMaker(const Desk& desk, const model::Record& record, model::Entry::Rank rank);

  model::Entry& entry() { return entry_; }
  Line line() const { return Line(desk_); }

  void add(model::Block block);
  void paragraph(model::Runs runs, model::Paragraph::Role role = model::Paragraph::Role::body);
  void heading(std::string words);
  /// The same; on paper one step lower, so that it goes on in its column.
  void subheading(std::string words);
  /// A paragraph with a run-in label.
  void run_in(std::string label, std::string text);
  void run_in(std::string label, Line& text);
  void links(std::string label, const model::References& references);
  /// The same without pages on paper, where what is named has no more to say there.
  void names(std::string label, const model::References& references);
  /// Who names this record: on the screen alone, since paper has its index.
  void back_links(std::string label, const model::References& references);
  /// A heading and a list of sentences.
  void list(std::string title, const std::vector<std::string>& items);
  /// A table of label, value and sign for those values that are on file; on paper a line of them.
  void values(std::string table_name, const std::vector<Labelled>& values);
  void table(model::Table table);
  /// Cautions as messages, the gravest word first.
  void messages(const model::References& cautions, MessagePlace place);
  /// A line that names the cautions and where they stand.
  void caution_line(const model::References& cautions);
  /// A margin note with the sign of the value at the path.
  void margin(std::string label, std::string_view path, std::string more = {});
  /// Note, disagreements and sources close the entry; margin notes by basis where none was set.
  model::Entry finish();

 private:
  model::Paragraph::Role run_in_role() const;
  void value_lines(const std::vector<Labelled>& values);
  void add_conflicts();
  void add_sources();
  void add_source_keys();
  void add_margin_by_basis();

  const Desk& desk_;
  const model::Record& record_;
  model::Entry entry_;
};

model::Column column(std::string head, model::Column::Align align = model::Column::Align::left, bool row_head = false,
                     double width_mm = 0);
/// The table without those columns that no row fills.
model::Table without_empty_columns(model::Table table);
/// The last column of a table of values: their trust signs.
model::Column sign_column();
model::TableCell cell(model::Runs runs);
model::TableCell cell(std::string text);
model::Block paragraph_block(model::Runs runs, model::Paragraph::Role role = model::Paragraph::Role::body);
model::Block heading_block(int level, std::string words, std::string anchor = {});
/// The message of `caution/ID`, with the titles of its signs.
model::Message message_of(const Desk& desk, const model::Caution& caution, MessagePlace place = MessagePlace::own_entry);
/// Whether it is said in full where it stands: where it has no short form, and before a step that makes the hazard itself.
model::Message::Length length_at(const Desk& desk, const model::Caution& caution, MessagePlace place);
/// The cautions that exist, the gravest word first.
std::vector<const model::Caution*> gravest_first(const Desk& desk, const model::References& cautions);

}  // namespace benchleaf::compose
