// In: the display list, the fonts it was set with and a colour profile. Out: the bytes of one PDF file.
#include "pdf/writer.h"

#include <vector>

#include "base/sha256.h"
#include "pdf/content.h"
#include "pdf/deflate.h"
#include "pdf/file_output.h"
#include "pdf/fonts.h"
#include "pdf/glyph_texts.h"
#include "pdf/haru_file.h"

namespace benchleaf::pdf {

std::string write_pdf(const page::Document& document, const page::FontSet& fonts, const IccProfile& profile, report::Findings& findings) {
  (void)profile;
  HaruFile file;
  FontBook book{fonts, gather_texts(document, fonts.size()), {}};
  book.codes = embed_fonts(fonts, book.texts, file, findings);
  std::string names = "/Font <<";
  for (std::size_t i = 0; i < book.codes.size(); ++i) {
    if (book.codes[i].object == 0) continue;
    names += " /" + font_name(static_cast<int>(i)) + " ";
    append_reference(names, book.codes[i].object);
  }
  const ObjectNumber resources = file.add_dictionary(names + " >>");
  std::vector<Piece> pieces;
  base::Sha256 digest;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const std::string content = write_content(document, static_cast<int>(i), book, pieces);
    digest.add(content);
    const ObjectNumber page = file.add_page(deflated(content));
    std::string entries = "/MediaBox [0 0 ";
    append_thousandths(entries, document.pages[i].width);
    entries += ' ';
    append_thousandths(entries, document.pages[i].height);
    entries += "] /Resources ";
    append_reference(entries, resources);
    file.set_entries(page, entries);
  }
  FileOutput out;
  file.write(out);
  const std::string id = digest.finish().substr(0, 32);
  return out.finish({file.catalog(), file.info(), id});
}

}  // namespace benchleaf::pdf
