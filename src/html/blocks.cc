// In: blocks of the book. Out: HTML in book order. Groups that the book gives as neighbours (steps with their messages,
// entries) are set as one list here; each other block goes to its own setter.
#include "html/blocks.h"

#include <algorithm>
#include <map>

#include "html/entry.h"
#include "html/index_list.h"
#include "html/message.h"
#include "html/runs.h"
#include "html/table.h"

namespace benchleaf::html {

namespace {

/// Characters of text that fill three screens of a telephone, as measured on the pages.
constexpr std::size_t kLongContent = 1500;

using BlockRefs = std::vector<const model::Block*>;

template <typename T>
const T* as(const BlockRefs& blocks, std::size_t at) {
  return at < blocks.size() ? std::get_if<T>(&blocks.at(at)->what) : nullptr;
}

ClassName paragraph_class(model::Paragraph::Role role) {
  switch (role) {
    case model::Paragraph::Role::body: return "body";
    case model::Paragraph::Role::lead: return "lead";
    case model::Paragraph::Role::dense: return "dense";
    case model::Paragraph::Role::note: return "note";
    case model::Paragraph::Role::key: return "lead";
  }
  return "body";
}

/// A name for a heading that nothing in the book leads to.
Id name_of_part(const Setting& setting) {
  const Id name = Id::of_frame("part_", setting.last_heading);
  const auto same = std::count_if(setting.parts.begin(), setting.parts.end(),
                                  [&setting](const auto& part) { return slug(part.title) == slug(setting.last_heading); });
  return same == 0 ? name : name.repeated(static_cast<int>(same) + 1);
}

Markup set(const model::Heading& heading, Setting& setting) {
  Element element = heading_element(heading.level, setting);
  if (heading.level >= 4) element.in_class("run-in");
  setting.last_heading = model::plain_text(heading.runs);
  const auto own = claim_name(heading.anchor, setting);
  const Id id = own ? *own : name_of_part(setting);
  element.id(id);
  setting.parts.push_back({setting.level, id, setting.last_heading});
  return element.add(set_runs(heading.runs, setting));
}

Markup set(const model::Paragraph& paragraph, Setting& setting) {
  return Element("p").in_class(paragraph_class(paragraph.role)).add(set_runs(paragraph.runs, setting));
}

Markup set(const model::List& list, Setting& setting) {
  Element element(list.ordered ? ElementName("ol") : ElementName("ul"));
  element.in_class("list");
  for (const model::Blocks& item : list.items) element.add(Element("li").add(set_blocks(item, setting)));
  return list.items.empty() ? Markup() : element.markup();
}

Markup set(const model::Table& table, Setting& setting) { return set_table(table, setting); }

Markup set(const model::Message& message, Setting& setting) { return set_message(message, setting); }

Markup set(const model::IndexList& index, Setting& setting) { return set_index(index, setting); }

/// A screen has no second column to put them into.
Markup set(const model::SideBySide& blocks, Setting& setting) {
  Markup out;
  for (const model::Blocks& column : blocks.columns) out += set_blocks(column, setting);
  return out;
}

/// Never reached: set_blocks gathers steps and entries before it comes here.
Markup set(const model::Step&, Setting&) { return {}; }
Markup set(const model::Entry&, Setting&) { return {}; }

Markup set_step(const model::Step& step, const Markup& messages, int expected, Setting& setting) {
  Element item("li");
  if (step.number != expected) item.set("value", std::to_string(step.number));
  Element words("p");
  words.add(set_runs(step.runs, setting));
  if (!step.see.empty()) words.say(" ").add(set_runs(step.see, setting));
  item.add(messages).add(words);
  if (!step.proof.empty()) item.add(Element("p").in_class("proof").add(set_runs(step.proof, setting)));
  return item;
}

class BlockSetter {
 public:
  BlockSetter(BlockRefs blocks, Setting& setting) : blocks_(std::move(blocks)), setting_(setting) {}

  Markup set_all() {
    Markup out;
    for (at_ = 0; at_ < blocks_.size();) {
      if (step_after_messages(at_) != nullptr) {
        out += set_steps();
      } else if (as<model::Entry>(blocks_, at_) != nullptr) {
        out += set_entries();
      } else {
        out += std::visit([this](const auto& what) { return set(what, setting_); }, blocks_.at(at_)->what);
        ++at_;
      }
    }
    return out;
  }

