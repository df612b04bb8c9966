// In: the table of renamed fields, and a file of an older format. Out: the file with the names of today, and warnings.
#include "read/renamed.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "read/decode_fields.h"
#include "read/schema_file.h"
#include "read/source_text.h"

namespace benchleaf::read {

namespace {

using model::Member;
using model::Node;

/// `steps.*` to its two parts.
std::vector<std::string> parts_of(const std::string& path) {
  std::vector<std::string> parts;
  std::size_t at = 0;
  while (!path.empty() && at <= path.size()) {
    const std::size_t dot = std::min(path.find('.', at), path.size());
    parts.push_back(path.substr(at, dot - at));
    at = dot + 1;
  }
  return parts;
}

Member* member_of(Node& node, std::string_view key) {
  const auto found = std::find_if(node.members.begin(), node.members.end(), [key](const Member& one) { return one.key == key; });
  return found == node.members.end() ? nullptr : &*found;
}

/// `size.across` and `size.across.x` where the path is `size.across`.
bool begins_with_path(const std::string& text, const std::string& path) {
  return text.compare(0, path.size(), path) == 0 && (text.size() == path.size() || text.at(path.size()) == '.');
}

void tell_renamed(const RenamedField& field, const base::Span& where, const std::string& was, const std::string& now,
                  report::Findings& findings) {
  findings.add(report::Rule::content_renamed, where,
               "found " + was + ", which is called " + now + " since format " + std::to_string(field.since),
               "write " + now + "; when no old name is left, put the new format into the head");
}

/// `size.across`; a path through a list has no single name.
std::string path_to(const RenamedField& field, const std::string& name) {
  std::string path;
  for (const std::string& step : field.where) path += step + ".";
  return path + name;
}

/// One renaming in one file.
class Renaming {
 public:
  Renaming(const RenamedField& field, report::Findings& findings) : field_(field), findings_(findings) {}

  void apply(Node& root) {
    walk(root, 0, {});
    if (old_path_.empty()) return;
    if (Member* basis = member_of(root, "basis")) {
      for (Member& entry : basis->value.members) rename_path(entry.key, entry.key_span);
    }
    if (Member* conflicts = member_of(root, "conflicts")) {
      for (Node& conflict : conflicts->value.items) {
        if (Member* named = member_of(conflict, "field")) rename_path(named->value.text, named->value.span);
      }
    }
  }

 private:
  void walk(Node& node, std::size_t depth, const std::string& path) {
    if (depth == field_.where.size()) return rename(node, path);
    const std::string& step = field_.where.at(depth);
    if (step == "*") {
      for (Node& item : node.items) walk(item, depth + 1, path + "*.");
    } else if (Member* next = member_of(node, step)) {
      walk(next->value, depth + 1, path + step + ".");
    }
  }

  void rename(Node& holder, const std::string& path) {
    Member* old = member_of(holder, field_.was);
    if (old == nullptr || member_of(holder, field_.now) != nullptr) return;
    tell(old->key_span, field_.was, field_.now);
    old->key = field_.now;
    old_path_ = path + field_.was;
    new_path_ = path + field_.now;
  }

  void rename_path(std::string& text, const base::Span& where) {
    if (!begins_with_path(text, old_path_)) return;
    std::string renamed = new_path_ + text.substr(old_path_.size());
    tell(where, text, renamed);
    text = std::move(renamed);
  }

  void tell(const base::Span& where, const std::string& was, const std::string& now) {
    tell_renamed(field_, where, was, now, findings_);
  }

  const RenamedField& field_;
  report::Findings& findings_;
  std::string old_path_;  ///< of what was renamed here; empty: nothing was
  std::string new_path_;
};

}  // namespace

Renamed read_renamed(const FileSource& schema, const Shapes& shapes, base::FileTable& files, report::Findings& findings) {
  Renamed renamed;
  const SchemaFile file = read_schema_file(schema, "renamed.yaml", "renamed", shapes, files, findings);
  if (!file.root) return renamed;
  const DecodeContext context{file.report.unusable, {}};
  const Fields fields(*file.root, {}, context);
  renamed.format = fields.count("format", renamed.format);
  for (const Fields& field : fields.parts("fields")) {
    renamed.fields.push_back({field.text("kind"), parts_of(field.text("where")), field.text("was"), field.text("now"),
                              field.count("since", renamed.format)});
  }
  return renamed;
}

std::string with_renamed_links(std::string body, base::FileId file, int first_line, int format, const Renamed& renamed,
                               report::Findings& findings) {
  for (const RenamedField& field : renamed.fields) {
    if (format >= field.since) continue;
    const std::string was = path_to(field, field.was);
    const std::string start = "](" + field.kind + "/";
    for (std::size_t at = body.find(start); at != std::string::npos; at = body.find(start, at + start.size())) {
      const std::size_t end = std::min(body.find(')', at), body.size());
      const std::size_t hash = body.find('#', at);
      if (hash >= end || !begins_with_path(body.substr(hash + 1, end - hash - 1), was)) continue;
      tell_renamed(field, SourceText(body, file, first_line).span(hash + 1, was.size()), was, path_to(field, field.now),
                   findings);
      body.replace(hash + 1, was.size(), path_to(field, field.now));
    }
  }
  return body;
}

void rename_fields(std::string_view kind, int format, const Renamed& renamed, Node& root, report::Findings& findings) {
  for (const RenamedField& field : renamed.fields) {
    if (field.kind == kind && format < field.since) Renaming(field, findings).apply(root);
  }
}

}  // namespace benchleaf::read
