// In: nothing. Out: a display list with a bit of everything.
#include "trial_book.h"

#include <utility>

namespace benchleaf::pdf {

namespace {

constexpr page::Color kInk{34, 34, 34};
constexpr page::Color kRed{190, 20, 30};
constexpr page::Length kLeft = 60 * page::kPt;

using page::Role;

Composer::Style style(page::Face face, int size, page::Color color = kInk) { return {face, size * page::kPt, color, 0}; }

void add_running_head(Composer& trial, int page, const std::string& words) {
  trial.add_text(page, page::kPaginationArtifact, {kLeft, 40'000}, words, style(page::Face::condensed, 8));
  Composer::Style tab = style(page::Face::condensed_bold, 9);
  tab.quarter_turns = 1;
  trial.add_text(page, page::kPaginationArtifact, {570'000, 100'000}, "Thumb tab", tab);
}

void add_front(Composer& trial) {
  const int cover = trial.add_page("i");
  const page::TagId part = trial.add_tag(Role::part, 0);
  trial.add_rectangle(cover, page::kLayoutArtifact, {0, 0, 595'276, 90'000}, kRed);
  trial.add_text(cover, trial.add_tag(Role::h1, part), {kLeft, 200'000}, "Office manual", style(page::Face::text_bold, 30));
  trial.add_text(cover, trial.add_tag(Role::p, part), {kLeft, 240'000}, "for invented cells");

  const int contents = trial.add_page("ii");
  add_running_head(trial, contents, "Contents");
  const page::TagId list = trial.add_tag(Role::toc, part);
  const page::TagId entry = trial.add_tag(Role::toc_item, list);
  const page::TagId reference = trial.add_tag(Role::reference, entry);
  const page::TagId link = trial.add_tag(Role::link, reference);
  trial.add_text(contents, link, {kLeft, 100'000}, "Signs and spaces ");
  trial.add_text(contents, link, {300'000, 100'000}, "1");
  trial.page(contents).links.push_back({{kLeft, 90'000, 310'000, 104'000}, "chapter/signs", "Signs and spaces, page 1", link});
}

/// The paragraph that shows what a text can hold.
void add_signs(Composer& trial, int page, page::TagId chapter) {
  trial.add_text(page, trial.add_tag(Role::h1, chapter), {kLeft, 90'000}, "Signs and spaces", style(page::Face::text_bold, 16));
  trial.add_text(page, trial.add_tag(Role::p, chapter), {kLeft, 120'000},
                 "An affluent office, a waffle and a fjord at ≥\u00A03\u2009µA, −5\u2009°C.");
  const page::TagId mixed = trial.add_tag(Role::p, chapter);
  trial.add_text(page, mixed, {kLeft, 140'000}, "A drain of ");
  const page::TagId fact = trial.add_tag(Role::span, mixed);
  trial.tag(fact).set().title = "cell/sr754w#size.diameter";
  trial.add_text(page, fact, {115'000, 140'000}, "7.9\u2009mm", style(page::Face::text_bold, 10));
  trial.add_text(page, mixed, {160'000, 140'000}, "is not a diam-");
  std::get<page::TextItem>(trial.page(page).items.back().what).text = "is not a diam\u00AD";  // as a hyphen at a line end comes
  trial.add_text(page, mixed, {kLeft, 154'000}, "eter of 10 mm.");
  trial.add_text(page, trial.add_tag(Role::p, chapter), {kLeft, 174'000}, "⚠ →", style(page::Face::symbol, 12));
  // Far from the common: a glyph raised, one moved aside, spaces stretched.
  page::TextItem& moved = trial.add_text(page, trial.add_tag(Role::p, chapter), {kLeft, 194'000}, "AVATAR To Wall raised ends");
  for (page::Glyph& glyph : moved.glyphs) {
    if (moved.text.at(glyph.cluster) == ' ') glyph.extra = 1'234;
  }
  moved.glyphs.at(12).dy = 300;
  moved.glyphs.at(13).dx = 250;
  // A trust sign among words.
  const page::TagId said = trial.add_tag(Role::p, chapter);
  trial.add_text(page, said, {kLeft, 212'000}, "About nine years ");
  page::SignItem sign{model::Trust::trade, true, {150'000, 212'000}, 7'000};
  trial.page(page).items.push_back({said, sign});
}

void add_steps(Composer& trial, int page, page::TagId chapter) {
  const page::TagId list = trial.add_tag(Role::list, chapter);
  page::Length y = 230'000;
  for (const auto& [number, words] : {std::pair{"1", "Open the back."}, {"2", "Lift the cell."}}) {
    const page::TagId item = trial.add_tag(Role::list_item, list);
    trial.add_text(page, trial.add_tag(Role::label, item), {kLeft, y}, std::string(number) + ". ");
    trial.add_text(page, trial.add_tag(Role::list_body, item), {kLeft + 20'000, y}, words);
    y += 16'000;
  }
  trial.add_text(page, trial.add_tag(Role::note, chapter), {kLeft, 270'000}, "Watch the spring.",
                 style(page::Face::text_italic, 8));
  const page::TagId see = trial.add_tag(Role::p, chapter);
  trial.add_text(page, see, {kLeft, 290'000}, "See ");
  const page::TagId link = trial.add_tag(Role::link, see);
  trial.add_text(page, link, {90'000, 290'000}, "the sizes");
  trial.page(page).links.push_back({{90'000, 280'000, 140'000, 294'000}, "table/sizes", "the sizes, page 2", link});
}

void add_figure(Composer& trial, int page, page::TagId chapter) {
  const page::TagId figure = trial.add_tag(Role::figure, chapter);
  trial.tag(figure).set().alt = "A round cell beside a rule of 10 mm";
  trial.tag(figure).set().box = page::Box{kLeft, 320'000, 200'000, 420'000};
  trial.tag(figure).set().box_page = page;
  using Op = page::PathSegment::Op;
  page::PathItem curve;
  curve.segments = {{Op::move, {70'000, 370'000}, {}, {}},
                    {Op::curve, {130'000, 370'000}, {70'000, 320'000}, {130'000, 320'000}},
                    {Op::curve, {70'000, 370'000}, {130'000, 420'000}, {70'000, 420'000}},
                    {Op::close, {}, {}, {}}};
  curve.fill = page::Color{220, 220, 220};
  curve.stroke = kInk;
  curve.stroke_width = 750;
  curve.even_odd = true;
  trial.add_path(page, figure, curve);
  page::PathItem dashes;
  dashes.segments = {{Op::move, {140'000, 410'000}, {}, {}}, {Op::line, {168'346, 410'000}, {}, {}}};
  dashes.stroke = kRed;
  dashes.stroke_width = 1'500;
  dashes.dash = {2'500, 1'250};
  trial.add_path(page, figure, dashes);
  trial.add_text(page, trial.add_tag(Role::caption, chapter), {kLeft, 440'000}, "Figure 1 A cell at true size");
}

page::TagId add_cell(Composer& trial, page::TagId row, Role role, int page, page::Point at, const std::string& words) {
  const page::TagId cell = trial.add_tag(role, row);
  if (!words.empty()) trial.add_text(page, cell, at, words);
  return cell;
}

void add_table(Composer& trial, int first, int second, page::TagId chapter) {
  const page::TagId table = trial.add_tag(Role::table, chapter);
  const page::TagId head = trial.add_tag(Role::row, trial.add_tag(Role::table_head, table));
  const page::TagId size = add_cell(trial, head, Role::header_cell, first, {kLeft, 500'000}, "Size");
  const page::TagId names = add_cell(trial, head, Role::header_cell, first, {160'000, 500'000}, "Names");
  for (const page::TagId cell : {size, names}) trial.tag(cell).scope = page::Tag::Scope::column;
  trial.tag(size).set().id = "sizes-1";
  trial.tag(names).set().id = "sizes-2";
  trial.tag(names).set().column_span = 2;
  const page::TagId body = trial.add_tag(Role::table_body, table);

  const page::TagId row = trial.add_tag(Role::row, body);
  const page::TagId key = add_cell(trial, row, Role::header_cell, first, {kLeft, 520'000}, "7.9");
  trial.tag(key).scope = page::Tag::Scope::row;
  const page::TagId split = add_cell(trial, row, Role::data_cell, first, {160'000, 520'000}, "begun here ");
  trial.tag(split).set().headers = {"sizes-2"};
  trial.add_text(second, page::kPaginationArtifact, {kLeft, 90'000}, "Size Names");
  trial.add_text(second, split, {160'000, 110'000}, "ended there");
  const page::TagId empty = add_cell(trial, row, Role::data_cell, second, {}, "");
  trial.tag(empty).set().headers = {"sizes-2"};

  const page::TagId last = trial.add_tag(Role::row, body);
  const page::TagId last_key = add_cell(trial, last, Role::header_cell, second, {kLeft, 130'000}, "9.5");
  trial.tag(last_key).scope = page::Tag::Scope::row;
  add_cell(trial, last, Role::data_cell, second, {160'000, 130'000}, "one");
  add_cell(trial, last, Role::data_cell, second, {260'000, 130'000}, "two");
}

}  // namespace

Composer make_trial(const page::FontSet& fonts) {
  Composer trial(fonts);
  add_front(trial);
  const page::TagId chapter = trial.add_tag(Role::part, 0);
  const int first = trial.add_page("1");
  const int second = trial.add_page("2");
  add_running_head(trial, first, "Signs to sizes");
  add_signs(trial, first, chapter);
  add_steps(trial, first, chapter);
  add_figure(trial, first, chapter);
  add_running_head(trial, second, "Sizes");
  add_table(trial, first, second, chapter);
  trial.document.destinations = {{"chapter/signs", {first, kLeft, 70'000}}, {"table/sizes", {second, kLeft, 80'000}}};
  trial.document.bookmarks = {
      {1, "Signs & spaces – µ", "chapter/signs"}, {2, "Sizes", "table/sizes"}, {1, "Sizes again", "table/sizes"}};
  return trial;
}

}  // namespace benchleaf::pdf
