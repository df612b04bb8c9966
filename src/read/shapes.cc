// In: the schema folder. Out: the shapes by name.
#include "read/shapes.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/record.h"
#include "read/file_start.h"
#include "read/two_threads.h"
#include "read/yaml_reader.h"

namespace benchleaf::read {

namespace {

/// JSON is YAML of the subset, so the shapes come with places through the same reader.
std::optional<Shape> load_shape(const std::string& text, base::FileId file, report::Findings& findings) {
  YamlTree tree = read_yaml({text, file, 1}, findings);
  if (!tree.root) return std::nullopt;
  return Shape::compile(*tree.root, findings);
}

std::string path_of(std::string_view name) { return "shapes/" + std::string(name) + ".schema.json"; }

}  // namespace

Shapes load_shapes(const FileSource& schema, base::FileTable& files, report::Findings& findings) {
  std::vector<std::string> names;
  for (model::Kind kind : model::all_kinds()) names.emplace_back(model::kind_name(kind));
  names.insert(names.end(), {"handbook", "overlay", "table", "fonts", "renamed"});
  std::vector<std::optional<std::string>> texts;
  std::vector<base::FileId> ids;
  for (const std::string& name : names) {
    const std::string path = path_of(name);
    texts.push_back(schema.read(path));
    ids.push_back(files.add(schema.shown(path), texts.back().value_or(std::string())));
  }
  std::vector<report::Findings> found(names.size());
  std::vector<std::optional<Shape>> loaded(names.size());
  on_two_threads(names.size(), [&](std::size_t i) {
    if (texts.at(i)) loaded.at(i) = load_shape(*texts.at(i), ids.at(i), found.at(i));
  });
  Shapes shapes;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!texts.at(i)) {
      findings.add(report::Rule::shape_missing, start_of(ids.at(i)), "the shape is missing",
                   "give the schema folder with --schema");
    }
    findings.append(std::move(found.at(i)));
    if (loaded.at(i)) shapes.emplace(names.at(i), std::move(*loaded.at(i)));
  }
  return shapes;
}

std::optional<model::Node> shape_tree(const FileSource& schema, std::string_view name) {
  const auto text = schema.read(path_of(name));
  report::Findings told;  // load_shapes tells them
  return text ? read_yaml({*text, base::kNoFile, 1}, told).root : std::nullopt;
}

}  // namespace benchleaf::read
