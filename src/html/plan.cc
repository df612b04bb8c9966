// In: a book. Out: its pages in reading order, and for every anchor the page and the name on it. Paths and names are made
// of slugs, so no word of a book can lead out of the site.
#include "html/plan.h"

#include <algorithm>

#include "html/calculator_questions.h"

namespace benchleaf::html {

namespace {

std::string path_of_anchor(std::string_view anchor) {
  const std::size_t slash = anchor.find('/');
  const bool split = slash != std::string_view::npos;
  std::string kind = slug(split ? anchor.substr(0, slash) : std::string_view());
  std::string name = slug(split ? anchor.substr(slash + 1) : anchor);
  if (kind.empty()) kind = "record";
  if (name.empty()) name = "unnamed";
  return kind + "/" + name;
}

std::string title_of(const model::Entry& entry) {
  std::string title = model::plain_text(entry.key);
  const std::string second = model::plain_text(entry.second);
  if (!second.empty()) title += (title.empty() ? "" : " ") + second;
  return title.empty() ? entry.anchor : title;
}

}  // namespace

const model::Heading* opening_heading(const model::Chapter& chapter) {
  if (chapter.blocks.empty()) return nullptr;
  const auto* heading = std::get_if<model::Heading>(&chapter.blocks.front().what);
  if (heading == nullptr) return nullptr;
  const bool opens = heading->level <= 1 || model::plain_text(heading->runs) == chapter.title;
  return opens ? heading : nullptr;
}

/// Two walks through the book: the first finds the pages, the second names what stands on them.
class Plan::Walk {
 public:
  explicit Walk(Plan& plan) : plan_(plan) {}

  void find_pages() {
    plan_.add_page({Page::Kind::home, {}, plan_.book_->title, nullptr, nullptr, nullptr, nullptr}, "index");
    plan_.add_page({Page::Kind::contents, {}, "Contents", nullptr, nullptr, nullptr, nullptr}, "contents");
    plan_.add_page({Page::Kind::about, {}, "About this book", nullptr, nullptr, nullptr, nullptr}, "about");
    for (const model::Chapter& chapter : plan_.book_->chapters) {
      const std::string name = slug(chapter.id);
      plan_.add_page({Page::Kind::chapter, {}, chapter.title, &chapter, nullptr, nullptr, nullptr},
                     "chapter/" + (name.empty() ? std::to_string(chapter.number) : name));
      section_ = nullptr;
      for (const model::Block& block : chapter.blocks) find_entries(block, chapter);
    }
    find_calculators();
    if (plan_.book_->ticket_form.sections.empty()) return;  // a book without its program
    plan_.add_page({Page::Kind::ticket, {}, "Plan a ticket", nullptr, nullptr, nullptr, nullptr}, "ticket");
    plan_.add_page({Page::Kind::labels, {}, "Labels for bottles and bags", nullptr, nullptr, nullptr, nullptr}, "labels");
  }

  void name_places() {
    for (const Page& page : plan_.pages_) {
      path_ = page.path;
      own_facts_.clear();
      if (page.kind == Page::Kind::about) name_blocks(plan_.book_->cover_notes);
      if (page.kind == Page::Kind::chapter) name_chapter(*page.chapter);
      if (page.kind == Page::Kind::entry) name_entry(*page.entry);
    }
  }

 private:
  void find_calculators() {
    if (plan_.book_->calculators.empty()) return;
    plan_.add_page({Page::Kind::calculators, {}, "Calculators", nullptr, nullptr, nullptr, nullptr}, "calculators");
    std::vector<const model::CalculatorSheet*> sheets;
    for (const model::CalculatorSheet& sheet : plan_.book_->calculators) sheets.push_back(&sheet);
    std::stable_sort(sheets.begin(), sheets.end(), [](const auto* one, const auto* other) {
      return place_of_calculator(one->name) < place_of_calculator(other->name);
    });
    for (const model::CalculatorSheet* sheet : sheets) {
      const CalculatorQuestion* question = question_of_calculator(sheet->name);
      Page page{Page::Kind::calculator,
                {},
                question == nullptr ? sheet->name : std::string(question->question),
                nullptr,
                nullptr,
                nullptr,
                sheet};
      plan_.add_page(std::move(page), "calculator/" + slug(sheet->name));
      plan_.places_.try_emplace("calculator/" + sheet->name, Place{plan_.pages_.back().path, std::nullopt});
    }
  }

  void find_entries(const model::Block& outer, const model::Chapter& chapter) {
    for_each_block(outer, [&](const model::Block& block) {
      const auto* heading = std::get_if<model::Heading>(&block.what);
      if (heading != nullptr && heading != opening_heading(chapter)) section_ = heading;
      const auto* entry = std::get_if<model::Entry>(&block.what);
      if (entry == nullptr) return;
      plan_.add_page({Page::Kind::entry, {}, title_of(*entry), &chapter, entry, section_, nullptr},
                     path_of_anchor(entry->anchor));
      for (const auto& inner : entry->blocks) {
        if (inner) find_entries_inside(*inner, chapter);
      }
    });
  }

