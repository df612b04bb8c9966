// In: the names of content files. Out: their trees, held against their shapes; each file by itself, on two threads.
#include "read/checked_file.h"

#include <optional>
#include <string_view>
#include <utility>

#include "read/canonical.h"
#include "read/file_start.h"
#include "read/page_file.h"
#include "read/two_threads.h"
#include "read/yaml_reader.h"

namespace benchleaf::read {

namespace {

YamlTree read_tree(std::string_view text, CheckedFile& checked, report::Findings& findings) {
  if (checked.name.kind != model::Kind::page) return read_yaml({text, checked.file, 1}, findings);
  PageFile page = split_page(text, checked.file, findings);
  checked.body = std::move(page.body);
  checked.body_line = page.body_line;
  return page.has_head ? read_yaml({page.head, checked.file, 2}, findings) : YamlTree{};
}

/// A head says its own format; the shape refuses what is none.
int format_of(const model::Node& head, int otherwise) {
  constexpr double kMostFormats = 1e6;
  const model::Node* format = head.find("format");
  const double number = format == nullptr ? otherwise : number_of(*format).value_or(otherwise);
  return number >= 1 && number <= kMostFormats ? static_cast<int>(number) : otherwise;
}

void check_file(std::string_view text, const FileForm& form, CheckedFile& checked, report::Findings& findings) {
  YamlTree tree = read_tree(text, checked, findings);
  const bool is_head = !checked.name.kind;
  const std::string_view name = is_head ? std::string_view(form.head) : model::kind_name(*checked.name.kind);
  auto shape = form.shapes.find(name);
  if (!tree.root || shape == form.shapes.end()) return;  // a missing shape has been told
  checked.root = std::move(*tree.root);
  rename_fields(name, is_head ? format_of(checked.root, form.format) : form.format, form.renamed, checked.root, findings);
  if (!checked.body.empty()) {
    checked.body =
        with_renamed_links(std::move(checked.body), checked.file, checked.body_line, form.format, form.renamed, findings);
  }
  checked.report = check_shape(shape->second, checked.root, tree.refused, findings);
  checked.usable = checked.root.type == model::NodeType::mapping;
}

}  // namespace

std::vector<CheckedFile> check_files(const std::vector<ContentFile>& names, const FileSource& content, const FileForm& form,
                                     base::FileTable& files, report::Findings& findings) {
  std::vector<CheckedFile> list(names.size());
  std::vector<std::optional<std::string>> texts(names.size());
  std::vector<report::Findings> found(names.size());
  for (std::size_t i = 0; i < names.size(); ++i) {
    texts.at(i) = content.read(names.at(i).path);
    list.at(i).name = names.at(i);
    list.at(i).file = files.add(content.shown(names.at(i).path), texts.at(i).value_or(std::string()));
    if (!texts.at(i)) found.at(i).add(report::Rule::content_unreadable, start_of(list.at(i).file), "the file cannot be read", {});
  }
  on_two_threads(names.size(), [&](std::size_t i) {
    if (texts.at(i)) check_file(*texts.at(i), form, list.at(i), found.at(i));
  });
  for (report::Findings& one : found) findings.append(std::move(one));
  return list;
}

}  // namespace benchleaf::read
