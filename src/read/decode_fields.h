#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "model/book.h"
#include "model/node.h"
#include "model/record_ref.h"
#include "model/words.h"

namespace benchleaf::read {

/// What decoding knows about one file besides its tree.
struct DecodeContext {
  const std::vector<std::string>& unusable;
  std::map<std::string, model::RecordRef, std::less<>> targets;  ///< by the path of the reference
};

/// One mapping of a record: hands out typed values by key. A key that is absent, or whose value is unusable, gives the
/// empty value; shapes have seen to everything else.
class Fields {
 public:
  Fields(const model::Node& node, std::string path, const DecodeContext& context)
      : node_(&node), path_(std::move(path)), context_(&context) {}

  const std::string& path() const { return path_; }
  bool has(std::string_view key) const { return value(key) != nullptr; }
  /// Whether every value below this mapping can be used.
  bool whole() const;

  std::string text(std::string_view key) const;
  std::vector<std::string> texts(std::string_view key) const;
  /// The word of a closed list, or of each item; one that is none of the list has its finding and is left out.
  template <typename List>
  std::optional<List> word(std::string_view key) const {
    return model::word_from<List>(text(key));
  }
  template <typename List>
  std::vector<List> words(std::string_view key) const {
    std::vector<List> list;
    for (const std::string& one : texts(key)) {
      if (const std::optional<List> value = model::word_from<List>(one)) list.push_back(*value);
    }
    return list;
  }
  int count(std::string_view key, int otherwise) const;
  bool flag(std::string_view key) const;
  std::optional<base::Quantity> quantity(std::string_view key) const;
  std::vector<base::Quantity> quantities(std::string_view key) const;
  /// Of the record, or as written where it names none.
  model::RecordRef reference(std::string_view key) const;
  model::References references(std::string_view key) const;
  /// `ok`, `with-care`, `never`; never where it cannot be read.
  model::Verdict verdict(std::string_view key) const;

  std::optional<Fields> part(std::string_view key) const;
  std::vector<Fields> parts(std::string_view key) const;
  base::Span span(std::string_view key) const;

 private:
  const model::Node* value(std::string_view key) const;
  std::string inner(std::string_view key) const;
  bool usable(const std::string& path) const;
  model::RecordRef target(const std::string& path, const model::Node& node) const;

  const model::Node* node_;
  std::string path_;
  const DecodeContext* context_;
};

}  // namespace benchleaf::read
