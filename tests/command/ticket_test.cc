// ticket: files, streams, exit codes, and what a failure leaves behind. Outside reader of the PDF: pdftotext (poppler).
#include "command/run_program.h"
#include "support/catch.h"
#include "support/temporary_folder.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace fs = std::filesystem;
using benchleaf::test::Ran;
using benchleaf::test::run_program;
using benchleaf::test::text_of;

namespace {

/// A folder to run in, and the project's content beside it.
class Bench {
 public:
  Ran run(const std::string& words) const {
    return run_program(folder_.path(), words + " --content '" + (root_ / "content").string() + "' --schema '" +
                                           (root_ / "schema").string() + "'");
  }
  std::string watch(int number) const {
    return "'" + (root_ / "content/watch" / ("quillfen-d-00" + std::to_string(number) + ".yaml")).string() + "'";
  }
  std::string drawer() const { return "'" + (root_ / "content/stock/quillfen-drawer.yaml").string() + "'"; }
  fs::path path(const std::string& name) const { return folder_.path() / name; }
  void write(const std::string& name, const std::string& text) const { std::ofstream(path(name)) << text; }
  /// The first watch with one thing replaced.
  void spoil(const std::string& from, const std::string& to) const {
    std::string text = text_of(root_ / "content/watch/quillfen-d-001.yaml");
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    write("quillfen-d-001.yaml", text.replace(at, from.size(), to));
  }

 private:
  fs::path root_ = fs::current_path();
  benchleaf::test::TemporaryFolder folder_{"ticket"};
};

std::size_t count_of(const std::string& text, const std::string& word) {
  std::size_t count = 0;
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) ++count;
  return count;
}

/// Lines joined again where the terminal's width has parted them.
std::string on_one_line(std::string text) {
  for (std::size_t at = text.find("\n    "); at != std::string::npos; at = text.find("\n    ", at)) text.replace(at, 5, " ");
  return text;
}

}  // namespace

TEST_CASE("ticket writes two papers and a page, the same each time, and says the plan") {
  const Bench bench;
  const Ran ran = bench.run("ticket " + bench.watch(1));
  CHECK(ran.code == 0);
  CHECK(ran.err == "benchleaf: ticket of quillfen-d-001 in out/tickets: no problems\n");
  CHECK(on_one_line(ran.out).find("Wake the blank display") != std::string::npos);
  CHECK(on_one_line(ran.out).find("2.14 % (0.98 to 3.34 %)") != std::string::npos);
  std::vector<std::string> before;
  for (const char* name : {"ticket-quillfen-d-001-a4.pdf", "ticket-quillfen-d-001-letter.pdf", "ticket-quillfen-d-001.html"}) {
    before.push_back(text_of(bench.path("out/tickets") / name));
    CHECK(before.back().size() > 10000);
  }
  CHECK(before[2].find("2.14") != std::string::npos);
  CHECK(before[2].find("<script") == std::string::npos);
  CHECK(bench.run("ticket " + bench.watch(1)).code == 0);
  CHECK(text_of(bench.path("out/tickets/ticket-quillfen-d-001-a4.pdf")) == before[0]);
  CHECK(std::system(("cd '" + bench.path("out/tickets").string() + "' && pdftotext ticket-quillfen-d-001-a4.pdf").c_str()) == 0);
  CHECK(text_of(bench.path("out/tickets/ticket-quillfen-d-001-a4.txt")).find("1.422") != std::string::npos);
}

TEST_CASE("the owner's card is not torn over two pages") {
  const Bench bench;
  std::size_t seen = 0;
  for (int number = 1; number <= 3; ++number) {
    CHECK(bench.run("ticket " + bench.watch(number) + " --stock " + bench.drawer()).code == 0);
    for (const std::string paper : {"a4", "letter"}) {
      const std::string name = "ticket-quillfen-d-00" + std::to_string(number) + "-" + paper;
      INFO(name);
      CHECK(std::system(("cd '" + bench.path("out/tickets").string() + "' && pdftotext " + name + ".pdf").c_str()) == 0);
      std::istringstream pages(text_of(bench.path("out/tickets") / (name + ".txt")));
      for (std::string page; std::getline(pages, page, '\f');) {
        const std::size_t head =
            page.find("Owner\u2019s card") != std::string::npos ? page.find("Owner\u2019s card") : page.find("Owner's card");
        const bool ends = page.find("Keep it away") != std::string::npos;
        CHECK((head != std::string::npos) == ends);
        seen += ends ? 1 : 0;
      }
    }
  }
  CHECK(seen == 6);
}

