// In: text items and paths, lengths from the top left corner. Out: PDF operators, lengths from the bottom left corner.
#include "pdf/painter.h"

#include <string_view>

#include "pdf/syntax.h"

namespace benchleaf::pdf {

namespace {

std::string_view paint_operator(const page::PathItem& path) {
  if (path.fill && path.stroke) return path.even_odd ? "B*\n" : "B\n";
  if (path.fill) return path.even_odd ? "f*\n" : "f\n";
  return "S\n";
}

}  // namespace

Painter::Painter(const FontBook& book, page::Length page_height, std::string& out)
    : height_(page_height), out_(out), text_(book, page_height, out) {}

void Painter::draw(const page::Item& item) {
  if (const page::TextItem* text = std::get_if<page::TextItem>(&item.what)) {
    draw_text(*text);
  } else if (const page::SignItem* sign = std::get_if<page::SignItem>(&item.what)) {
    text_.begin();
    text_.show(*sign);
  } else {
    draw_path(std::get<page::PathItem>(item.what));
  }
}

void Painter::stay_in_text() {
  text_.begin();
  text_.pause();
}

void Painter::end_text() { text_.end(); }

void Painter::draw_text(const page::TextItem& text) {
  text_.begin();
  set_fill(text.color);
  text_.show(text);
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
  append_hundredths(out_, point.x);
  out_ += ' ';
  append_hundredths(out_, height_ - point.y);
  out_ += ' ';
}

void Painter::set_fill(page::Color color) {
  if (fill_ == color) return;
  text_.pause();
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
