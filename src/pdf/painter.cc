// In: text items and paths, lengths from the top left corner. Out: PDF operators, lengths from the bottom left corner.
#include "pdf/painter.h"

#include <array>
#include <string_view>

#include "pdf/text_shower.h"

namespace benchleaf::pdf {

namespace {

/// By quarter turns clockwise: the first four numbers of the text matrix.
constexpr std::array<std::string_view, 4> kTurns = {"1 0 0 1 ", "0 -1 1 0 ", "-1 0 0 -1 ", "0 1 -1 0 "};

std::string_view paint_operator(const page::PathItem& path) {
  if (path.fill && path.stroke) return path.even_odd ? "B*\n" : "B\n";
  if (path.fill) return path.even_odd ? "f*\n" : "f\n";
  return "S\n";
}

}  // namespace

Painter::Painter(const FontBook& book, page::Length page_height, std::string& out)
    : book_(book), height_(page_height), out_(out) {}

void Painter::draw(const page::Item& item) {
  if (const page::TextItem* text = std::get_if<page::TextItem>(&item.what)) {
    draw_text(*text);
  } else {
    draw_path(std::get<page::PathItem>(item.what));
  }
}

void Painter::end_text() {
  if (in_text_) out_ += "ET\n";
  in_text_ = false;
}

void Painter::draw_text(const page::TextItem& text) {
  if (!in_text_) out_ += "BT\n";
  in_text_ = true;
  set_fill(text.color);
  set_font(text.font, text.size);
  set_matrix(text);
  const std::size_t font = static_cast<std::size_t>(text.font);
  TextShower(text, book_.codes.at(font), book_.texts.at(font), book_.fonts.metrics(text.font).units_per_em, out_).show();
}

void Painter::set_font(page::FontIndex font, page::Length size) {
  if (font == font_ && size == size_) return;
  font_ = font;
  size_ = size;
  append_name(out_, font_name(font));
  out_ += ' ';
  append_thousandths(out_, size);
  out_ += " Tf\n";
}

void Painter::set_matrix(const page::TextItem& text) {
  out_ += kTurns.at(static_cast<std::size_t>(text.quarter_turns & 3));
  append_point(text.at);
  out_ += "Tm\n";
}

void Painter::draw_path(const page::PathItem& path) {
  end_text();
  if (path.fill) set_fill(*path.fill);
  if (path.stroke) set_stroke(path);
  for (const page::PathSegment& segment : path.segments) append_segment(segment);
  out_ += paint_operator(path);
}

void Painter::append_segment(const page::PathSegment& segment) {
  switch (segment.op) {
    case page::PathSegment::Op::move:
      append_point(segment.to);
      out_ += "m\n";
      break;
    case page::PathSegment::Op::line:
      append_point(segment.to);
      out_ += "l\n";
      break;
    case page::PathSegment::Op::curve:
      append_point(segment.control1);
      append_point(segment.control2);
      append_point(segment.to);
      out_ += "c\n";
      break;
    case page::PathSegment::Op::close: out_ += "h\n"; break;
  }
}

void Painter::append_point(page::Point point) {
  append_thousandths(out_, point.x);
  out_ += ' ';
  append_thousandths(out_, height_ - point.y);
  out_ += ' ';
}

void Painter::set_fill(page::Color color) {
  if (fill_ == color) return;
  fill_ = color;
  append_color(out_, color);
  out_ += " rg\n";
}

void Painter::set_stroke(const page::PathItem& path) {
  if (stroke_ != path.stroke) {
    stroke_ = path.stroke;
    append_color(out_, *path.stroke);
    out_ += " RG\n";
  }
  if (width_ != path.stroke_width) {
    width_ = path.stroke_width;
    append_thousandths(out_, width_);
    out_ += " w\n";
  }
  if (dash_ != path.dash) {
    dash_ = path.dash;
    out_ += '[';
    for (page::Length length : dash_) {
      append_thousandths(out_, length);
      out_ += ' ';
    }
    out_ += "] 0 d\n";
  }
}

}  // namespace benchleaf::pdf
