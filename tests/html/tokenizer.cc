// In: the bytes of a page. Out: tokens. A reader of its own, so that the writer is not judged by itself.
#include "html/tokenizer.h"

#include <algorithm>
#include <array>

namespace benchleaf::html_tests {

namespace {

constexpr std::array<std::string_view, 4> kVoid = {"meta", "link", "br", "col"};
constexpr std::array<std::string_view, 8> kSwitching = {"style", "textarea",  "iframe",  "noscript",
                                                        "xmp",   "plaintext", "noembed", "template"};

bool is_space(char c) { return c == ' ' || c == '\n' || c == '\t'; }
bool is_name(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-'; }

template <std::size_t N>
bool is_one_of(const std::array<std::string_view, N>& names, std::string_view name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

class Reader {
 public:
  explicit Reader(std::string_view page) : page_(page) {}

  Tokens read() {
    while (tokens_.fault.empty() && at_ < page_.size()) {
      if (page_.at(at_) == '<')
        read_tag();
      else
        read_text();
    }
    if (tokens_.fault.empty() && !open_.empty()) fail("element left open: " + open_.back());
    return std::move(tokens_);
  }

 private:
  void fail(const std::string& why) {
    if (tokens_.fault.empty()) tokens_.fault = why + " at byte " + std::to_string(at_);
  }

  bool take(std::string_view what) {
    if (!page_.substr(at_).starts_with(what)) return false;
    at_ += what.size();
    return true;
  }

  std::string decode(std::string_view raw) {
    std::string out;
    for (std::size_t i = 0; i < raw.size();) {
      const auto replace = [&](std::string_view name, char c) {
        if (!raw.substr(i).starts_with(name)) return false;
        out += c;
        i += name.size();
        return true;
      };
      if (replace("&amp;", '&') || replace("&lt;", '<') || replace("&gt;", '>') || replace("&quot;", '"')) continue;
      if (raw.at(i) == '&') fail("stray ampersand");
      if (raw.at(i) == '<' || raw.at(i) == '>') fail("angle bracket in text");
      out += raw.at(i++);
    }
    return out;
  }

  void read_text() {
    const std::size_t end = std::min(page_.find('<', at_), page_.size());
    Token token;
    token.text = decode(page_.substr(at_, end - at_));
    at_ = end;
    tokens_.all.push_back(std::move(token));
  }

  std::string read_name() {
    const std::size_t from = at_;
    while (at_ < page_.size() && is_name(page_.at(at_))) ++at_;
    return std::string(page_.substr(from, at_ - from));
  }

  void read_tag() {
    if (tokens_.all.empty() && take("<!doctype html>")) {
      tokens_.all.push_back({Token::Kind::doctype, {}, {}, {}});
      return;
    }
    if (take("</")) {
      const std::string name = read_name();
      if (!take(">")) return fail("broken end tag");
      if (open_.empty() || open_.back() != name) return fail("end tag out of order: " + name);
      open_.pop_back();
      tokens_.all.push_back({Token::Kind::end, name, {}, {}});
      return;
    }
    ++at_;
    Token token;
    token.kind = Token::Kind::start;
    token.name = read_name();
    if (token.name.empty() || is_one_of(kSwitching, token.name)) return fail("not an element: " + token.name);
    while (tokens_.fault.empty() && !take(">")) read_attribute(token);
    if (token.name == "script") return read_script(token);
    if (!is_one_of(kVoid, token.name)) open_.push_back(token.name);
    tokens_.all.push_back(std::move(token));
  }

  /// A script is named and empty: nothing of the page is read as one.
  void read_script(const Token& token) {
    if (token.attribute("src").empty() || !take("</script>")) fail("a script that is not a file of its own");
    tokens_.all.push_back(token);
    tokens_.all.push_back({Token::Kind::end, token.name, {}, {}});
  }

  void read_attribute(Token& token) {
    if (at_ >= page_.size() || !is_space(page_.at(at_))) return fail("broken start tag");
    while (at_ < page_.size() && is_space(page_.at(at_))) ++at_;
    const std::string name = read_name();
    if (name == "defer") return static_cast<void>(token.attributes.emplace_back(name, ""));
    if (name.empty() || !take("=\"")) return fail("broken attribute");
    if (token.has_attribute(name)) return fail("attribute twice: " + name);
    const std::size_t end = page_.find('"', at_);
    if (end == std::string_view::npos) return fail("attribute left open");
    token.attributes.emplace_back(name, decode(page_.substr(at_, end - at_)));
    at_ = end + 1;
  }

  std::string_view page_;
  std::size_t at_ = 0;
  std::vector<std::string> open_;
  Tokens tokens_;
};

}  // namespace

std::string Token::attribute(std::string_view wanted) const {
  for (const auto& [known, value] : attributes) {
    if (known == wanted) return value;
  }
  return {};
}

bool Token::has_attribute(std::string_view wanted) const {
  return std::any_of(attributes.begin(), attributes.end(), [&](const auto& one) { return one.first == wanted; });
}

Tokens tokenize(std::string_view page) { return Reader(page).read(); }

}  // namespace benchleaf::html_tests
