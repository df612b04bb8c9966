// In: a file of the schema folder. Out: its tree, held against its shape.
#include "read/schema_file.h"

#include <utility>

#include "read/file_start.h"
#include "read/yaml_reader.h"

namespace benchleaf::read {

SchemaFile read_schema_file(const FileSource& schema, const std::string& path, std::string_view shape_name, const Shapes& shapes,
                            base::FileTable& files, report::Findings& findings) {
  SchemaFile result;
  std::optional<std::string> text = schema.read(path);
  result.file = files.add(schema.shown(path), text.value_or(std::string()));
  if (!text) {
    findings.add(report::Rule::table_missing, start_of(result.file), "the file cannot be read", {});
    return result;
  }
  YamlTree tree = read_yaml({*text, result.file, 1}, findings);
  auto shape = shapes.find(shape_name);
  if (!tree.root || shape == shapes.end()) return result;
  result.report = check_shape(shape->second, *tree.root, tree.refused, findings);
  result.root = std::move(tree.root);
  return result;
}

}  // namespace benchleaf::read