 private:
  /// The step that `at` or the messages from `at` on lead to, or nullptr.
  const model::Step* step_after_messages(std::size_t at) const {
    while (as<model::Message>(blocks_, at) != nullptr) ++at;
    return as<model::Step>(blocks_, at);
  }

  Markup set_steps() {
    Element list("ol");
    list.in_class("steps");
    int expected = 1;
    while (step_after_messages(at_) != nullptr) {
      Markup messages;
      for (; as<model::Message>(blocks_, at_) != nullptr; ++at_)
        messages += set_message(*as<model::Message>(blocks_, at_), setting_);
      const model::Step& step = *as<model::Step>(blocks_, at_);
      list.add(set_step(step, messages, expected, setting_));
      expected = step.number + 1;
      ++at_;
    }
    return list;
  }

  Markup set_entries() {
    Markup out;
    while (as<model::Entry>(blocks_, at_) != nullptr) {
      std::vector<const model::Entry*> lines;
      while (as<model::Entry>(blocks_, at_) != nullptr && as<model::Entry>(blocks_, at_)->rank != model::Entry::Rank::small) {
        lines.push_back(as<model::Entry>(blocks_, at_));
        ++at_;
      }
      if (!lines.empty()) out += set_register(lines, setting_);
      while (as<model::Entry>(blocks_, at_) != nullptr && as<model::Entry>(blocks_, at_)->rank == model::Entry::Rank::small) {
        out += set_small_entry(*as<model::Entry>(blocks_, at_), setting_);
        ++at_;
      }
    }
    return out;
  }

  BlockRefs blocks_;
  Setting& setting_;
  std::size_t at_ = 0;
};

}  // namespace

Markup set_blocks(std::span<const model::Block> blocks, Setting& setting) {
  BlockRefs refs;
  for (const model::Block& block : blocks) refs.push_back(&block);
  return BlockSetter(std::move(refs), setting).set_all();
}

Markup set_blocks(const std::vector<std::shared_ptr<const model::Block>>& blocks, Setting& setting) {
  BlockRefs refs;
  for (const auto& block : blocks) {
    if (block) refs.push_back(block.get());
  }
  return BlockSetter(std::move(refs), setting).set_all();
}

namespace {

/// How much is read of markup: what stands outside its tags, without the spaces between them.
std::size_t read_length(std::string_view markup) {
  std::size_t length = 0;
  bool in_tag = false;
  for (const char one : markup) {
    if (one == '<') in_tag = true;
    if (!in_tag && one != '\n') ++length;
    if (one == '>') in_tag = false;
  }
  return length;
}

}  // namespace

void add_part(Element& heading, Setting& setting) {
  const Id id = name_of_part(setting);
  heading.id(id);
  setting.parts.push_back({setting.level, id, setting.last_heading});
}

Markup own_contents(const Markup& content, const Setting& setting) {
  if (read_length(content.bytes()) < kLongContent) return {};
  std::map<int, std::vector<const Setting::Part*>> by_level;
  for (const Setting::Part& part : setting.parts) {
    if (!part.title.empty()) by_level[part.level].push_back(&part);
  }
  const auto several = std::find_if(by_level.begin(), by_level.end(), [](const auto& level) { return level.second.size() > 1; });
  if (several == by_level.end()) return {};
  Element list("ul");
  for (const Setting::Part* part : several->second)
    list.add(Element("li").add(Element("a").href(Url::within(part->id)).say(part->title)));
  return Element("nav").in_class("own-contents").set("aria-label", "Contents of " + setting.page.title).add(list);
}

Element heading_element(int wanted_level, Setting& setting) {
  setting.level = std::clamp(wanted_level - setting.raised, 2, std::min(setting.level + 1, 6));
  switch (setting.level) {
    case 2: return Element("h2");
    case 3: return Element("h3");
    case 4: return Element("h4");
    case 5: return Element("h5");
    default: return Element("h6");
  }
}

}  // namespace benchleaf::html
