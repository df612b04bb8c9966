// In: a content folder, its overlays and the shapes. Out: the knowledge base: all records that could be read, typed, by kind
// and id. Passes: files to checked trees; overlays over the content; names of all records, so that references find their kinds;
// trees to records.
#include "read/content_reader.h"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "read/checked_file.h"
#include "read/content_files.h"
#include "read/file_start.h"
#include "read/overlays.h"
#include "read/record_builder.h"
#include "read/record_names.h"
#include "read/shape_words.h"
#include "read/typed_record.h"

namespace benchleaf::read {

namespace {

using report::Rule;

/// The content or one overlay: a folder with a head beside its records.
struct Layer {
  const FileSource& source;
  std::string head;                    ///< handbook.yaml, overlay.yaml
  std::string shape;                   ///< of the head
  std::optional<std::size_t> overlay;  ///< its place; none: the content itself
};

/// The passes over one content folder and what lies over it.
class ContentReader {
 public:
  ContentReader(const FileSource& content, const Shapes& shapes, base::FileTable& files, report::Findings& findings,
                const Additions& additions)
      : content_(content), shapes_(shapes), files_(files), findings_(findings), additions_(additions) {}

  model::KnowledgeBase read() {
    if (!read_layer({content_, "handbook.yaml", "handbook", std::nullopt})) return {};
    for (std::size_t i = 0; i < additions_.overlays.size(); ++i) {
      if (!read_layer({*additions_.overlays.at(i), "overlay.yaml", "overlay", i})) return {};
    }
    base_.overlays.resize(additions_.overlays.size());
    lay_over(checked_, findings_);
    add_names();
    for (CheckedFile& checked : checked_) {
      if (checked.name.kind) {
        add_record(std::move(checked), names_, base_, findings_);
      } else if (checked.overlay) {
        decode_head(checked, base_.overlays.at(*checked.overlay));
      } else {
        decode_head(checked, base_.handbook);
      }
    }
    for (const model::Overlay& overlay : base_.overlays) add_pages(overlay);
    base_.aliases = names_.aliases();
    return std::move(base_);
  }

 private:
  /// False where nothing of the layer may be read.
  bool read_layer(const Layer& layer) {
    std::optional<std::vector<ContentFile>> names = list_content(layer.source, layer.head, files_, findings_);
    if (!names) return false;
    // the head first: of a newer format nothing is read, so that nothing is said of it either
    auto records = std::stable_partition(names->begin(), names->end(), [](const ContentFile& one) { return !one.kind; });
    const bool has_head = records != names->begin();
    FileForm form{shapes_, additions_.renamed, layer.shape, additions_.renamed.format};
    check({names->begin(), records}, layer, form);
    if (!has_head) tell_headless(layer);
    if (has_head && !checked_.empty() && is_head_of(checked_.back(), layer)) form.format = format_of(checked_.back());
    if (!format_is_known(layer, form.format)) return false;
    check({records, names->end()}, layer, form);
    return true;
  }

  static bool is_head_of(const CheckedFile& file, const Layer& layer) { return !file.name.kind && file.overlay == layer.overlay; }

  void check(const std::vector<ContentFile>& names, const Layer& layer, const FileForm& form) {
    for (CheckedFile& checked : check_files(names, layer.source, form, files_, findings_)) {
      checked.overlay = layer.overlay;
      if (checked.usable) {
        checked_.push_back(std::move(checked));
      } else if (checked.name.kind) {
        base_.broken.insert(checked.reference());
      }
    }
  }

  void tell_headless(const Layer& layer) {
    if (!layer.overlay) {
      findings_.add(Rule::content_handbook, start_of(files_.add(layer.source.shown(layer.head), {})), layer.head + " is missing",
                    "write title, edition, date, format: 1, chapters");
      return;
    }
    findings_.add(Rule::overlay_head, start_of(files_.add(layer.source.shown(layer.head), {})), layer.head + " is missing",
                  "write name, imprint, date, format: 1");
  }

  int format_of(const CheckedFile& head) const {
    const DecodeContext context{head.report.unusable, {}};
    return Fields(head.root, {}, context).count("format", additions_.renamed.format);
  }

  /// A newer format may mean something else by the same words, so nothing of it is read.
  bool format_is_known(const Layer& layer, int format) {
    const int newest = additions_.renamed.format;
    if (format <= newest) return true;
    const CheckedFile& head = checked_.back();
    const DecodeContext context{head.report.unusable, {}};
    findings_.add(Rule::content_format, Fields(head.root, {}, context).span("format"),
                  "found format " + std::to_string(format) + ", expected " + std::to_string(newest),
                  layer.overlay ? "use the release of this program that the overlay was written for"
                                : "use the release of this program that the content was written for");
    return false;
  }

  void add_names() {
    for (const model::RecordRef& broken : base_.broken) names_.add(broken);
    for (const CheckedFile& checked : checked_) {
      if (checked.name.kind) names_.add(checked.reference());
    }
    for (const CheckedFile& checked : checked_) {
      if (checked.name.kind) add_other_names(checked, names_);
    }
  }

  /// handbook.yaml or overlay.yaml.
  template <typename Head>
  void decode_head(CheckedFile& checked, Head& head) {
    head.file = checked.file;
    head.root = std::move(checked.root);
    head.unusable = std::move(checked.report.unusable);
    resolve(names_, checked.report, head.references);
    const DecodeContext context = context_of(head.unusable, head.references);
    decode(Fields(head.root, {}, context), head);
  }

  /// The pages of an overlay follow those that the handbook has in a chapter.
  void add_pages(const model::Overlay& overlay) {
    for (const model::Overlay::MorePages& more : overlay.chapters) {
      std::vector<model::Handbook::Chapter>& chapters = base_.handbook.chapters;
      const auto chapter =
          std::find_if(chapters.begin(), chapters.end(), [&](const auto& one) { return one.id == more.chapter; });
      if (chapter != chapters.end()) {
        chapter->pages.insert(chapter->pages.end(), more.pages.begin(), more.pages.end());
        continue;
      }
      std::vector<std::string> ids;
      for (const model::Handbook::Chapter& one : chapters) ids.push_back(one.id);
      findings_.add(Rule::overlay_chapter, more.span, "the handbook has no chapter " + in_marks(more.chapter),
                    ids.empty() ? std::string() : "known chapters: " + one_of(ids));
    }
  }

  const FileSource& content_;
  const Shapes& shapes_;
  base::FileTable& files_;
  report::Findings& findings_;
  const Additions& additions_;
  std::vector<CheckedFile> checked_;
  RecordNames names_;
  model::KnowledgeBase base_;
};

}  // namespace

model::KnowledgeBase read_content(const FileSource& content, const Shapes& shapes, base::FileTable& files,
                                  report::Findings& findings, const Additions& additions) {
  return ContentReader(content, shapes, files, findings, additions).read();
}

}  // namespace benchleaf::read
