// In: a file that was held against its shape, and the names of all records. Out: its typed record.
#include "read/record_builder.h"

#include <map>
#include <utility>

#include "read/decode.h"
#include "read/markdown.h"

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
    RecordType record;
    record.kind = *checked_.name.kind;
    record.id = checked_.name.id;
    record.file = checked_.file;
    record.root = std::move(checked_.root);
    record.unusable = std::move(checked_.report.unusable);
    record.basis_paths = std::move(checked_.report.basis_paths);
    record.quantity_paths = std::move(checked_.report.quantity_paths);
    record.overlay = checked_.overlay;
    record.replaced = std::move(checked_.replaced);
    const DecodeContext context = resolve(names_, checked_.report, record.unusable, record.references);
    const Fields fields(record.root, {}, context);
    record.span = fields.span("id");
    decode_common(fields, context, record);
    decode(fields, record);
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
  const std::string folder = std::string(model::kind_name(*checked.name.kind)) + "/";
  // a record under the wrong file name has its finding; what refers to it by the stated id is right
  if (const model::Node* id = checked.root.find("id")) names.add_alias(folder + id->text, checked.reference());
  const auto add_aliases = [&](const model::Node& root) {
    const model::Node* aliases = root.find("aliases");
    if (aliases == nullptr) return;
    for (const model::Node& alias : aliases->items) names.add_alias(folder + alias.text, checked.reference());
  };
  add_aliases(checked.root);
  // what names the record below by an alias has its finding at the record above, not where it stands
  if (checked.replaced) add_aliases(checked.replaced->root);
}

DecodeContext resolve(const RecordNames& names, ShapeReport& report, const std::vector<std::string>& unusable,
                      std::vector<model::Reference>& references) {
  DecodeContext context{unusable, {}};
  for (FoundReference& found : report.references) {
    references.push_back(names.resolve(std::move(found)));
    const model::Reference& reference = references.back();
    if (!reference.target.empty()) context.targets.emplace(reference.path, reference.target);
  }
  return context;
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
