// In: the names of content files. Out: their trees, held against their shapes; each file by itself, on two threads.
#include "read/checked_file.h"

#include <optional>
#include <string_view>
#include <utility>

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

void check_file(std::string_view text, const Shapes& shapes, CheckedFile& checked, report::Findings& findings) {
  YamlTree tree = read_tree(text, checked, findings);
  auto shape = shapes.find(checked.name.kind ? model::kind_name(*checked.name.kind) : std::string_view("handbook"));
  if (!tree.root || shape == shapes.end()) return;  // a missing shape has been told
  checked.root = std::move(*tree.root);
  checked.report = check_shape(shape->second, checked.root, tree.refused, findings);
  checked.usable = checked.root.type == model::NodeType::mapping;
}

}  // namespace

std::vector<CheckedFile> check_files(const std::vector<ContentFile>& names, const FileSource& content, const Shapes& shapes,
                                     base::FileTable& files, report::Findings& findings) {
  std::vector<CheckedFile> list(names.size());
  std::vector<std::optional<std::string>> texts(names.size());
  std::vector<report::Findings> found(names.size());
  for (std::size_t i = 0; i < names.size(); ++i) {
    texts.at(i) = content.read(names.at(i).path);
    list.at(i).name = names.at(i);
    list.at(i).file = files.add(content.shown(names.at(i).path), texts.at(i).value_or(std::string()));
    if (!texts.at(i))
      found.at(i).add(report::Rule::content_unreadable, {list.at(i).file, 0, 0, 0}, "the file cannot be read", {});
  }
  on_two_threads(names.size(), [&](std::size_t i) {
    if (texts.at(i)) check_file(*texts.at(i), shapes, list.at(i), found.at(i));
  });
  for (report::Findings& one : found) findings.append(std::move(one));
  return list;
}

}  // namespace benchleaf::read
