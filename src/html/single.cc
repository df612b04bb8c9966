// In: a book. Out: one file with all of it.
#include "html/single.h"

#include <algorithm>
#include <vector>

#include "base/sha256.h"
#include "html/assets.h"
#include "html/page_content.h"
#include "html/places.h"
#include "html/rehome.h"
#include "html/signs.h"

namespace benchleaf::html {

namespace {

std::string_view asset(std::string_view path) {
  const auto& all = assets();
  return std::find_if(all.begin(), all.end(), [path](const Asset& one) { return one.path == path; })->text;
}

int digit_of(char hex) { return hex <= '9' ? hex - '0' : hex - 'a' + 10; }

/// The digest as a content security policy names it: base 64 of its bytes (RFC 4648).
std::string hash_source(std::string_view text) {
  constexpr std::string_view kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  const std::string hex = base::sha256(text);
  std::string out = "'sha256-";
  // three hexadecimal digits are twelve bits, two digits of base 64; the last of 64 stands alone
  for (std::size_t i = 0; i < hex.size(); i += 3) {
    int bits = 0;
    for (std::size_t k = i; k < i + 3; ++k) bits = bits * 16 + (k < hex.size() ? digit_of(hex[k]) : 0);
    out += kDigits[static_cast<std::size_t>(bits >> 6)];
    out += kDigits[static_cast<std::size_t>(bits & 63)];
  }
  return out.substr(0, 8 + 43) + "='";
}

/// How much lower the headings of a page stand than the book's.
int depth_of(Page::Kind kind) {
  if (kind == Page::Kind::home) return 0;
  return kind == Page::Kind::entry || kind == Page::Kind::calculator ? 2 : 1;
}

std::string sections(const Plan& plan, Setting& whole) {
  std::string out;
  for (const Page& page : plan.pages()) {
    Setting setting(plan, page);
    const Markup content = set_page(setting);
    const std::string record = page.entry != nullptr ? " data-record=\"" + words(page.entry->anchor).bytes() + "\"" : "";
    out += "<section class=\"sheet\" id=\"" + name_of_page(page.path) + "\"" + record + ">" +
           rehomed(content.bytes(), page.path, depth_of(page.kind)) + "</section>\n";
    whole.signs.insert(setting.signs.begin(), setting.signs.end());
    whole.verdicts.insert(setting.verdicts.begin(), setting.verdicts.end());
    whole.alert = whole.alert || setting.alert;
  }
  return out;
}

std::string thumb_index(const Plan& plan) {
  std::string items;
  for (const model::Chapter& chapter : plan.book().chapters) {
    const std::string title = words(chapter.tab.empty() ? chapter.title : chapter.tab).bytes();
    items += "<li><a href=\"#" + name_of_page(plan.page_of(chapter).path) + "\"><b>" + std::to_string(chapter.number) +
             "</b> <span>" + title + "</span></a></li>";
  }
  return "<nav class=\"thumb\" aria-label=\"Chapters\"><ul>" + items + "</ul></nav>";
}

std::string head(const model::Book& book, const std::vector<std::string>& scripts) {
  const std::string style(asset(kStylePath));
  std::string policy = "default-src 'none'; style-src " + hash_source(style) + "; script-src 'wasm-unsafe-eval'";
  for (const std::string& script : scripts) policy += " " + hash_source(script);
  policy += "; base-uri 'none'; form-action 'none'";
  return "<head><meta charset=\"utf-8\"><meta http-equiv=\"Content-Security-Policy\" content=\"" + policy +
         "\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"color-scheme\" content=\"light "
         "dark\"><title>" +
         words(book.title).bytes() + "</title><style>" + style + "</style></head>\n";
}

/// A script for the middle of a page: HTML forbids control characters, and in a script they stand in literals alone, where an
/// escape says the same (ECMA-262, 12.9.4).
std::string without_controls(std::string_view script) {
  constexpr std::string_view kHex = "0123456789abcdef";
  std::string out;
  out.reserve(script.size());
  const auto add = [&out, kHex](unsigned char one) { (out += "\\x") += {kHex[one >> 4U], kHex[one & 15U]}; };
  for (std::size_t i = 0; i < script.size(); ++i) {
    const auto one = static_cast<unsigned char>(script[i]);
    const bool space = one == '\n' || one == '\t' || one == '\r';
    const bool second_set = one == 0xC2 && i + 1 < script.size() && static_cast<unsigned char>(script[i + 1]) < 0xA0;
    if (second_set)
      add(static_cast<unsigned char>(script[++i]));
    else if ((one < 0x20 && !space) || one == 0x7F)
      add(one);
    else
      out += script[i];
  }
  return out;
}

}  // namespace

std::string render_single(const model::Book& book, const std::vector<std::string>& program) {
  const Plan plan(book);
  Setting whole(plan, plan.pages().front());
  const std::string content = sections(plan, whole);
  std::vector<std::string> scripts;
  for (const std::string& script : program) scripts.push_back(without_controls(script));
  scripts.push_back(places_script(plan));
  for (const auto path :
       {kAskPath, kFieldsPath, kPagePath, kStepsPath, kTrueSizePath, kCalculatorPath, kYamlPath, kTicketFormPath, kLabelsPath})
    scripts.push_back(without_controls(asset(path)));
  std::string out = "<!doctype html>\n<html lang=\"" + words(book.language).bytes() + "\" data-root=\"\" data-single=\"yes\">" +
                    head(book, scripts) + "<body>" + sprite(whole).bytes() +
                    "<header class=\"top\"><a class=\"brand\" href=\"#index\">" + words(book.title).bytes() +
                    "</a><nav aria-label=\"Book\"><ul><li><a href=\"#" + name_of_page(kContentsPath) +
                    "\">Contents</a></li></ul></nav></header>" + thumb_index(plan) + "<main>" + content + "</main>\n";
  for (const std::string& script : scripts) out += "<script>" + script + "</script>\n";
  return out + "</body></html>\n";
}

}  // namespace benchleaf::html
