#pragma once

#include <algorithm>
#include <array>
#include <string_view>

namespace benchleaf::html {

/// Names are literals of this program, checked while it is compiled: no word of a book can become one. Elements and
/// attributes that run, load, style, link or name something are not in the lists, so nobody can set them by habit.

inline constexpr std::array<std::string_view, 47> kElements = {
    "html",  "head", "meta",    "title", "link",    "body",    "header", "nav",  "main", "footer", "section", "div",
    "span",  "a",    "p",       "h1",    "h2",      "h3",      "h4",     "h5",   "h6",   "ul",     "ol",      "li",
    "table", "col",  "caption", "thead", "tbody",   "tr",      "th",     "td",   "b",    "i",      "strong",  "code",
    "sub",   "br",   "data",    "time",  "details", "summary", "svg",    "path", "text", "use",    "symbol"};

inline constexpr std::array<std::string_view, 30> kAttributes = {"aria-current",
                                                                 "aria-hidden",
                                                                 "aria-label",
                                                                 "charset",
                                                                 "content",
                                                                 "d",
                                                                 "data-answer",
                                                                 "data-fact",
                                                                 "data-label",
                                                                 "data-record",
                                                                 "data-root",
                                                                 "datetime",
                                                                 "fill-rule",
                                                                 "font-size",
                                                                 "height",
                                                                 "http-equiv",
                                                                 "lang",
                                                                 "name",
                                                                 "rel",
                                                                 "role",
                                                                 "scope",
                                                                 "stroke-dasharray",
                                                                 "stroke-width",
                                                                 "tabindex",
                                                                 "text-anchor",
                                                                 "value",
                                                                 "viewBox",
                                                                 "width",
                                                                 "x",
                                                                 "y"};

/// Attributes whose value is the name of a place in the page.
inline constexpr std::array<std::string_view, 1> kReferences = {"aria-labelledby"};

template <std::size_t N>
consteval bool is_one_of(const std::array<std::string_view, N>& names, std::string_view name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

class ElementName {
 public:
  consteval ElementName(const char* name) : text_(name) {  // NOLINT(google-explicit-constructor): reads as a literal
    if (!is_one_of(kElements, text_)) throw "not an element of the handbook";
  }
  constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

class AttributeName {
 public:
  consteval AttributeName(const char* name) : text_(name) {  // NOLINT(google-explicit-constructor): reads as a literal
    if (!is_one_of(kAttributes, text_)) throw "not an attribute for plain text";
  }
  constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

class ReferenceName {
 public:
  consteval ReferenceName(const char* name) : text_(name) {  // NOLINT(google-explicit-constructor): reads as a literal
    if (!is_one_of(kReferences, text_)) throw "not an attribute that names a place";
  }
  constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

class ClassName {
 public:
  consteval ClassName(const char* name) : text_(name) {  // NOLINT(google-explicit-constructor): reads as a literal
    for (char c : text_) {
      if ((c < 'a' || c > 'z') && c != '-') throw "a class is lower-case letters and hyphens";
    }
  }
  constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

/// A place of the page's frame, with an underscore, which no name made from words has.
class FramePlace {
 public:
  consteval FramePlace(const char* name) : text_(name) {  // NOLINT(google-explicit-constructor): reads as a literal
    if (text_.find('_') == std::string_view::npos) throw "a place of the frame has an underscore";
  }
  constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

}  // namespace benchleaf::html
