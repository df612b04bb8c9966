#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::model {

enum class Kind {
#define BENCHLEAF_KIND(name, folder, Struct, list, plural) name,
#include "model/kinds.def"
#undef BENCHLEAF_KIND
};

/// `cell`: the word in references and the folder below content/.
std::string_view kind_name(Kind kind);
/// `cells`, `gasket series`: for counts and lists.
std::string_view kind_plural(Kind kind);
std::optional<Kind> kind_from_name(std::string_view name);
/// All kinds in the order of kinds.def.
const std::vector<Kind>& all_kinds();

/// Whether records of a kind plan tickets alone, and have no entry in the handbook.
bool is_of_ticket(Kind kind);

/// Whether a text has the form of an id: `[a-z][a-z0-9]*(-[a-z0-9]+)*`, at most 48 characters.
bool is_record_id(std::string_view text);

/// What a field says where it names a record: `cell/sr754w`, aliases resolved. A word that names none is kept as it was
/// written (`$crystal`, a slot of a procedure) and has no kind. Ordered by its text.
class RecordRef {
 public:
  RecordRef() = default;
  explicit RecordRef(std::string_view text);
  RecordRef(Kind kind, std::string_view id);

  /// Of the record; nothing where the text is no `kind/id` of a known kind.
  std::optional<Kind> kind() const { return kind_; }
  bool is(Kind kind) const { return kind_ == kind; }
  /// `sr754w`; the whole text where it has no kind.
  std::string id() const;
  /// `cell/sr754w`.
  const std::string& text() const { return text_; }
  bool empty() const { return text_.empty(); }

  // Its text, for messages and where it stands among other words.
  operator const std::string&() const { return text_; }
  operator std::string_view() const { return text_; }

  friend bool operator==(const RecordRef& one, const RecordRef& other) { return one.text_ == other.text_; }
  friend bool operator==(const RecordRef& one, std::string_view text) { return one.text_ == text; }
  // The page's compiler has strings without <=>.
  friend std::weak_ordering operator<=>(const RecordRef& one, const RecordRef& other) { return one <=> other.view(); }
  friend std::weak_ordering operator<=>(const RecordRef& one, std::string_view text) { return one.view().compare(text) <=> 0; }
  friend std::string operator+(const RecordRef& one, std::string_view text) { return one.text_ + std::string(text); }
  friend std::string operator+(std::string_view text, const RecordRef& one) { return std::string(text) + one.text_; }

 private:
  std::string_view view() const { return text_; }

  std::string text_;
  std::optional<Kind> kind_;
};

using References = std::vector<RecordRef>;

/// The two parts of the id of a fact, `cell/sr754w#size.height`; of a table `table/cell-systems#S.nominal`.
struct FactId {
  std::string_view record;  ///< `cell/sr754w`
  std::string_view path;    ///< `size.height`, or empty

  explicit FactId(std::string_view id);
  /// The kind of the record, or nothing for a row of a table.
  std::optional<Kind> kind() const { return RecordRef(record).kind(); }
};

}  // namespace benchleaf::model
