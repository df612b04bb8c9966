// A contributor's slip does not reach the page: the real content is damaged one slip at a time, with a fixed seed, and a rule
// must say something new about the damaged file. What is to be caught is a bar of the house; which fields nobody can know stands
// in open_fields.txt. `slips_test [table]` prints what was caught by kind and by field.

#include "support/catch.h"

#include <algorithm>
#include <iomanip>
#include <iostream>
#include <thread>

#include "slips/open_fields.h"
#include "slips/slip_world.h"

using namespace benchleaf;
using test::Slip;

namespace {

constexpr std::size_t kMostOfAKind = 340;
constexpr int kTriedOfALine = 10;  // of an open line, to see that rules do not know it after all

/// One slip and what became of it.
struct Tried {
  Slip slip;
  const test::OpenField* open;
  bool is_tried = true;
  std::optional<std::string> caught_by = {};
};

const std::vector<test::OpenField>& open_list() {
  static const auto kOpen = test::open_fields();
  return kOpen;
}

const test::OpenField* why_open(const Slip& slip) {
  const auto& list = open_list();
  const auto found = std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.covers(slip); });
  return found == list.end() ? nullptr : &*found;
}

test::SlipWorld& world() {
  static test::SlipWorld one;
  return one;
}

std::vector<Tried> try_all() {
  test::SlipWorld second;
  std::vector<Tried> tried;
  std::map<const test::OpenField*, int> of_line;
  for (Slip& slip : test::draw_slips(world().base(), world().content(), kMostOfAKind)) {
    const auto* open = why_open(slip);
    tried.push_back({std::move(slip), open, open == nullptr || ++of_line[open] <= kTriedOfALine});
  }
  const auto work = [&](test::SlipWorld& own, std::size_t first) {
    for (std::size_t i = first; i < tried.size(); i += 2) {
      if (tried[i].is_tried) tried[i].caught_by = own.catches(tried[i].slip);
    }
  };
  std::thread other([&] { work(second, 1); });
  work(world(), 0);
  other.join();
  return tried;
}

const std::vector<Tried>& all_tried() {
  static const auto kTried = try_all();
  return kTried;
}

/// How many there were and how many were caught.
struct Count {
  int all = 0, caught = 0;
  void add(const Tried& one) {
    ++all;
    caught += one.caught_by ? 1 : 0;
  }
};

/// `412 of 420`, or empty where there was none.
std::string shown(const Count& count) {
  return count.all == 0 ? std::string() : std::to_string(count.caught) + " of " + std::to_string(count.all);
}

void print_row(std::size_t width, const std::string& name, const std::string& decidable, const std::string& open) {
  std::cout << "| " << std::left << std::setw(static_cast<int>(width)) << name << " | " << std::setw(12) << decidable << " | "
            << std::setw(4) << open << " |\n";
}

/// Counts by some name of a slip, decidable and open.
template <typename Name>
void print_table(std::size_t width, Name name) {
  std::map<std::string, std::pair<Count, Count>> rows;
  Count decidable, open;
  for (const Tried& one : all_tried()) {
    auto& row = rows[name(one.slip)];
    (one.open == nullptr ? row.first : row.second).add(one);
    (one.open == nullptr ? decidable : open).add(one);
  }
  std::cout << "\n";
  print_row(width, "slip", "caught", "open");
  for (const auto& [title, row] : rows) print_row(width, title, shown(row.first), std::to_string(row.second.all));
  print_row(width, "all", shown(decidable), std::to_string(open.all));
}

}  // namespace

TEST_CASE("of the slips that a rule could know, 97 in a hundred are caught") {
  Count decidable;
  std::string escaped;
  for (const Tried& one : all_tried()) {
    if (one.open != nullptr) continue;
    decidable.add(one);
    if (!one.caught_by)
      escaped +=
          std::string(name_of(one.slip.kind)) + " | " + one.slip.field + " | " + one.slip.path + " " + one.slip.told + "\n";
  }
  INFO(escaped);
  CHECK(all_tried().size() >= 3000);
  CHECK(decidable.all >= 2000);
  CHECK(decidable.caught * 100 >= decidable.all * 97);
}

TEST_CASE("every kind of slip is tried, and every open line is met and gives its reason") {
  std::map<test::SlipKind, int> kinds;
  std::map<const test::OpenField*, Count> lines;
  std::map<const test::OpenField*, std::string> caught;
  for (const Tried& one : all_tried()) {
    ++kinds[one.slip.kind];
    if (one.open == nullptr || !one.is_tried) continue;
    lines[one.open].add(one);
    if (one.caught_by) caught[one.open] += "\n  " + one.slip.field + " | " + one.slip.path + " " + one.slip.told;
  }
  CHECK(kinds.size() == test::kSlipNames.size());
  for (const auto& [kind, number] : kinds) CHECK(number >= 100);
  for (const auto& line : open_list()) {
    INFO(line.kinds << " | " << line.fields << ": caught " << shown(lines[&line]) << caught[&line]);
    CHECK(line.reason.size() > 30);
    CHECK(line.reason.back() == '.');
    CHECK(lines[&line].all > 0);
    // what rules nearly always know is not open
    CHECK((lines[&line].all < 5 || lines[&line].caught * 10 < lines[&line].all * 9));
  }
}

TEST_CASE("the short way finds what a check of the whole content finds") {
  constexpr std::size_t kEach = 110;
  std::size_t silent = 0, seen = 0;
  for (std::size_t i = 0; i < all_tried().size(); i += kEach, ++seen) {
    const Tried& one = all_tried()[i];
    INFO(one.slip.path << " " << one.slip.told);
    const auto caught = world().catches(one.slip);
    const auto whole = world().found_by_whole_check(one.slip);
    CHECK(whole.empty() == !caught.has_value());
    const auto found = world().found(one.slip);
    CHECK(std::includes(whole.begin(), whole.end(), found.begin(), found.end()));
    silent += whole.empty() ? 1 : 0;
  }
  CHECK(seen >= 15);
  CHECK(silent >= 2);
}

TEST_CASE("what was caught, as a table", "[.table]") {
  print_table(22, [](const Slip& slip) { return std::string(name_of(slip.kind)); });
  print_table(44, [](const Slip& slip) { return slip.field; });
  for (const Tried& one : all_tried()) {
    if (one.caught_by || !one.is_tried) continue;
    std::cout << (one.open ? "open    " : "ESCAPED ") << name_of(one.slip.kind) << " | " << one.slip.field << " | "
              << one.slip.path << " " << one.slip.told << "\n";
  }
}
