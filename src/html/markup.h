#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "html/names.h"

namespace benchleaf::html {

/// A name inside a page. Names made from words hold letters, digits and hyphens; those of the frame an underscore, so
/// the two never meet.
class Id {
 public:
  /// `size.diameter` gives `size-diameter`; a name that would not start with a letter gets `n-` in front.
  static Id from_words(std::string_view words);
  static Id of_frame(FramePlace place, std::string_view words = {});
  /// The name of the `count`th bearer of the same words: `size-diameter-2`.
  Id repeated(int count) const;
  const std::string& text() const { return text_; }

 private:
  explicit Id(std::string text) : text_(std::move(text)) {}
  std::string text_;
};

/// Letters, digits and single hyphens, lower case: what stands in names and paths. May be empty.
std::string slug(std::string_view words);

/// A relative address inside the site; there is no way to make one that leaves it.
class Url {
 public:
  /// From page `from` to page `to`, both paths of the site made of slugs (`cell/sr754w.html`).
  static Url between(std::string_view from, std::string_view to);
  /// `` or `../`: from a page to the root of the site.
  static Url to_root(std::string_view from);
  static Url within(const Id& id);
  Url at(const Id& id) const;
  const std::string& text() const { return text_; }

 private:
  explicit Url(std::string text) : text_(std::move(text)) {}
  std::string text_;
};

/// Finished HTML. It comes from elements and from words that were escaped on the way in; a string is never one.
class Markup {
 public:
  Markup() = default;
  bool empty() const { return bytes_.empty(); }
  const std::string& bytes() const { return bytes_; }
  Markup& operator+=(const Markup& more);

 private:
  friend class Element;
  friend Markup words(std::string_view text);
  friend Markup script(const Url& url);
  explicit Markup(std::string bytes) : bytes_(std::move(bytes)) {}
  std::string bytes_;
};

/// The text as text: markup characters escaped, code points that HTML forbids and broken UTF-8 set as U+FFFD.
Markup words(std::string_view text);

/// A script of the site, run when the page has been read. There is no way to write one into a page.
Markup script(const Url& url);

/// One element under construction. The order of calls is the order in the page.
class Element {
 public:
  explicit Element(ElementName name) : name_(name) {}
  Element& in_class(ClassName name);
  Element& set(AttributeName name, std::string_view value);
  Element& refer(ReferenceName name, const Id& id);
  Element& id(const Id& id);
  Element& href(const Url& url);
  Element& add(const Markup& content);
  Element& say(std::string_view text) { return add(words(text)); }
  Markup markup() const;
  operator Markup() const { return markup(); }  // NOLINT(google-explicit-constructor): an element is markup

 private:
  void append_attribute(std::string_view name, std::string_view value);

  ElementName name_;
  std::string classes_;
  std::string attributes_;
  std::string content_;
};

/// The bytes of a page: document type, then the root element.
std::string document(const Element& root);

}  // namespace benchleaf::html
