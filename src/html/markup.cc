// In: words of a book, names fixed in the program. Out: HTML in which every word is text. This file alone writes angle
// brackets; the content model and the forbidden code points are those of the HTML standard, sections 13.1 and 13.2.3.5.
#include "html/markup.h"

#include "base/utf8.h"

namespace benchleaf::html {

namespace {

bool is_void(std::string_view name) { return name == "meta" || name == "link" || name == "br" || name == "col"; }

/// Elements that end a line of the file, so that two states of a page can be compared line by line.
bool ends_line(std::string_view name) {
  constexpr std::array<std::string_view, 30> kNames = {
      "html", "head", "meta", "title", "link", "body", "header", "nav", "main",  "footer",  "section", "div",   "p",  "h1",
      "h2",   "h3",   "h4",   "h5",    "h6",   "ul",   "ol",     "li",  "table", "caption", "thead",   "tbody", "tr", "details"};
  return std::find(kNames.begin(), kNames.end(), name) != kNames.end();
}

bool is_forbidden(char32_t code) {
  if (code == '\t' || code == '\n') return false;
  if (code < 0x20 || (code >= 0x7F && code <= 0x9F)) return true;
  return (code >= 0xFDD0 && code <= 0xFDEF) || (code & 0xFFFE) == 0xFFFE;
}

void append_escaped(std::string& out, std::string_view text, bool in_attribute) {
  std::size_t at = 0;
  while (at < text.size()) {
    const base::Utf8Step step = base::next_code_point(text, at);
    if (!step.valid || is_forbidden(step.code)) {
      out += "\xEF\xBF\xBD";
    } else if (step.code == '&') {
      out += "&amp;";
    } else if (step.code == '<') {
      out += "&lt;";
    } else if (step.code == '>') {
      out += "&gt;";
    } else if (step.code == '"' && in_attribute) {
      out += "&quot;";
    } else {
      out += text.substr(at, step.length);
    }
    at += step.length;
  }
}

}  // namespace

std::string slug(std::string_view words) {
  std::string out;
  for (char c : words) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
      out += c;
    } else if (!out.empty() && out.back() != '-') {
      out += '-';
    }
  }
  while (!out.empty() && out.back() == '-') out.pop_back();
  return out;
}

Id Id::from_words(std::string_view words) {
  std::string name = slug(words);
  if (name.empty() || name.front() < 'a') name.insert(0, "n-");
  while (name.back() == '-') name.pop_back();
  return Id(std::move(name));
}

Id Id::of_frame(FramePlace place, std::string_view words) { return Id(std::string(place.text()) + slug(words)); }

Id Id::repeated(int count) const { return Id(text_ + "-" + std::to_string(count)); }

Url Url::to_root(std::string_view from) {
  std::string address;
  for (char c : from) {
    if (c == '/') address += "../";
  }
  return Url(std::move(address));
}

Url Url::between(std::string_view from, std::string_view to) {
  // A page and its neighbour in the same folder need no way up and down again.
  const std::size_t slash = from.find('/');
  if (slash != std::string_view::npos && from.substr(0, slash + 1) == to.substr(0, slash + 1)) {
    return Url(std::string(to.substr(slash + 1)));
  }
  return Url(to_root(from).text_ + std::string(to));
}

Url Url::within(const Id& id) { return Url("#" + id.text()); }

Url Url::at(const Id& id) const { return Url(text_ + "#" + id.text()); }

Markup& Markup::operator+=(const Markup& more) {
  bytes_ += more.bytes_;
  return *this;
}

Markup script(const Url& url) { return Markup("<script src=\"" + url.text() + "\" defer></script>"); }

Markup words(std::string_view text) {
  std::string out;
  append_escaped(out, text, false);
  return Markup(std::move(out));
}

void Element::append_attribute(std::string_view name, std::string_view value) {
  attributes_ += ' ';
  attributes_ += name;
  attributes_ += "=\"";
  append_escaped(attributes_, value, true);
  attributes_ += '"';
}

Element& Element::in_class(ClassName name) {
  if (!classes_.empty()) classes_ += ' ';
  classes_ += name.text();
  return *this;
}

Element& Element::set(AttributeName name, std::string_view value) {
  append_attribute(name.text(), value);
  return *this;
}

Element& Element::refer(ReferenceName name, const Id& id) {
  append_attribute(name.text(), id.text());
  return *this;
}

Element& Element::id(const Id& id) {
  append_attribute("id", id.text());
  return *this;
}

Element& Element::href(const Url& url) {
  append_attribute("href", url.text());
  return *this;
}

Element& Element::add(const Markup& content) {
  content_ += content.bytes();
  return *this;
}

Markup Element::markup() const {
  std::string out = "<";
  out += name_.text();
  if (!classes_.empty()) out += " class=\"" + classes_ + "\"";
  out += attributes_ + ">";
  if (!is_void(name_.text())) {
    out += content_;
    out += "</";
    out += name_.text();
    out += '>';
  }
  if (ends_line(name_.text())) out += '\n';
  return Markup(std::move(out));
}

std::string document(const Element& root) { return "<!doctype html>\n" + root.markup().bytes(); }

}  // namespace benchleaf::html
