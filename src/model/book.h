#pragma once

#include <memory>
#include <string>
#include <variant>
#include <vector>

#include "model/drawing.h"
#include "model/fact.h"
#include "model/ticket_form.h"

namespace benchleaf::model {

/// The device-neutral book: what compose says and page and html set. No fonts, no lengths of a device.

enum class Style : unsigned {
  plain = 0,
  bold = 1,
  italic = 2,
  code = 4,  ///< formula or code
  subscript = 8,
  accent = 16,     ///< run-in labels only
  number = 32,     ///< a trade number on a chart: the largest words of its rows
  look_up = 64,    ///< another look-up key on a chart
  caption = 128,   ///< small words beside a key on a chart
  one_line = 256,  ///< words of a chart that never break: set as close as keys
};
constexpr Style operator|(Style a, Style b) { return static_cast<Style>(static_cast<unsigned>(a) | static_cast<unsigned>(b)); }
constexpr bool has(Style all, Style one) { return (static_cast<unsigned>(all) & static_cast<unsigned>(one)) != 0; }

/// The graver, the greater.
enum class Verdict { use, with_limits, never };

/// A piece of running text. `fact` set: the text is that fact's `printed`. `target` set: the text is a link to that anchor.
struct Run {
  enum class Kind {
    text,
    page_of,     ///< the page number of `target`, in print only (html leaves it out)
    source_key,  ///< the number of the source `target` with its brackets, in print only
    trust_sign,  ///< the sign of `trust`, with a bar when `derived`
    verdict,     ///< mark of `verdict` before the words in `text`
    line_break,
    blank,  ///< a line to write on, `blank_mm` long
    tick,   ///< a small square to tick
  };
  Kind kind = Kind::text;
  std::string text;
  Style style = Style::plain;
  std::string fact;
  std::string target;
  Trust trust = Trust::memory;
  bool derived = false;
  Verdict verdict = Verdict::use;
  double blank_mm = 0;
};
using Runs = std::vector<Run>;

/// Plain text of runs, for bookmarks, indexes and alternatives.
std::string plain_text(const Runs& runs);
Run text_run(std::string text, Style style = Style::plain);
Run fact_run(const Fact& fact, Style style = Style::plain);
Run trust_run(Trust trust, bool derived);
Run link_run(std::string text, std::string target, Style style = Style::plain);
Run page_run(std::string target);
Run source_key_run(std::string text, std::string target);

struct Block;
using Blocks = std::vector<Block>;

struct Heading {
  int level = 2;  ///< 1 chapter, 2 section, 3 sub-section, 4 run-in group
  Runs runs;
  std::string anchor;
  std::string note = {};  ///< small, beside the words
};

struct Paragraph {
  enum class Role {
    body,
    lead,
    dense,
    note,
    key  ///< what a sheet is looked at for: the number of a cell
  };
  Runs runs;
  Role role = Role::body;
};

struct List {
  bool ordered = false;
  std::vector<Blocks> items;
};

struct Column {
  enum class Align { left, right, centre, decimal };
  Runs head;
  Align align = Align::left;
  double width_mm = 0;    ///< 0: the setter finds it
  bool row_head = false;  ///< its cells name the row (scope row), set bold
};

struct TableCell {
  Runs runs;
  std::shared_ptr<const Drawing> drawing;  ///< an interval bar, a small picture; or none
  bool hangs = false;                      ///< its drawing stands beside the rows below that this row joins
};

struct TableRow {
  std::vector<TableCell> cells;  ///< as many as columns
  std::string anchor;            ///< a row may be the place a record is found
  bool joins_next = false;       ///< no rule parts it from the row below
};

struct Table {
  std::string name;  ///< entries of one kind stack with the same column widths when the names are the same
  Runs caption;
  std::vector<Column> columns;
  std::vector<TableRow> rows;
  double gap_mm = 0;  ///< between columns; 0: as everywhere
};

/// A bench hazard in the words of ANSI Z535; never used for the classification of a chemical.
struct Message {
  enum class Word { danger, warning, caution, notice };
  /// How much of it stands in a place, after the scheme of ANSI Z535.6.
  enum class Length {
    full,   ///< grouped in a chapter of its own, or before a step that makes the hazard itself
    brief,  ///< at the head of a procedure, or embedded before a step: harm, what keeps it off, where the rest stands
  };
  Word word = Word::notice;
  Length length = Length::full;
  Runs harm_in_brief;                    ///< set bold
  Runs avoid_in_brief;                   ///< then what keeps it off
  Runs hazard;                           ///< set bold: hazard and harm
  Runs avoid;                            ///< then what to do
  std::vector<std::string> signs;        ///< ISO 7010 numbers, two at most are drawn
  std::string record;                    ///< `caution/ID`
  std::vector<std::string> sign_titles;  ///< what each of `signs` says, in words, in the same order
  std::string write_on;                  ///< what stands before a box to write a number into, or empty
  bool strip = false;                    ///< one low strip: word, hazard, `page`; the full message stands elsewhere
  std::string full_at;                   ///< anchor of the full message, for the page at the end of a strip, or empty
  std::string anchor;                    ///< name of this message as a place that strips lead to, or empty
};

/// Hazard and harm, and what keeps it off, at the length that the message has here.
const Runs& harm_words(const Message& message);
const Runs& avoid_words(const Message& message);

struct Step {
  int number = 1;
  Runs runs;
  Runs see = {};    ///< what shows that it is done
  Runs proof = {};  ///< what the compiler checked: on, with, meets, rinse
  enum class Size { plain, large };
  Size size = Size::plain;  ///< large: read from where wet hands are
  bool box = false;         ///< a square to tick before the number
};

struct MarginNote {
  Runs label;  ///< what is stated; what follows the first run is its value
  Trust trust = Trust::memory;
  bool derived = false;
  Runs more;  ///< small text beneath, or empty
};

/// One record's entry: the look-up key is the largest thing.
struct Entry {
  /// A number to look up (27 pt), a title (25 pt) or that of a shorter entry (17 pt) over the whole measure, a short entry
  /// with its name beside it (12.5 pt).
  enum class Rank { key, title, short_title, small };
  Rank rank = Rank::title;
  std::string anchor;       ///< `cell/sr754w`
  Runs key;                 ///< 393
  Runs second;              ///< SR754W
  Runs aliases;             ///< 7.9 × 5.4 mm SR48
  std::string running_key;  ///< for the running head; plain text
  std::shared_ptr<const Drawing> drawing;
  std::vector<std::shared_ptr<const Block>> blocks;
  std::vector<MarginNote> margin;
  bool whole = false;  ///< work to be done: on one page or on two that face each other, never over a turn
};

struct IndexEntry {
  std::string word;
  std::string sort_key;  ///< folded, see index order in compose
  std::vector<std::string> targets;
  std::string see;                     ///< a word to look under instead, or empty
  std::vector<IndexEntry> under = {};  ///< sub-entries, in index order; none has its own
};
/// The head that the entry stands under: `A` to `Z`, `0–9` or `Signs`.
std::string index_group(const IndexEntry& entry);
/// Asked for by a block and filled by the setter, which knows the pages.
struct IndexList {
  std::vector<IndexEntry> entries;  ///< in index order
};

/// What may stand side by side where there is room: columns of equal width, read one after the other.
struct SideBySide {
  std::vector<Blocks> columns;
};

struct Block {
  std::variant<Heading, Paragraph, List, Table, Message, Step, Entry, SideBySide, IndexList> what;
};

/// The way into a chapter from the home page, by the thing in hand. Empty: the chapter's title leads there.
struct Door {
  std::string thing;  ///< `A number on a cell`
  Runs line;          ///< one sentence, with links to try
};

/// The bench reads part A, whoever doubts part B.
enum class BookPart { a, b };

struct Chapter {
  int number = 1;
  std::string id;
  std::string title;
  std::string tab;  ///< short name on the thumb tab
  Blocks blocks;
  Door door;
  BookPart part = BookPart::a;
};

/// One input of a calculator, as its list names it.
struct CalculatorInput {
  std::string name;
  std::string what;
  std::string example;  ///< `31.85 mm`
  bool required = false;
  std::shared_ptr<const Drawing> picture;  ///< of what is measured, or nullptr
};

/// A calculator of the bench as the screen offers it; what it answers comes from the calculator itself.
struct CalculatorSheet {
  std::string name;  ///< `gasket-fit`
  std::string does;  ///< which question it answers, one line
  std::vector<CalculatorInput> inputs;
};

struct Book {
  std::string title;
  std::string subtitle;
  std::string edition;   ///< `1`
  std::string date;      ///< `November 2026`, as printed
  std::string iso_date;  ///< `2026-11-01`
  std::string language = "en-GB";
  std::vector<std::string> imprints;  ///< lines of the overlays under the edition
  std::string standing_line;          ///< beside the folio
  Blocks cover_notes;                 ///< who answers for what, on the page after the cover
  std::vector<Chapter> chapters;
  std::vector<CalculatorSheet> calculators;  ///< of the screen alone: paper has their answers as tables
  TicketForm ticket_form;                    ///< of the screen alone: paper has the intake card
};

}  // namespace benchleaf::model