  /// Headings inside an entry are no sections of the chapter.
  void find_entries_inside(const model::Block& block, const model::Chapter& chapter) {
    const model::Heading* section = section_;
    find_entries(block, chapter);
    section_ = section;
  }

  void name_chapter(const model::Chapter& chapter) {
    plan_.places_.try_emplace("chapter/" + chapter.id, Place{path_, std::nullopt});
    const model::Heading* opening = opening_heading(chapter);
    if (opening != nullptr && !opening->anchor.empty()) plan_.places_.try_emplace(opening->anchor, Place{path_, std::nullopt});
    name_blocks(chapter.blocks);
  }

  void name_entry(const model::Entry& entry) {
    own_facts_ = entry.anchor + "#";
    for (const auto* runs : {&entry.key, &entry.second, &entry.aliases}) name_facts(*runs);
    for (const auto& block : entry.blocks) {
      if (block) name_block(*block);
    }
    for (const model::MarginNote& note : entry.margin) {  // last, as it stands
      name_facts(note.label);
      name_facts(note.more);
    }
  }

  void name_blocks(const model::Blocks& blocks) {
    for (const model::Block& block : blocks) name_block(block);
  }

  void name_block(const model::Block& outer) {
    for_each_block(outer,
                   [this](const model::Block& block) { std::visit([this](const auto& what) { name(what); }, block.what); });
  }

  void name(const model::Heading& heading) {
    plan_.add_anchor(heading.anchor, path_, heading.anchor);
    name_facts(heading.runs);
  }
  void name(const model::Paragraph& paragraph) { name_facts(paragraph.runs); }
  void name(const model::Table& table) {
    name_facts(table.caption);
    for (const model::Column& column : table.columns) name_facts(column.head);
    for (const model::TableRow& row : table.rows) {
      plan_.add_anchor(row.anchor, path_, row.anchor);
      for (const model::TableCell& cell : row.cells) name_facts(cell.runs);
    }
  }
  void name(const model::Message& message) {
    name_facts(message.hazard);
    name_facts(message.avoid);
  }
  void name(const model::Step& step) {
    name_facts(step.runs);
    name_facts(step.proof);
  }
  void name(const model::IndexList&) {
    if (plan_.index_path_.empty()) plan_.index_path_ = path_;
  }
  void name(const model::List&) {}
  void name(const model::SideBySide&) {}
  void name(const model::Entry&) {}

  void name_facts(const model::Runs& runs) {
    if (own_facts_.empty()) return;
    for (const model::Run& run : runs) {
      if (run.fact.size() > own_facts_.size() && run.fact.starts_with(own_facts_)) {
        plan_.add_anchor(run.fact, path_, std::string_view(run.fact).substr(own_facts_.size()));
      }
    }
  }

  Plan& plan_;
  const model::Heading* section_ = nullptr;
  std::string path_;
  std::string own_facts_;
};

Plan::Plan(const model::Book& book) : book_(&book) {
  Walk walk(*this);
  walk.find_pages();
  // Entries first: their page is what a reference to the record means, wherever else the record stands in a row.
  for (const Page& page : pages_) {
    if (page.entry != nullptr && !page.entry->anchor.empty())
      places_.try_emplace(page.entry->anchor, Place{page.path, std::nullopt});
  }
  walk.name_places();
}

void Plan::add_page(Page page, std::string wanted_path) {
  std::string path = wanted_path + ".html";
  for (int count = 2; by_path_.contains(path); ++count) path = wanted_path + "-" + std::to_string(count) + ".html";
  page.path = path;
  by_path_.emplace(std::move(path), pages_.size());
  if (page.kind == Page::Kind::chapter) by_chapter_.emplace(page.chapter, pages_.size());
  if (page.kind == Page::Kind::entry) by_entry_.emplace(page.entry, pages_.size());
  pages_.push_back(std::move(page));
}

void Plan::add_anchor(const std::string& anchor, const std::string& path, std::string_view name) {
  if (anchor.empty() || places_.contains(anchor)) return;
  const Id wanted = Id::from_words(name);
  Id id = wanted;
  for (int count = 2; !names_.insert(path + "#" + id.text()).second; ++count) id = wanted.repeated(count);
  places_.emplace(anchor, Place{path, id});
}

const Page* Plan::page_at(std::string_view path) const {
  const auto found = by_path_.find(path);
  return found == by_path_.end() ? nullptr : &pages_.at(found->second);
}

const Page& Plan::page_of(const model::Chapter& chapter) const { return pages_.at(by_chapter_.at(&chapter)); }

const Page& Plan::page_of(const model::Entry& entry) const { return pages_.at(by_entry_.at(&entry)); }

std::optional<Place> Plan::place_of_anchor(std::string_view anchor) const {
  const auto found = places_.find(anchor);
  if (found == places_.end()) return std::nullopt;
  return found->second;
}

std::optional<Place> Plan::place(std::string_view target) const {
  std::optional<Place> exact = place_of_anchor(target);
  const std::size_t hash = target.find('#');
  if (exact || hash == std::string_view::npos) return exact;
  return place_of_anchor(target.substr(0, hash));
}

}  // namespace benchleaf::html
