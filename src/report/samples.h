#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace benchleaf::report {

/// The case that a rule is tested with: files that break it and files that just do not.
struct RuleSample {
  struct Half {
    std::vector<std::pair<std::string, std::string>> files;  ///< path below content, or `schema/...`; text
    std::vector<std::string> expected;                       ///< `cell/a.yaml:4:19`: where the rule speaks, and nowhere else
  };
  Half wrong;
  Half right;
};

/// Reads a case: `=== wrong`, `--- PATH` before each file, `expect PATH:LINE:COLUMN`, then `=== right` with its files.
/// Nothing where the text has another form.
std::optional<RuleSample> read_sample(std::string_view text);

/// The text of the case of a rule, built into the program from tests/rules; empty where it has none.
std::string_view sample_text(std::string_view rule);

}  // namespace benchleaf::report
