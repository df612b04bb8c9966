#pragma once

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "prove/rule_files.h"
#include "read/checked_file.h"
#include "read/record_names.h"
#include "slips/slip.h"

namespace benchleaf::test {

/// The real content, read once; each slip is one file of it read anew, and the record put in the place of the right one.
class SlipWorld {
 public:
  SlipWorld();

  const FileTexts& content() const { return content_; }
  const model::KnowledgeBase& base() const { return whole_.base; }

  /// The rule of the first new finding in the damaged file, or nothing. Checks run until one speaks, so that what comes back is
  /// something that the whole of the checks finds as well; nothing comes back only after all of them were silent.
  std::optional<std::string> catches(const Slip& slip);

  /// Every new finding in the damaged file, a line each: found by this short way, and by reading and checking the whole content.
  std::set<std::string> found(const Slip& slip);
  std::set<std::string> found_by_whole_check(const Slip& slip) const;

 private:
  using Told = std::set<std::pair<report::Rule, std::string>>;

  /// The new findings of one file.
  std::vector<const report::Finding*> fresh(const report::Findings& findings, base::FileId file, const std::string& path) const;
  /// Calls `visit` with what runs one check on the content with the damaged record in its place, or with nullptr where reading
  /// the file gave no record or a finding.
  template <typename Visit>
  void with_record(const Slip& slip, report::Findings& findings, base::FileId& file, Visit visit);
  template <typename RecordType, typename Visit>
  void with_checked(std::map<std::string, RecordType, std::less<>>& list, read::CheckedFile checked, report::Findings& findings,
                    Visit visit);

  FileTexts content_;
  Checked::Schema schema_;
  Checked whole_;
  read::RecordNames names_;
  base::FileTable names_of_files_;    ///< as many files as there are, so that a damaged one has a number of its own
  model::FactBase rule_facts_;        ///< those that rules look up
  std::map<std::string, Told> told_;  ///< what the right content has to say already, by file
  std::map<model::Kind, std::vector<prove::Check>> order_;
};

}  // namespace benchleaf::test
