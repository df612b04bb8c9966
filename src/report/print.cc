// In: findings and the files they speak of. Out: lines for a terminal. The only place that formats a finding for people.
#include "report/print.h"

#include <algorithm>
#include <map>
#include <utility>

#include "base/utf8.h"

namespace benchleaf::report {

namespace {

constexpr std::string_view kIndent = "    ";
constexpr std::size_t kMostShown = 100;   ///< characters of a source line
constexpr std::size_t kBeforeCaret = 40;  ///< of them in front of the caret when the line is cut
constexpr char32_t kEllipsis = U'\u2026';

/// What could steer a terminal or turn the reading direction: controls, bidirectional marks, line separators.
bool is_unprintable(char32_t code) {
  if (code < 0x20 || (code >= 0x7F && code <= 0x9F) || code == 0x061C || code == 0xFEFF) return true;
  return (code >= 0x200B && code <= 0x200F) || (code >= 0x2028 && code <= 0x202E) || (code >= 0x2060 && code <= 0x2069);
}

/// Code points fit for a terminal, as many as there were, so that columns stay.
std::u32string printable(std::string_view text) {
  std::u32string codes = base::code_points(text);
  for (char32_t& code : codes) {
    if (code == '\t') code = ' ';
    if (is_unprintable(code)) code = U'\uFFFD';
  }
  return codes;
}

std::string clean(std::string_view text) { return base::to_utf8(printable(text)); }

class Printer {
 public:
  Printer(const base::FileTable& files, bool colour) : files_(files), colour_(colour) {}

  void finding(const Finding& finding) {
    const std::string rule(rule_info(finding.rule).id);
    head(finding.where, finding.severity, finding.message, " [" + rule + "]");
    quote(finding.where);
    if (!finding.hint.empty()) out_ += "  " + painted("hint:", "1;32") + " " + clean(finding.hint) + "\n";
    for (const Note& note : finding.notes) {
      out_ += "  ";
      head(note.where, Severity::note, note.text, {});
      quote(note.where);
    }
  }

  void line(const std::string& text) { out_ += text + "\n"; }
  std::string place(const base::Span& where) const;
  std::string take() { return std::move(out_); }

 private:
  std::string painted(std::string_view text, std::string_view code) const {
    if (!colour_) return std::string(text);
    return "\x1b[" + std::string(code) + "m" + std::string(text) + "\x1b[0m";
  }

  void head(const base::Span& where, Severity severity, std::string_view message, std::string_view tail) {
    const std::string_view paint = severity == Severity::error ? "1;31" : severity == Severity::warning ? "1;33" : "1;36";
    const std::string shown = place(where);
    if (!shown.empty()) out_ += painted(shown + ":", "1") + " ";
    out_ += painted(std::string(severity_name(severity)) + ":", paint) + " " + clean(message) + std::string(tail) + "\n";
  }

  void quote(const base::Span& where);

  const base::FileTable& files_;
  bool colour_;
  std::string out_;
};

std::string Printer::place(const base::Span& where) const {
  if (where.file == base::kNoFile) return {};
  std::string text = clean(files_.path(where.file));
  if (where.line > 0) text += ":" + std::to_string(where.line);
  if (where.line > 0 && where.column > 0) text += ":" + std::to_string(where.column);
  return text;
}

/// The source line and, under it, the caret with a tail as long as the span.
void Printer::quote(const base::Span& where) {
  if (where.file == base::kNoFile || where.line < 1 || where.column < 1) return;
  std::u32string codes = printable(files_.line(where.file, where.line));
  std::size_t caret = static_cast<std::size_t>(where.column) - 1;
  if (codes.empty() || caret > codes.size()) return;
  if (codes.size() > kMostShown) {
    const std::size_t cut = caret > kBeforeCaret ? std::min(caret - kBeforeCaret, codes.size() - kMostShown) : 0;
    const bool more = cut + kMostShown < codes.size();
    codes = codes.substr(cut, kMostShown);
    caret -= cut;
    if (cut > 0) codes.front() = kEllipsis;
    if (more) codes.back() = kEllipsis;
  }
  const std::size_t length = static_cast<std::size_t>(std::max(where.length, 1));
  const std::string marked = base::to_utf8(codes.substr(std::min(caret, codes.size()), length));
  const int before = base::display_width(base::to_utf8(codes.substr(0, caret)));
  const int tail = std::max(base::display_width(marked) - 1, 0);
  out_ += std::string(kIndent) + base::to_utf8(codes) + "\n";
  out_ += std::string(kIndent) + std::string(static_cast<std::size_t>(before), ' ') +
          painted("^" + std::string(static_cast<std::size_t>(tail), '~'), "1;32") + "\n";
}

std::string counted(int count, std::string_view what) {
  return std::to_string(count) + " " + std::string(what) + (count == 1 ? "" : "s");
}

}  // namespace

std::string printable_line(std::string_view text) { return clean(text); }

std::string findings_text(const Findings& findings, const base::FileTable& files, PrintOptions options) {
  const int notes = options.notes ? 0 : findings.count(Severity::note);
  if (static_cast<int>(findings.all().size()) == notes) return {};
  Printer printer(files, options.colour);
  std::map<std::pair<std::string, Rule>, int> seen;
  for (const Finding& finding : findings.all()) {
    if (!options.notes && finding.severity == Severity::note) continue;
    int& count = seen[{printer.place({finding.where.file, 0, 0, 0}), finding.rule}];
    if (++count <= kMostPrinted) printer.finding(finding);
  }
  for (const auto& [where, count] : seen) {
    if (count <= kMostPrinted) continue;
    const std::string file = where.first.empty() ? "" : " in " + where.first;
    printer.line(std::to_string(count - kMostPrinted) + " more of [" + std::string(rule_info(where.second).id) + "]" + file +
                 " not shown");
  }
  printer.line(count_text(findings));
  return printer.take();
}

std::string count_text(const Findings& findings) {
  std::string text;
  for (Severity severity : {Severity::error, Severity::warning, Severity::note}) {
    const int count = findings.count(severity);
    if (count == 0) continue;
    if (!text.empty()) text += ", ";
    text += counted(count, severity_name(severity));
  }
  return text.empty() ? "no problems" : text;
}

}  // namespace benchleaf::report
