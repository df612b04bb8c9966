// In: a composed handbook. Out: its pages on each paper, and on which of them a record stands.
#include "command/set_books.h"

#include <algorithm>
#include <utility>

#include "model/paper_size.h"
#include "page/set_book.h"
#include "read/two_threads.h"

namespace benchleaf::command {
namespace {

/// On which page each record stands.
std::map<std::string, std::string> pages_of(const page::Document& document, const std::vector<std::string>& records) {
  std::map<std::string, std::string> pages;
  for (const std::string& record : records) {
    if (std::string page = page::page_label(document, record); !page.empty()) pages.emplace(record, std::move(page));
  }
  return pages;
}

}  // namespace

bool is_wanted_on(const BindOptions& options, const std::string& paper) {
  return std::find(options.papers.begin(), options.papers.end(), paper) != options.papers.end();
}

std::vector<SetBook> set_books(const BindOptions& options, const std::vector<std::string>& book_papers, const model::Book& book,
                               const TypeCase& type, const std::vector<std::string>& records) {
  std::vector<SetBook> books;
  for (const std::string& paper : book_papers) {
    const auto named = [&](const auto& size) { return size.book == paper && is_wanted_on(options, std::string(size.name)); };
    const bool wanted = options.pdf && is_wanted_on(options, paper);
    const bool by_charts = options.charts && std::any_of(model::kPaperSizes.begin(), model::kPaperSizes.end(), named);
    if (wanted || by_charts) books.push_back({paper, wanted, {}, {}, {}});
  }
  read::on_two_threads(books.size(), [&](std::size_t i) {
    books[i].document = set_on(book, books[i].paper, type, books[i].findings);
    books[i].pages = pages_of(books[i].document, records);
  });
  return books;
}

compose::PageOf pages_for(const std::string& paper, const std::vector<SetBook>& books) {
  const model::PaperSize* size = model::paper_size(paper);
  const auto own =
      std::find_if(books.begin(), books.end(), [&](const SetBook& book) { return size != nullptr && book.paper == size->book; });
  if (own == books.end()) return [](const std::string&) { return std::string(); };
  return [&pages = own->pages](const std::string& record) {
    const auto page = pages.find(record);
    return page == pages.end() ? std::string() : page->second;
  };
}

std::string named_book(const std::string& paper) {
  const model::PaperSize* size = model::paper_size(paper);
  const model::PaperSize* book = size == nullptr ? nullptr : model::paper_size(size->book);
  return "handbook" + (book == nullptr ? std::string() : " on " + std::string(book->title));
}

}  // namespace benchleaf::command
