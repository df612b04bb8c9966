#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/span.h"
#include "model/node.h"
#include "report/finding.h"

namespace benchleaf::read {

struct Schema;

/// One JSON Schema (draft-07) as the shapes use it: checked when it is loaded, so that an unknown keyword, a reference
/// that leads nowhere or a pattern outside the subset is a finding and no shape comes back.
class Shape {
 public:
  static std::optional<Shape> compile(const model::Node& root, report::Findings& findings);
  Shape(Shape&&) noexcept;
  Shape& operator=(Shape&&) noexcept;
  ~Shape();

  /// Place 0 is the schema of the whole file.
  const std::vector<Schema>& schemas() const { return schemas_; }

 private:
  friend class ShapeLoader;
  Shape();
  std::vector<Schema> schemas_;
};

/// A word in a record that names another record: `x-ref` of its schema says of which kinds.
struct FoundReference {
  std::string path;                ///< `steps.2.with.0`
  std::string text;                ///< as written
  std::vector<std::string> kinds;  ///< kinds it may be of; more than one, or a full reference `kind/id`, is allowed
  base::Span span;
  std::string fact = {};  ///< `cell/sr754w#capacity`, where a page asks for a fact of the record
};

/// A value that is a quantity by its shape.
struct FoundQuantity {
  std::string path;
  std::shared_ptr<const base::Quantity> value;  ///< none where the text is no quantity of the right dimension
};

/// What a check finds besides findings.
struct ShapeReport {
  std::vector<std::string> unusable;       ///< paths of values that later stages must not read; "" for the whole record
  std::vector<FoundReference> references;  ///< in file order
  std::vector<std::string> basis_paths;    ///< paths of values that need a basis (`x-basis`), in file order
  std::vector<FoundQuantity> quantities;   ///< values of `x-quantity`, in file order
};

/// Holds a tree against a shape. Values in `refused` have had their finding and pass, as unusable ones.
ShapeReport check_shape(const Shape& shape, const model::Node& root, const std::vector<base::Span>& refused,
                        report::Findings& findings);

}  // namespace benchleaf::read
