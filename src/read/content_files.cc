// In: a content folder. Out: the files that may hold records, by their names; findings on all others.
#include "read/content_files.h"

#include <set>
#include <utility>

#include "read/content_reader.h"
#include "read/file_start.h"
#include "read/shape_words.h"

namespace benchleaf::read {

namespace {

using report::Rule;

/// Sorts the entries of one folder tree.
class Lister {
 public:
  Lister(const FileSource& content, const std::string& head, base::FileTable& files, report::Findings& findings)
      : content_(content), head_(head), files_(files), findings_(findings) {}

  std::vector<ContentFile> list(const std::vector<FileEntry>& entries) {
    for (const FileEntry& entry : entries) take(entry);
    return std::move(list_);
  }

 private:
  void refuse(Rule rule, const std::string& path, std::string message, std::string hint) {
    findings_.add(rule, start_of(files_.add(content_.shown(path), {})), std::move(message), std::move(hint));
  }

  void take(const FileEntry& entry) {
    if (entry.type == FileEntry::Type::link) {
      return refuse(Rule::content_link, entry.path, "found a symbolic link", "put the file itself here");
    }
    if (entry.type == FileEntry::Type::empty_folder) return empty_folder(entry.path);
    if (entry.type == FileEntry::Type::other) {
      return refuse(Rule::content_unknown_file, entry.path, "found something that is no file", "take it out");
    }
    if (entry.path == head_) return list_.push_back({entry.path, std::nullopt, {}});
    if (entry.path == kNotesForContributors) return;
    const std::size_t slash = entry.path.find('/');
    if (slash == std::string::npos) {
      return refuse(Rule::content_unknown_file, entry.path, "found a file that is no record",
                    "only " + head_ + " and folders of records stand here");
    }
    const std::string folder = entry.path.substr(0, slash);
    std::optional<model::Kind> kind = model::kind_from_name(folder);
    if (!kind) return unknown_folder(folder, entry.path);
    record(*kind, entry.path, entry.path.substr(slash + 1));
  }

  /// A kind whose last record was taken out may keep its folder; any other is a record gone wrong.
  void empty_folder(const std::string& path) {
    if (model::kind_from_name(path)) return;
    refuse(Rule::content_unknown_file, path, "found an empty folder", "take it out");
  }

  void unknown_folder(const std::string& folder, const std::string& path) {
    if (!strange_.insert(folder).second) return;
    std::vector<std::string> kinds;
    for (model::Kind kind : model::all_kinds()) kinds.emplace_back(model::kind_name(kind));
    std::string nearest = likely_word(folder, kinds);
    refuse(Rule::content_unknown_file, path, "the folder " + in_marks(folder) + " is no kind of record",
           nearest.empty() ? "known kinds: " + one_of(kinds) : "did you mean " + in_marks(nearest) + "?");
  }

  void record(model::Kind kind, const std::string& path, const std::string& name) {
    const std::string ending = kind == model::Kind::page ? ".md" : ".yaml";
    const bool ends_so = name.size() > ending.size() && name.compare(name.size() - ending.size(), ending.size(), ending) == 0;
    if (!ends_so || name.find('/') != std::string::npos) {
      return refuse(Rule::content_unknown_file, path, "found a file that is no record",
                    "here stand files ID" + ending + " and nothing else");
    }
    std::string id = name.substr(0, name.size() - ending.size());
    if (!model::is_record_id(id)) {
      return refuse(Rule::content_file_name, path, "the file name " + in_marks(id) + " is no id",
                    "use small letters, digits and single hyphens, at most 48, beginning with a letter");
    }
    list_.push_back({path, kind, std::move(id)});
  }

  const FileSource& content_;
  const std::string& head_;
  base::FileTable& files_;
  report::Findings& findings_;
  std::vector<ContentFile> list_;
  std::set<std::string> strange_;
};

}  // namespace

std::optional<std::vector<ContentFile>> list_content(const FileSource& content, const std::string& head, base::FileTable& files,
                                                     report::Findings& findings) {
  std::optional<std::vector<FileEntry>> entries = content.list();
  const auto folder = [&] {
    std::string shown = content.shown({});
    while (shown.size() > 1 && shown.back() == '/') shown.pop_back();
    return base::Span{files.add(shown, {}), 0, 0, 0};
  };
  std::uint64_t bytes = 0;
  for (const FileEntry& entry : entries.value_or(std::vector<FileEntry>())) bytes += entry.size;
  if (!entries) {
    findings.add(Rule::content_unreadable, folder(), "the content folder cannot be read", {});
  } else if (entries->size() > kMostFiles) {
    findings.add(Rule::content_size, folder(),
                 "found " + std::to_string(entries->size()) + " files, expected at most " + std::to_string(kMostFiles), {});
  } else if (bytes > kMostContentBytes) {
    findings.add(Rule::content_size, folder(),
                 "found " + std::to_string(bytes) + " bytes of content, expected at most " + std::to_string(kMostContentBytes),
                 {});
  } else {
    return Lister(content, head, files, findings).list(*entries);
  }
  return std::nullopt;
}

}  // namespace benchleaf::read