TEST_CASE("a drawer marks what is there, several watches make one list, JSON says the same") {
  const Bench bench;
  const Ran ran = bench.run("ticket " + bench.watch(1) + " --stock " + bench.drawer() + " --order " + bench.watch(2) + " " +
                            bench.watch(3) + " --to elsewhere --json");
  CHECK(ran.code == 0);
  CHECK(count_of(ran.err, "[ticket.gasket]") == 1);
  CHECK(fs::exists(bench.path("elsewhere/tickets/ticket-quillfen-d-001.html")));
  const auto json = nlohmann::json::parse(ran.out);
  CHECK(json.at("drawer") == "quillfen-drawer");
  CHECK(json.at("order").size() > 3);
  bool flat = false;
  for (const auto& need : json.at("order"))
    flat = flat || (need.at("record") == "gasket/flat-0-4" && need.at("size") == "27.5 mm");
  CHECK(flat);
  bool left = false;
  for (const auto& fact : json.at("facts"))
    left = left || (fact.at("id") == "watch/quillfen-d-001#scratch-ladder.left" && fact.at("printed") == "1.384 mm");
  CHECK(left);
}

TEST_CASE("a watch of which nothing is known gets a plan of checks, and its measures need no basis") {
  const Bench bench;
  bench.write("an-old-watch.yaml", "id: an-old-watch\ntitle: An old watch\n");
  const Ran bare = bench.run("ticket an-old-watch.yaml");
  CHECK(bare.code == 0);
  CHECK(count_of(bare.out, "[ ] Thickness of the crystal.") == 1);
  CHECK(count_of(bare.out, "[ ] Does it charge its cell? ") == 1);
  bench.write("an-old-watch.yaml", "id: an-old-watch\ntitle: An old watch\ngasket: round-0-7\ngasket-seat: 28.60 mm\n");
  const Ran measured = bench.run("ticket an-old-watch.yaml");
  CHECK(measured.code == 0);
  CHECK(measured.err == "benchleaf: ticket of an-old-watch in out/tickets: no problems\n");
}

TEST_CASE("one fault of a watch is one finding at its place, and nothing is written") {
  struct Fault {
    const char* from;
    const char* to;
    const char* rule;
  };
  const Fault fault = GENERATE(values<Fault>({{"28.60 mm", "28,60 mm", "quantity"},
                                              {"28.60 mm", "28.60 kg", "quantity"},
                                              {"module: demo-lcd-one-cell", "module: no-such-module", "reference.unknown"},
                                              {"back: snap", "back: glued", "shape"},
                                              {"id: quillfen-d-001", "id: another", "record.id-file"},
                                              {"symptoms: [", "symptom: [", "shape"},
                                              {"cells-found: [lr754]", "cells-found: [sr44w]", "watch.fits"},
                                              {"back: snap", "back: snap\nback: screwed", "yaml"}}));
  const Bench bench;
  bench.spoil(fault.from, fault.to);
  const Ran ran = bench.run("ticket quillfen-d-001.yaml");
  INFO(fault.to << "\n" << ran.err);
  CHECK(ran.code == 1);
  CHECK(ran.out.empty());
  CHECK(count_of(ran.err, ": error: ") == 1);
  CHECK(ran.err.find("quillfen-d-001.yaml:") == 0);
  CHECK(ran.err.find(std::string("[") + fault.rule) != std::string::npos);
  CHECK_FALSE(fs::exists(bench.path("out")));
}

TEST_CASE("what cannot be read or written is said in one line") {
  const Bench bench;
  const Ran missing = bench.run("ticket nowhere.yaml");
  CHECK(missing.code == 2);
  CHECK(missing.err == "benchleaf: the file nowhere.yaml cannot be read\n");
  const Ran twice = bench.run("ticket " + bench.watch(1) + " --order " + bench.watch(1));
  CHECK(twice.code == 2);
  CHECK(count_of(twice.err, "\n") == 1);
  bench.write("full", "a file, where a folder is wanted\n");
  const Ran blocked = bench.run("ticket " + bench.watch(1) + " --to full");
  CHECK(blocked.code == 2);
  CHECK(blocked.out.empty());
  CHECK(text_of(bench.path("full")) == "a file, where a folder is wanted\n");
}
