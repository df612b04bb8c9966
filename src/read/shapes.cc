// In: the schema folder. Out: the shapes by name.
#include "read/shapes.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "model/record.h"
#include "read/yaml_reader.h"

namespace benchleaf::read {

namespace {

/// JSON is YAML of the subset, so the shapes come with places through the same reader.
std::optional<Shape> load_shape(const FileSource& schema, const std::string& path, base::FileTable& files,
                                report::Findings& findings) {
  std::optional<std::string> text = schema.read(path);
  const base::FileId file = files.add(schema.shown(path), text.value_or(std::string()));
  if (!text) {
    findings.add(report::Rule::shape_missing, {file, 0, 0, 0}, "the shape is missing",
                 "give the schema folder with --schema");
    return std::nullopt;
  }
  YamlTree tree = read_yaml({*text, file, 1}, findings);
  if (!tree.root) return std::nullopt;
  return Shape::compile(*tree.root, findings);
}

}  // namespace

Shapes load_shapes(const FileSource& schema, base::FileTable& files, report::Findings& findings) {
  std::vector<std::string> names;
  for (model::Kind kind : model::all_kinds()) names.emplace_back(model::kind_name(kind));
  names.insert(names.end(), {"handbook", "table", "fonts"});
  Shapes shapes;
  for (const std::string& name : names) {
    std::optional<Shape> shape = load_shape(schema, "shapes/" + name + ".schema.json", files, findings);
    if (shape) shapes.emplace(name, std::move(*shape));
  }
  return shapes;
}

}  // namespace benchleaf::read
