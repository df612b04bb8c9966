#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace benchleaf::html_tests {

/// One token of a page, text and attribute values decoded.
struct Token {
  enum class Kind { doctype, start, end, text };
  Kind kind = Kind::text;
  std::string name;                                             ///< of an element
  std::vector<std::pair<std::string, std::string>> attributes;  ///< in order
  std::string text;

  /// The value of an attribute, or an empty string.
  std::string attribute(std::string_view wanted) const;
  bool has_attribute(std::string_view wanted) const;
};

/// A page as a browser would read it, or the reason why it is refused. Written from the HTML standard for the tests alone
/// and stricter than a browser: quoted attributes only, no attribute twice, no stray `<`, `>` in text or `&`, each element closed
/// in order, no comment, no element that switches the way of reading (style, textarea ...), a script only as a file of its own.
struct Tokens {
  std::vector<Token> all;
  std::string fault;
};
Tokens tokenize(std::string_view page);

}  // namespace benchleaf::html_tests
