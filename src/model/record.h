#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/fact.h"
#include "model/node.h"
#include "model/record_ref.h"
#include "model/words.h"

namespace benchleaf::model {

/// Where a value comes from and how far it may be trusted.
struct Basis {
  RecordRef source;   ///< of kind source, or empty
  std::string where;  ///< page, clause, table
  Trust trust = Trust::memory;
  std::string as_of;  ///< date on which the source said so, or empty
  base::Span span;    ///< of its key
};

/// A source that says something else, kept beside the value that was chosen.
struct Conflict {
  std::string field;    ///< path of the value it speaks against
  std::string says;     ///< the other value, as written
  RecordRef source;     ///< of kind source, or empty
  std::string why;      ///< why the record does not follow it
  std::string changes;  ///< what would come out differently, or empty
  base::Span span;
};

/// A word that names another record.
struct ReferencePlace {
  std::string path;         ///< `steps.2.with.0`
  std::string text;         ///< as written: `white-vinegar`, `chemistry/white-vinegar`, or a slot `$liquid`
  std::vector<Kind> kinds;  ///< those it may be of; none: any
  base::Span span;
  RecordRef target;       ///< the record it names; empty where none or several fit
  std::string fact = {};  ///< `cell/sr754w#capacity` as written, where a page asks for a fact of the record
};

struct Alias {
  std::string id;
  base::Span span;
};

/// What an overlay put out of use by a record of the same kind and id.
struct Replaced {
  base::Span span;  ///< of its id
  Node root;
  bool same = false;  ///< whether both say the same, word for word
};

/// What all records have. The typed ones add their fields; `root` keeps everything as written, with places.
struct Record {
  Kind kind = Kind::cell;
  std::string id;
  std::string title;  ///< what an entry is called; the designation of a cell, the term of a term
  base::FileId file = base::kNoFile;
  base::Span span;  ///< of the id
  std::vector<Alias> aliases;
  std::map<std::string, Basis, std::less<>> basis;
  std::vector<Conflict> conflicts;
  std::string note;
  Node root;
  std::vector<std::string> unusable;         ///< paths that no stage may read; empty for a whole record
  std::vector<ReferencePlace> references;    ///< in file order
  std::vector<std::string> basis_paths;      ///< values that need a basis, in file order
  std::vector<std::string> quantity_paths;   ///< values that are quantities, in file order
  std::optional<std::size_t> overlay;        ///< place in KnowledgeBase::overlays; none: it stands in the content itself
  std::shared_ptr<const Replaced> replaced;  ///< the record below, or none

  /// `cell/sr754w`.
  RecordRef reference() const { return {kind, id}; }
  /// Place of the value at `path`, else of the nearest part of the path that exists, else of the id.
  base::Span span_of(std::string_view path) const;
  /// Whether a value, what it is part of and all its parts can be read.
  bool usable(std::string_view path) const;
  /// The basis stated for the path or for the longest part of it, or nullptr. An item's own source and trust count as
  /// a basis of that item.
  const Basis* basis_for(std::string_view path) const;
};

/// Gives every value that needs a basis and has none that of the user, who measured the watch at hand or counted the drawer.
void take_as_given(Record& record);

}  // namespace benchleaf::model
