// In: the real content. Out: what `find` answers, from an index that is made once. The program itself names the page of each hit
// besides, for which it sets the whole book at every call.
#pragma once

#include <string>
#include <variant>

#include "command/answer.h"
#include "command/workbench.h"
#include "compose/search/search.h"
#include "support/catch.h"

namespace benchleaf::test {

class Finder {
 public:
  static command::Answers answers(const std::string& words) {
    static const Finder kFinder;
    return command::look_up(kFinder.bench_, kFinder.index_, words, [](const std::string&) { return std::string(); });
  }

 private:
  static command::Workbench opened() {
    command::CommonOptions options;
    options.content = "content";
    options.schema = "schema";
    auto bench = command::open_workbench(options);
    REQUIRE(std::holds_alternative<command::Workbench>(bench));
    REQUIRE_FALSE(std::get<command::Workbench>(bench).findings.has_errors());
    return std::get<command::Workbench>(std::move(bench));
  }

  command::Workbench bench_ = opened();
  compose::SearchIndex index_{compose::make_search_list(bench_.base, bench_.tables, bench_.derived)};
};

}  // namespace benchleaf::test
