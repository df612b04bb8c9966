// In and out: records and their line format.
//   benchleaf-records 1
//   record   kind id             (kind handbook: the head of the handbook, no id)
//   target   path reference      a reference of the record and what it means
//   basis    path                a value that needs a basis
//   quantity path                a value that is a quantity
//   tree     depth type key text (as node_lines.h has it)
//   alias    old new             behind all records
// Parts stand between tabs, as base/line_parts.h writes them.
#include "read/record_lines.h"

#include <utility>

#include "base/line_parts.h"
#include "read/node_lines.h"
#include "read/typed_record.h"

namespace benchleaf::read {

namespace {

using model::Kind;

constexpr std::string_view kHead = "benchleaf-records 1";
constexpr std::string_view kTree = "tree\t";
constexpr std::string_view kHandbook = "handbook";

void add_targets(const std::vector<model::ReferencePlace>& references, std::string& lines) {
  for (const model::ReferencePlace& one : references) {
    if (!one.target.empty()) lines += base::line_of({"target", one.path, one.target}) + "\n";
  }
}

void add_tree(const model::Node& root, std::string& lines) {
  const std::string tree = node_lines(root);
  std::string_view rest = tree;
  while (!rest.empty()) lines += std::string(kTree) + std::string(base::take_line(rest)) + "\n";
}

void add_record(const model::Record& record, std::string& lines) {
  lines += base::line_of({"record", model::kind_name(record.kind), record.id}) + "\n";
  add_targets(record.references, lines);
  for (const std::string& path : record.basis_paths) lines += base::line_of({"basis", path}) + "\n";
  for (const std::string& path : record.quantity_paths) lines += base::line_of({"quantity", path}) + "\n";
  add_tree(record.root, lines);
}

/// Lines carry texts alone, so each quantity is read from its text here.
void read_quantities(model::Record& frame) {
  for (const std::string& path : frame.quantity_paths) {
    model::Node* node = frame.root.at_path(path);
    if (node == nullptr) continue;
    auto parsed = base::parse_quantity(node->text);
    if (auto* quantity = std::get_if<base::Quantity>(&parsed))
      node->quantity = std::make_shared<const base::Quantity>(std::move(*quantity));
  }
}

/// The lines of one record, gathered.
struct Gathered {
  std::string kind;
  model::Record frame;
  std::string tree;
  int first_line = 0;
};

/// Takes lines one by one; a line that does not fit ends the reading.
class RecordReader {
 public:
  bool take(std::string_view line, int number) {
    if (line.substr(0, kTree.size()) == kTree) {
      if (now_.kind.empty()) return false;
      if (now_.tree.empty()) now_.first_line = number;
      now_.tree += std::string(line.substr(kTree.size())) + "\n";
      return true;
    }
    const std::vector<std::string> parts = base::parts_of(line);
    if (parts[0] == "record" && parts.size() == 3) return start(parts[1], parts[2]);
    if (parts[0] == "alias" && parts.size() == 3) {
      base_.aliases.emplace(parts[1], parts[2]);
      return finish();
    }
    return !now_.kind.empty() && take_path(parts);
  }

  std::optional<model::KnowledgeBase> base() {
    if (!finish()) return std::nullopt;
    return std::move(base_);
  }

 private:
  bool start(const std::string& kind, const std::string& id) {
    if (!finish()) return false;
    now_.kind = kind;
    now_.frame.id = id;
    return true;
  }

  bool take_path(const std::vector<std::string>& parts) {
    if (parts[0] == "target" && parts.size() == 3) {
      model::ReferencePlace reference;
      reference.path = parts[1];
      reference.target = model::RecordRef(parts[2]);
      now_.frame.references.push_back(std::move(reference));
    } else if (parts[0] == "basis" && parts.size() == 2) {
      now_.frame.basis_paths.push_back(parts[1]);
    } else if (parts[0] == "quantity" && parts.size() == 2) {
      now_.frame.quantity_paths.push_back(parts[1]);
    } else {
      return false;
    }
    return true;
  }

  bool finish() {
    Gathered done = std::exchange(now_, {});
    if (done.kind.empty()) return true;
    auto root = read_node_lines(done.tree, base::kNoFile, done.first_line);
    if (!root) return false;
    if (done.kind == kHandbook) {
      base_.handbook.root = std::move(*root);
      base_.handbook.references = std::move(done.frame.references);
      const DecodeContext context = context_of(base_.handbook.unusable, base_.handbook.references);
      decode(Fields(base_.handbook.root, {}, context), base_.handbook);
      return true;
    }
    const auto kind = model::kind_from_name(done.kind);
    if (!kind) return false;
    done.frame.kind = *kind;
    done.frame.root = std::move(*root);
    read_quantities(done.frame);
    add(std::move(done.frame));
    return true;
  }

  void add(model::Record frame) {
    std::string id = frame.id;
    switch (frame.kind) {
#define BENCHLEAF_KIND(name_, folder, Struct, list, plural)                           \
  case Kind::name_:                                                                   \
    base_.list.emplace(std::move(id), typed_record<model::Struct>(std::move(frame))); \
    break;
#include "model/kinds.def"
#undef BENCHLEAF_KIND
    }
  }

  model::KnowledgeBase base_;
  Gathered now_;
};

bool is_among(Kind kind, const std::vector<Kind>& kinds) {
  for (const Kind one : kinds) {
    if (one == kind) return true;
  }
  return false;
}

}  // namespace

std::string record_lines(const model::KnowledgeBase& base, const std::vector<Kind>& kinds) {
  std::string lines = std::string(kHead) + "\n" + base::line_of({"record", kHandbook, ""}) + "\n";
  add_targets(base.handbook.references, lines);
  add_tree(base.handbook.root, lines);
  for (const model::Record* record : base.all()) {
    if (is_among(record->kind, kinds)) add_record(*record, lines);
  }
  for (const auto& [old_id, new_id] : base.aliases) lines += base::line_of({"alias", old_id, new_id}) + "\n";
  return lines;
}

std::optional<model::KnowledgeBase> read_record_lines(std::string_view lines) {
  if (base::take_line(lines) != kHead) return std::nullopt;
  RecordReader reader;
  for (int number = 2; !lines.empty(); ++number) {
    if (!reader.take(base::take_line(lines), number)) return std::nullopt;
  }
  return reader.base();
}

}  // namespace benchleaf::read
