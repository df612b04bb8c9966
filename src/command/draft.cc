// draft: a commented record to start from, made from the shape of its kind.

#include <filesystem>
#include <optional>
#include <string>
#include <system_error>
#include <vector>

#include "base/id.h"
#include "command/commands.h"
#include "command/disk_files.h"
#include "command/draft_text.h"
#include "command/schema_folder.h"
#include "command/whole_file.h"
#include "command/workbench.h"
#include "standards/table_view.h"

namespace benchleaf::command {
namespace {

namespace fs = std::filesystem;

/// The kind that a word means: its own name, or another word of the table kind-words for it.
std::optional<model::Kind> kind_meant(const std::string& word, const CommonOptions& common) {
  if (const auto kind = model::kind_from_name(word)) return kind;
  const auto opened = open_records(common);
  const auto* bench = std::get_if<Workbench>(&opened);
  const auto* row = bench == nullptr ? nullptr : standards::row_of(bench->tables, "kind-words", word);
  return row == nullptr ? std::nullopt : model::kind_from_name(standards::cell_text(*row, "kind"));
}

std::string unknown_kind(const std::string& given) {
  std::vector<std::string> kinds;
  for (const model::Kind kind : model::all_kinds()) kinds.emplace_back(model::kind_name(kind));
  const std::string nearest = base::nearest_word(given, kinds);
  return "there is no kind of record '" + given + "'" +
         (nearest.empty() ? ", only " + base::or_list(kinds) : ", did you mean " + nearest + "?");
}

/// The draft, or nothing after the reason was told.
std::optional<std::string> make_draft(const DraftOptions& options, const CommonOptions& common, Terminal& terminal) {
  const SchemaFolder schema = find_schema(common.schema, common.content);
  const fs::path file = schema.path / "shapes" / (options.kind + ".schema.json");
  const auto json = schema.path.empty() ? std::nullopt : read_file(file);
  const auto shape = json ? read_record_shape(*json) : std::nullopt;
  if (!shape) terminal.failure("the shape " + file.generic_string() + " cannot be read (name its folder with --schema)");
  return shape ? std::optional(draft_text(*shape, options.id)) : std::nullopt;
}

int refuse(const std::string& reference, Terminal& terminal) {
  terminal.failure(reference + " exists: choose another id, or change that record");
  return kExitFindings;
}

int write_draft(const fs::path& path, const std::string& reference, const std::string& text, Terminal& terminal) {
  std::error_code error;
  fs::create_directory(path.parent_path(), error);  // the content folder itself must be there
  switch (write_new_file(path, text)) {
    case NewFile::exists: return refuse(reference, terminal);
    case NewFile::failed: return terminal.failure("the file " + path.generic_string() + " cannot be written");
    case NewFile::written: break;
  }
  terminal.progress("wrote " + path.generic_string() + ": fill in the empty fields, then run benchleaf check");
  return terminal.finish(kExitGood);
}

}  // namespace

int run_draft(const DraftOptions& asked, const CommonOptions& given, Terminal& terminal) {
  CommonOptions common = given;  // an installed content is not one to write into
  if (common.content.empty()) common.content = "content";
  const auto kind = kind_meant(asked.kind, common);
  if (!kind) return terminal.failure(unknown_kind(asked.kind));
  DraftOptions options = asked;
  options.kind = model::kind_name(*kind);
  if (options.kind != asked.kind) terminal.progress(asked.kind + " is kind " + options.kind);
  if (!model::is_record_id(options.id)) {
    return terminal.failure("'" + options.id +
                            "' is no id: small letters, digits and single hyphens, at most 48, beginning with a letter");
  }
  std::error_code error;
  const bool to_disk = !options.to_stdout;
  if (to_disk && !fs::is_directory(common.content, error)) {
    return terminal.failure("there is no folder " + common.content + " to write into (name it with --content)");
  }
  const auto text = make_draft(options, common, terminal);
  if (!text) return kExitUsage;
  const auto opened = open_records(common);
  const auto* bench = std::get_if<Workbench>(&opened);
  const model::RecordRef reference(*kind, options.id);
  if (bench != nullptr && bench->base.known(reference)) return refuse(reference, terminal);
  if (to_disk) {
    const std::string name = options.id + (*kind == model::Kind::page ? ".md" : ".yaml");
    return write_draft(fs::path(common.content) / options.kind / name, reference, *text, terminal);
  }
  terminal.data(*text);
  return terminal.finish(kExitGood);
}

}  // namespace benchleaf::command
