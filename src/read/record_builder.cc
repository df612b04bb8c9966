// In: a file that was held against its shape, and the names of all records. Out: its typed record.
#include "read/record_builder.h"

#include <map>
#include <utility>

#include "read/markdown.h"
#include "read/typed_record.h"

namespace benchleaf::read {

namespace {

using model::Kind;

/// One file on its way to a record.
class RecordBuilder {
 public:
  RecordBuilder(CheckedFile checked, const RecordNames& names, report::Findings& findings)
      : checked_(std::move(checked)), names_(names), findings_(findings) {}

  template <typename RecordType>
  void add_to(std::map<std::string, RecordType, std::less<>>& list) {
    model::Record frame;
    frame.kind = *checked_.name.kind;
    frame.id = checked_.name.id;
    frame.file = checked_.file;
    frame.root = std::move(checked_.root);
    frame.unusable = std::move(checked_.report.unusable);
    frame.basis_paths = std::move(checked_.report.basis_paths);
    keep_quantities(std::move(checked_.report.quantities), frame);
    frame.overlay = checked_.overlay;
    frame.replaced = std::move(checked_.replaced);
    resolve(names_, checked_.report, frame.references);
    RecordType record = typed_record<RecordType>(std::move(frame));
    add_body(record);
    list.emplace(record.id, std::move(record));
  }

 private:
  void add_body(const model::Record&) {}

  void add_body(model::Page& page) {
    MarkdownPage body = read_markdown({checked_.body, checked_.file, checked_.body_line}, findings_);
    page.parts = std::move(body.parts);
    for (FoundReference& found : body.references) page.references.push_back(names_.resolve(std::move(found)));
    if (!body.whole) page.unusable.emplace_back("body");
  }

  CheckedFile checked_;
  const RecordNames& names_;
  report::Findings& findings_;
};

}  // namespace

void add_other_names(const CheckedFile& checked, RecordNames& names) {
  const Kind kind = *checked.name.kind;
  // a record under the wrong file name has its finding; what refers to it by the stated id is right
  if (const model::Node* id = checked.root.find("id")) names.add_alias({kind, id->text}, checked.reference());
  const auto add_aliases = [&](const model::Node& root) {
    const model::Node* aliases = root.find("aliases");
    if (aliases == nullptr) return;
    for (const model::Node& alias : aliases->items) names.add_alias({kind, alias.text}, checked.reference());
  };
  add_aliases(checked.root);
  // what names the record below by an alias has its finding at the record above, not where it stands
  if (checked.replaced) add_aliases(checked.replaced->root);
}

void resolve(const RecordNames& names, ShapeReport& report, std::vector<model::ReferencePlace>& references) {
  for (FoundReference& found : report.references) references.push_back(names.resolve(std::move(found)));
}

void add_record(CheckedFile checked, const RecordNames& names, model::KnowledgeBase& base, report::Findings& findings) {
  const Kind kind = *checked.name.kind;
  RecordBuilder builder(std::move(checked), names, findings);
  switch (kind) {
#define BENCHLEAF_KIND(name_, folder, Struct, list, plural) \
  case Kind::name_:                                         \
    builder.add_to(base.list);                              \
    break;
#include "model/kinds.def"
#undef BENCHLEAF_KIND
  }
}

}  // namespace benchleaf::read
