// In: runs of the book. Out: lines as strips, with links, slots for page numbers, and structure elements.
#include "page/words.h"

#include <algorithm>
#include <utility>

#include "base/span.h"
#include "page/joined_units.h"

namespace benchleaf::page {
namespace {

constexpr double kCodeScale = 0.82;
constexpr double kScriptScale = 0.68;
constexpr double kKeyLeading = 1.15;
constexpr double kNumberLeading = 0.88;  // of figures and capitals: nothing hangs below the line
constexpr double kCaptionLeading = 1.12;
constexpr double kOneLineLeading = 1.0;

Align align_of(Look::Flush flush) {
  switch (flush) {
    case Look::Flush::left: return Align::left;
    case Look::Flush::justified: return Align::justify;
    case Look::Flush::right: return Align::right;
    case Look::Flush::centre: return Align::centre;
  }
  return Align::left;
}

Length scaled(Length length, double factor) { return static_cast<Length>(static_cast<double>(length) * factor); }

}  // namespace

Words::Words(Setting& setting, const model::Runs& runs, const Look& look, TagId parent) : look_(look), parent_(parent) {
  for (const model::Run& run : runs) {
    switch (run.kind) {
      case model::Run::Kind::text: add_text(setting, run, parent); break;
      case model::Run::Kind::page_of: add_slot(setting, run, parent); break;
      case model::Run::Kind::source_key: add_source_key(setting, run, parent); break;
      case model::Run::Kind::trust_sign: add_trust(run, parent); break;
      case model::Run::Kind::verdict: add_verdict(setting, run, parent); break;
      case model::Run::Kind::blank: add_blank(run); break;
      case model::Run::Kind::tick: add_tick(); break;
      case model::Run::Kind::line_break:
        pieces_.push_back({"\n", style(model::Style::plain), parent, {}, {}, {}});
        links_.push_back(kLayoutArtifact);
        break;
    }
  }
}

TextStyle Words::style(model::Style wanted) const {
  TextStyle style;
  const bool bold = model::has(wanted, model::Style::bold | model::Style::number | model::Style::look_up);
  const bool italic = model::has(wanted, model::Style::italic);
  style.face = bold ? (italic ? look_.bold_italic : look_.bold) : (italic ? look_.italic : look_.plain);
  style.size = look_.size();
  style.leading = look_.leading();
  style.color = look_.color;
  style.tracking = static_cast<Length>(look_.tracking_pt * kPt);
  if (model::has(wanted, model::Style::code)) {
    style.face = Face::mono;
    style.size = scaled(style.size, kCodeScale);
  }
  const bool number = model::has(wanted, model::Style::number);
  if (number || model::has(wanted, model::Style::look_up)) {
    style.size = scaled(style.size, number ? kNumberScale : kLookUpScale);
    style.leading = scaled(style.size, number ? kNumberLeading : kKeyLeading);
  }
  if (model::has(wanted, model::Style::one_line)) style.leading = scaled(style.size, kOneLineLeading);
  if (model::has(wanted, model::Style::caption)) {
    style.size = scaled(style.size, kCaptionScale);
    style.leading = scaled(style.size, kCaptionLeading);
  }
  if (model::has(wanted, model::Style::accent)) style.color = print_color(model::Ink::accent);
  if (model::has(wanted, model::Style::subscript)) {
    style.rise = -style.size / 6;
    style.size = scaled(style.size, kScriptScale);
  }
  return style;
}

TagId Words::link_tag(Setting& setting, const model::Run& run, TagId parent) {
  if (run.target.empty() || parent < 0 || !setting.anchors.contains(run.target)) return kLayoutArtifact;
  // A name and its page number behind it are one link.
  const bool goes_on = run.kind == model::Run::Kind::page_of && !pieces_.empty() && pieces_.back().link == run.target;
  if (goes_on) return links_.back();
  if (!setting.linked.insert(run.target).second) return kLayoutArtifact;
  return setting.add_tag(Role::link, parent);
}

void Words::add_text(Setting& setting, const model::Run& run, TagId parent) {
  if (run.text.empty()) return;
  const TagId link = link_tag(setting, run, parent);
  TagId tag = link >= 0 ? link : parent;
  if (!run.fact.empty() && parent >= 0) {
    tag = setting.add_tag(Role::span, tag);
    setting.tags.back().set().title = run.fact;
  }
  add_piece(run, tag, link);
}

/// Small and in the second ink: who reads on passes it over.
void Words::add_source_key(Setting& setting, const model::Run& run, TagId parent) {
  if (!setting.anchors.contains(run.target)) return;
  const TagId link = link_tag(setting, run, parent);
  TextStyle look = style(model::Style::plain);
  look.face = Face::condensed;
  look.size = std::min<Length>(look.size, look::source_key().size());
  look.color = look::source_key().color;
  pieces_.push_back({run.text, look, link >= 0 ? link : parent, link >= 0 ? run.target : std::string(), {}, {}});
  links_.push_back(link);
}

void Words::add_piece(const model::Run& run, TagId tag, TagId link) {
  pieces_.push_back({with_units_joined(run.text), style(run.style), tag, link >= 0 ? run.target : std::string(), {}, {}});
  links_.push_back(link);
}

void Words::add_box(BoxContent content, Length width, Length height, Length depth, TagId link, const std::string& target) {
  Piece piece;
  piece.style = style(model::Style::plain);
  piece.tag = parent_;
  piece.link = link >= 0 ? target : std::string();
  if (link >= 0) piece.text = "page of " + target;  // what a reader that speaks says of the link; never set
  piece.box = InlineBox{width, height, depth, static_cast<int>(boxes_.size())};
  pieces_.push_back(std::move(piece));
  links_.push_back(link);
  boxes_.push_back(std::move(content));
}

Length Words::natural_width(Setting& setting) const { return pieces_.empty() ? 0 : setting.text.natural_width(pieces_); }

Length Words::minimum_width(Setting& setting) const {
  return pieces_.empty() ? 0 : setting.text.minimum_width(pieces_, look_.hyphens);
}

Length Words::point_offset(Setting& setting) const {
  std::vector<MissingGlyph> missing;
  const SetLine line = setting.text.set_line(pieces_, missing);
  const std::vector<Length> points = decimal_points(setting.text.fonts(), line);
  return points.empty() ? line.width : points.front();
}

Strips Words::set(Setting& setting, Length width) const { return set(setting, width, look_.flush); }

Strips Words::set(Setting& setting, Length width, Look::Flush flush) const {
  if (pieces_.empty()) return {};
  ParagraphOptions options;
  options.width = width;
  options.align = align_of(flush);
  options.hyphenate = look_.hyphens;
  SetParagraph paragraph = setting.text.set(pieces_, options);
  report_missing(paragraph.missing, base::Span{}, setting.findings);
  Strips lines;
  for (const SetLine& line : paragraph.lines) {
    if (line.too_wide > 0) {
      std::string words;
      for (const Piece& piece : pieces_) words += piece.text;
      setting.findings.add(report::Rule::page_too_wide, {}, "the words '" + words.substr(0, 60) + "' are wider than their column",
                           "shorten them or give the column more room");
    }
    lines.push_back(strip_of(line));
    const bool full = options.align == Align::justify && &line != &paragraph.lines.back();
    for (Slot& slot : lines.back().slots) slot.justified = full;
  }
  return lines;
}

Strip Words::strip_of(const SetLine& line) const {
  Strip strip;
  strip.height = line.height;
  const Length baseline = line.baseline - line.top;
  strip.baseline = baseline;
  for (const PlacedPiece& part : line.pieces) {
    const auto piece = static_cast<std::size_t>(part.piece);
    if (const auto* text = std::get_if<TextItem>(&part.what)) {
      TextItem item = *text;
      item.at.y += baseline;
      strip.items.push_back({part.tag, std::move(item)});
    } else {
      BoxContent content = boxes_.at(static_cast<std::size_t>(std::get<InlineBox>(part.what).index));
      for (Item& item : content.items) {
        shift(item, part.x, baseline);
        strip.items.push_back(std::move(item));
      }
      for (Slot& slot : content.slots) {
        slot.at.x += part.x;
        slot.at.y += baseline;
        slot.before = part.x - line.left;
        slot.after = line.left + line.width - part.x - slot.width;
        strip.slots.push_back(std::move(slot));
      }
    }
    if (part.link.empty()) continue;
    const Box box{part.x, 0, part.x + part.width, line.height};
    if (!strip.links.empty() && strip.links.back().tag == links_.at(piece)) {
      strip.links.back().box.right = box.right;
    } else {
      strip.links.push_back({box, part.link, pieces_.at(piece).text, links_.at(piece)});
    }
  }
  return strip;
}

PlainLine set_plain(Setting& setting, std::string_view text, const Look& look, TagId tag) {
  const Words words(setting, {model::text_run(std::string(text))}, look, tag);
  PlainLine line;
  line.width = words.natural_width(setting);
  for (Strip& strip : words.set(setting, line.width + kPt, Look::Flush::left)) {
    for (Item& item : strip.items) {
      std::get<TextItem>(item.what).at.y = 0;
      line.items.push_back(std::move(item));
    }
  }
  return line;
}

void turn(PlainLine& line, Point at, int quarter_turns) {
  for (Item& item : line.items) {
    auto& placed = std::get<TextItem>(item.what);
    const Length along = placed.at.x;
    placed.at = {at.x, at.y + (quarter_turns == 1 ? along : -along)};
    placed.quarter_turns = quarter_turns;
  }
}

void keep_lines(Strips& lines) {
  if (lines.size() < 2) return;
  lines.front().keep_next = true;
  lines[lines.size() - 2].keep_next = true;
}

Strips set_paragraph(Setting& setting, const model::Runs& runs, const Look& look, Length width, TagId parent, Length before) {
  const TagId tag = parent < 0 ? parent : setting.add_tag(Role::p, parent);
  Strips lines = Words(setting, runs, look, tag).set(setting, width);
  keep_lines(lines);
  if (!lines.empty()) lines.front().before = before;
  return lines;
}

}  // namespace benchleaf::page
