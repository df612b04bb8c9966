// In: a content folder and the shapes. Out: the knowledge base: all records that could be read, typed, by kind and id.
// Three passes: files to checked trees; names of all records, so that references find their kinds; trees to records.
#include "read/content_reader.h"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "read/checked_file.h"
#include "read/content_files.h"
#include "read/record_builder.h"
#include "read/record_names.h"
#include "read/typed_record.h"

namespace benchleaf::read {

namespace {

using report::Rule;

/// The passes over one content folder.
class ContentReader {
 public:
  ContentReader(const FileSource& content, const Shapes& shapes, base::FileTable& files, report::Findings& findings)
      : content_(content), shapes_(shapes), files_(files), findings_(findings) {}

  model::KnowledgeBase read() {
    std::optional<std::vector<ContentFile>> names = list_content(content_, files_, findings_);
    if (!names) return {};
    // the head first: of a newer format nothing is read, so that nothing is said of it either
    auto records = std::stable_partition(names->begin(), names->end(), [](const ContentFile& one) { return !one.kind; });
    check({names->begin(), records});
    if (!format_is_known()) return {};
    check({records, names->end()});
    add_names();
    for (CheckedFile& checked : checked_) {
      if (checked.name.kind) {
        add_record(std::move(checked), names_, base_, findings_);
      } else {
        decode_handbook(checked);
      }
    }
    base_.aliases = names_.aliases();
    return std::move(base_);
  }

 private:
  void check(const std::vector<ContentFile>& names) {
    for (CheckedFile& checked : check_files(names, content_, shapes_, files_, findings_)) {
      if (checked.usable) {
        checked_.push_back(std::move(checked));
      } else {
        give_up(checked);
      }
    }
  }

  void give_up(const CheckedFile& checked) {
    if (checked.name.kind) base_.broken.insert(checked.reference());
    if (!checked.name.kind) handbook_broken_ = true;
  }

  /// A newer format may mean something else by the same words, so nothing of it is read.
  bool format_is_known() {
    auto handbook = std::find_if(checked_.begin(), checked_.end(), [](const CheckedFile& one) { return !one.name.kind; });
    if (handbook == checked_.end()) {
      if (!handbook_broken_) {
        findings_.add(Rule::content_handbook, {}, "handbook.yaml is missing", "write title, edition, date, format: 1, chapters");
      }
      return true;
    }
    const std::vector<std::string>& unusable = handbook->report.unusable;
    const DecodeContext context{unusable, {}};
    const Fields fields(handbook->root, {}, context);
    const int format = fields.count("format", kNewestFormat);
    if (format == kNewestFormat) return true;
    findings_.add(Rule::content_format, fields.span("format"),
                  "found format " + std::to_string(format) + ", expected " + std::to_string(kNewestFormat),
                  "use the release of this program that the content was written for");
    return false;
  }

  void add_names() {
    for (const std::string& broken : base_.broken) names_.add(broken);
    for (const CheckedFile& checked : checked_) {
      if (checked.name.kind) names_.add(checked.reference());
    }
    for (const CheckedFile& checked : checked_) {
      if (checked.name.kind) add_other_names(checked, names_);
    }
  }

  void decode_handbook(CheckedFile& checked) {
    model::Handbook& handbook = base_.handbook;
    handbook.file = checked.file;
    handbook.root = std::move(checked.root);
    handbook.unusable = std::move(checked.report.unusable);
    resolve(names_, checked.report, handbook.references);
    const DecodeContext context = context_of(handbook.unusable, handbook.references);
    decode(Fields(handbook.root, {}, context), handbook);
  }

  const FileSource& content_;
  const Shapes& shapes_;
  base::FileTable& files_;
  report::Findings& findings_;
  std::vector<CheckedFile> checked_;
  RecordNames names_;
  model::KnowledgeBase base_;
  bool handbook_broken_ = false;
};

}  // namespace

model::KnowledgeBase read_content(const FileSource& content, const Shapes& shapes, base::FileTable& files,
                                  report::Findings& findings) {
  return ContentReader(content, shapes, files, findings).read();
}

}  // namespace benchleaf::read
