// Hostile words in every field of a book come out as words: each page is read by a reader of its own, has the same
// elements and attributes as the page with tame words, and says every word.
#include <algorithm>

#include "html/site.h"
#include "html/tokenizer.h"
#include "support/catch.h"

namespace benchleaf::html_tests {

namespace {

using namespace model;

const std::vector<std::string> kHostile = {"<script>alert(1)</script>",
                                           "</script><script>",
                                           "</title><script>",
                                           "</svg><img src=x onerror=alert(1)>",
                                           "<!--",
                                           "-->",
                                           "<![CDATA[x]]>",
                                           "]]>",
                                           "<?php x ?>",
                                           "<!doctype html>",
                                           "</main></body></html>",
                                           "\" onmouseover=\"alert(1)",
                                           "' onmouseover='alert(1)",
                                           "\"><svg onload=alert(1)>",
                                           "'><b>",
                                           "`x`",
                                           "javascript:alert(1)",
                                           "data:text/html,<b>",
                                           "file:///etc/passwd",
                                           "http://example.org/",
                                           "//example.org/",
                                           "../../../up",
                                           "..\\..\\up",
                                           "a/../../b",
                                           "&lt;b&gt;",
                                           "&amp;amp;",
                                           "&#60;b&#62;",
                                           "&#x3c;b",
                                           "&notanentity;",
                                           "& b",
                                           "&",
                                           "<",
                                           ">",
                                           "\"",
                                           "'",
                                           "a=b c=\"d\"",
                                           "style=\"color:red\"",
                                           "{{x}} ${y} %s %n",
                                           "a\nb",
                                           "a\tb",
                                           "\u202Eltr",
                                           "\u2028line",
                                           "<a href=\"x\">y</a>",
                                           "<style>*{}</style>",
                                           "</style>",
                                           "<textarea>",
                                           "<plaintext>",
                                           "<base href=//x>",
                                           "expression(alert(1))",
                                           "url(x)",
                                           "\\",
                                           "\\u003cb\\u003e",
                                           "1<2",
                                           "a>b",
                                           "x&y;"};

/// Replaced on the way out, so these are looked for in their replaced form: byte given, byte expected.
const std::vector<std::pair<std::string, std::string>> kForbidden = {{std::string("a\0b", 3), "a\uFFFDb"},
                                                                     {"a\x01"
                                                                      "b",
                                                                      "a\uFFFDb"},
                                                                     {"a\rb", "a\uFFFDb"},
                                                                     {"a\x7F"
                                                                      "b",
                                                                      "a\uFFFDb"},
                                                                     {"a\xC2\x80"
                                                                      "b",
                                                                      "a\uFFFDb"},
                                                                     {"a\xEF\xBF\xBE"
                                                                      "b",
                                                                      "a\uFFFDb"},
                                                                     {"a\xFF"
                                                                      "b",
                                                                      "a\uFFFDb"},
                                                                     {"a\xED\xA0\x80"
                                                                      "b",
                                                                      "a\uFFFD\uFFFD\uFFFDb"},
                                                                     {"a\xC0\xBC"
                                                                      "b",
                                                                      "a\uFFFD\uFFFDb"},
                                                                     {"a\xE2\x82", "a\uFFFD"}};

/// Gives every field its own words and remembers which must be found on the pages.
class Words {
 public:
  explicit Words(std::string hostile) : hostile_(std::move(hostile)) {}

  std::string next() {
    std::string words = mark();
    wanted_.push_back(words.substr(words.size() - hostile_.size() - 4));
    return words;
  }
  /// For fields that are used but never said: anchors, keys to sort by, paths.
  std::string unsaid() { return mark(); }
  const std::vector<std::string>& wanted() const { return wanted_; }

