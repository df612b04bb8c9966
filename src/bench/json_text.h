#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::bench {

/// Writes one JSON text, an entry a line, indented by two. The page's compiler has no library for it.
class JsonText {
 public:
  /// A value of its own kind each; inside an object `key` stands before.
  JsonText& open_object() { return open('{'); }
  JsonText& open_array() { return open('['); }
  JsonText& close();
  JsonText& key(std::string_view name);
  JsonText& text(std::string_view value);
  JsonText& number(const std::optional<double>& value);  ///< null where there is none
  JsonText& flag(bool value);
  JsonText& null();

  /// `name` and its text.
  JsonText& member(std::string_view name, std::string_view value) { return key(name).text(value); }

  /// The text with a line end; everything opened must be closed.
  std::string done() const { return json_ + "\n"; }

 private:
  JsonText& open(char bracket);
  JsonText& raw(std::string_view value);
  void start_entry();

  std::string json_;
  std::vector<char> open_;  ///< the closing brackets that are due
  bool first_ = true;       ///< whether nothing stands in the innermost yet
  bool after_key_ = false;
};

}  // namespace benchleaf::bench