 private:
  std::string mark() {
    std::string number = std::to_string(++count_);
    return "q" + std::string(3 - number.size(), 'z') + number + hostile_;
  }
  std::string hostile_;
  int count_ = 0;
  std::vector<std::string> wanted_;
};

std::shared_ptr<const Block> shared(Block block) { return std::make_shared<const Block>(std::move(block)); }

/// A run of each kind, styled; `target` must be an anchor of the book.
Runs all_runs(Words& words, const std::string& target) {
  Fact fact;
  fact.id = words.next();
  fact.printed = words.next();
  Run verdict = text_run(words.next());
  verdict.kind = Run::Kind::verdict;
  Run blank;
  blank.kind = Run::Kind::blank;
  blank.blank_mm = 20;
  return {text_run(words.next(), Style::bold | Style::italic),
          text_run(words.next(), Style::code | Style::accent),
          fact_run(fact, Style::subscript),
          link_run(words.next(), target),
          link_run(words.next(), words.unsaid()),
          trust_run(Trust::trade, true),
          verdict,
          blank};
}

std::shared_ptr<const Drawing> drawing(Words& words) {
  Drawing made;
  made.width_mm = made.height_mm = 9;
  made.true_size = true;
  made.alt = words.next();
  TextShape text;
  text.text = words.next();
  text.fact = words.next();
  made.shapes = {circle({4, 4}, 3), text};
  return std::make_shared<const Drawing>(made);
}

Table table(Words& words, const std::string& target) {
  Table made;
  made.name = words.unsaid();
  made.caption = all_runs(words, target);
  for (auto align : {Column::Align::left, Column::Align::decimal, Column::Align::right})
    made.columns.push_back({all_runs(words, target), align, 0, align == Column::Align::left});
  TableRow row;
  row.anchor = words.unsaid();
  for (int i = 0; i < 3; ++i) row.cells.push_back({all_runs(words, target), drawing(words)});
  made.rows = {row};
  return made;
}

Message message(Words& words, const std::string& target) {
  Message made;
  made.hazard = all_runs(words, target);
  made.avoid = all_runs(words, target);
  made.signs = {"M004", words.unsaid()};
  made.sign_titles = {words.next(), words.next()};
  made.record = words.next();
  return made;
}

Entry entry(Words& words, Entry::Rank rank, const std::string& target) {
  Entry made;
  made.rank = rank;
  made.anchor = "kind/" + words.unsaid();
  made.key = all_runs(words, target);
  made.second = all_runs(words, target);
  made.aliases = all_runs(words, target);
  made.running_key = words.unsaid();
  made.drawing = drawing(words);
  made.margin = {{all_runs(words, target), Trust::memory, true, all_runs(words, target)}};
  made.blocks = {shared({Paragraph{all_runs(words, target), Paragraph::Role::dense}}), shared({table(words, target)}),
                 shared({message(words, target)}), shared({Step{1, all_runs(words, target), all_runs(words, target)}})};
  return made;
}

Book book(Words& words) {
  Book made;
  for (std::string* field : {&made.title, &made.subtitle, &made.edition, &made.date, &made.standing_line}) *field = words.next();
  Chapter chapter;
  chapter.id = words.unsaid();
  const std::string target = words.unsaid();
  for (std::string* field : {&chapter.title, &chapter.tab, &chapter.door.thing}) *field = words.next();
  chapter.door.line = all_runs(words, target);
  IndexList index;
  const std::string seen = words.next();
  index.entries = {{seen, "s", {target}, ""}, {words.next(), "s", {target, words.unsaid()}, ""}, {words.next(), "t", {}, seen}};
  chapter.blocks = {{Paragraph{all_runs(words, target), Paragraph::Role::lead}},
                    {Heading{2, all_runs(words, target), target}},
                    {List{true, {{{Paragraph{all_runs(words, target), Paragraph::Role::note}}}}}},
                    {entry(words, Entry::Rank::key, target)},
                    {entry(words, Entry::Rank::small, target)},
                    {index}};
  made.chapters = {chapter};
  made.cover_notes = {{Paragraph{all_runs(words, target), Paragraph::Role::body}}};
  return made;
}

/// Elements and attributes in order. What depends on the length of words (does a table fold, does a piece stay whole) is
/// left out.
std::string skeleton(const Tokens& tokens) {
  std::string out;
  for (const Token& token : tokens.all) {
    if (token.kind == Token::Kind::end) out += "/" + token.name + "\n";
    if (token.kind != Token::Kind::start) continue;
    out += token.name;
    for (const auto& [name, value] : token.attributes) {
      if (name != "class" && name != "role" && name != "aria-labelledby" && name != "tabindex" && name != "data-label")
        out += " " + name;
    }
    out += "\n";
  }
  return out;
}

std::string said(const Tokens& tokens) {
  std::string out;
  for (const Token& token : tokens.all) {
    out += token.text;
    for (const auto& [name, value] : token.attributes) out += "\x1F" + value + "\x1F";
  }
  return out;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
  return text;
}

struct Read {
  std::string skeletons;
  std::string said;
};

/// Renders the book and reads all pages; the paths differ with the words, the order of pages does not.
Read read_site(const Book& made) {
  report::Findings findings;
  Read out;
  std::vector<std::string> pages;
  for (const auto& [path, bytes] : html::render_site(made, findings)) {
    INFO(path);
    CHECK(path.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-/.") == std::string::npos);
    CHECK(path.find("..") == std::string::npos);
    if (!path.ends_with(".html")) continue;
    const Tokens tokens = tokenize(bytes);
    CHECK(tokens.fault == "");
    for (const Token& token : tokens.all) {
      if (!token.has_attribute("href")) continue;
      const std::string href = token.attribute("href");
      CHECK(href.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-_/.#") == std::string::npos);
      CHECK_FALSE(href.starts_with("/"));
    }
    pages.push_back(skeleton(tokens));
    out.said += said(tokens);
  }
  std::sort(pages.begin(), pages.end());
  for (const std::string& page : pages) out.skeletons += page + "\n----\n";
  return out;
}

}  // namespace

TEST_CASE("hostile words in every field come out as words and change no element", "[html]") {
  REQUIRE(kHostile.size() >= 40);
  Words tame_words("tame");
  const std::string tame = read_site(book(tame_words)).skeletons;
  for (const std::string& hostile : kHostile) {
    INFO(hostile);
    Words words(hostile);
    const Read read = read_site(book(words));
    CHECK(read.skeletons == tame);
    for (const std::string& wanted : words.wanted()) {
      INFO(wanted);
      CHECK(read.said.find(wanted) != std::string::npos);
    }
  }
}

TEST_CASE("code points that HTML forbids and broken UTF-8 are replaced, the rest of the words stays", "[html]") {
  // The counts of U+FFFD are those of the Unicode Standard, section 3.9, "U+FFFD substitution of maximal subparts".
  Words tame_words("tame");
  const std::string tame = read_site(book(tame_words)).skeletons;
  for (const auto& [hostile, shown] : kForbidden) {
    INFO(shown);
    Words words(hostile);
    const Read read = read_site(book(words));
    CHECK(read.skeletons == tame);
    for (const std::string& wanted : words.wanted()) CHECK(read.said.find(replaced(wanted, hostile, shown)) != std::string::npos);
  }
}

}  // namespace benchleaf::html_tests
