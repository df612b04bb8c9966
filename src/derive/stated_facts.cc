// In: the trees of all records. Out: a fact for every quantity, every number and every code word in them, as stated.
// Prose is no fact; neither is a reference, an id, or what a record says about its own provenance.

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>
#include <utility>

#include "base/number.h"
#include "base/quantity.h"
#include "derive/demonstration.h"
#include "derive/makers.h"

namespace benchleaf::derive {
namespace {

using model::Node;
using model::NodeType;
using model::Record;

/// Members of every record that say who it is and where it comes from.
constexpr std::array<std::string_view, 6> kNoFacts = {"id", "aliases", "basis", "conflicts", "note", "title"};

/// Members of a list item that say the same of the item alone.
constexpr std::array<std::string_view, 4> kItemProvenance = {"source", "where", "trust", "as-of"};

/// What stands beside a verdict in the words of the bench: a source says that acid is poor for polyamide, and not how long a
/// wipe may take. No source makes them more than usage of the trade.
constexpr std::array<std::string_view, 4> kOwnWords = {"condition", "effect", "when", "why"};

/// A mapping `{value: 80 mAh, load: not stated}` is one fact with its conditions beside it.
constexpr std::string_view kValueMember = ".value";

std::string joined(const std::string& path, std::string_view name) {
  return path.empty() ? std::string(name) : path + "." + std::string(name);
}

bool is_provenance(std::string_view key) {
  return std::find(kItemProvenance.begin(), kItemProvenance.end(), key) != kItemProvenance.end();
}

bool is_own_words(std::string_view path) {
  const std::string_view name = path.substr(path.rfind('.') + 1);
  return std::find(kOwnWords.begin(), kOwnWords.end(), name) != kOwnWords.end();
}

bool is_code_word(std::string_view text) { return !text.empty() && text.find_first_of(" \t\n") == std::string_view::npos; }

/// Walks one record.
class Walker {
 public:
  Walker(const Record& record, model::FactBase& facts) : record_(record), facts_(facts) {
    for (const auto& reference : record.references) references_.insert(reference.path);
  }

  void walk() {
    for (const auto& member : record_.root.members) {
      const bool skipped = std::find(kNoFacts.begin(), kNoFacts.end(), member.key) != kNoFacts.end();
      if (!skipped) visit(member.value, member.key);
    }
  }

 private:
  void visit(const Node& node, const std::string& path) {
    if (node.is_scalar()) return leaf(node, path);
    const bool has_own_basis = node.find("trust") != nullptr;
    for (const auto& member : node.members) {
      if (!has_own_basis || !is_provenance(member.key)) visit(member.value, joined(path, member.key));
    }
    for (std::size_t i = 0; i < node.items.size(); ++i) visit(node.items[i], joined(path, std::to_string(i)));
  }

  void leaf(const Node& node, const std::string& path) {
    if (!record_.usable(path) || references_.count(path) > 0) return;
    model::Fact fact;
    if (node.quantity) {
      fill_quantity(fact, *node.quantity);
    } else if (node.type == NodeType::integer || node.type == NodeType::number) {
      if (!fill_quantity(fact, node.text)) return;
    } else if (node.type == NodeType::string && (is_code_word(node.text) || record_.basis_for(path) != nullptr)) {
      fact.printed = node.text;
    } else {
      return;
    }
    add(std::move(fact), path);
  }

  void add(model::Fact fact, const std::string& path) {
    const bool is_value = path.size() > kValueMember.size() && path.substr(path.size() - kValueMember.size()) == kValueMember;
    fact.id = record_.reference() + "#" + (is_value ? path.substr(0, path.size() - kValueMember.size()) : path);
    if (const model::Basis* basis = record_.basis_for(path)) {
      fact.trust = is_own_words(path) ? model::weaker(basis->trust, model::Trust::trade) : basis->trust;
      fact.source = source_text(basis->source, basis->where);
    } else {
      fact.trust = trust_without_basis(path);
    }
    facts_.add(std::move(fact));
  }

  /// The designation is the name of a cell: what is derived from it rests on the name as given, not on a memory of it.
  model::Trust trust_without_basis(const std::string& path) const {
    if (record_.kind == model::Kind::cell && path == "designation") return model::Trust::given;
    return is_demonstration(record_) ? model::Trust::invented : model::Trust::memory;
  }

  const Record& record_;
  model::FactBase& facts_;
  std::set<std::string, std::less<>> references_;
};

}  // namespace

bool fill_quantity(model::Fact& fact, std::string_view text) {
  const auto parsed = base::parse_quantity(text);
  const auto* quantity = std::get_if<base::Quantity>(&parsed);
  if (quantity != nullptr) fill_quantity(fact, *quantity);
  return quantity != nullptr;
}

void fill_quantity(model::Fact& fact, const base::Quantity& quantity) {
  fact.printed = base::printed(quantity);
  if (!quantity.has_value()) return;
  fact.unit = std::string(base::unit_info(quantity.unit).symbol);
  // The middle of a range is nobody's statement.
  if (quantity.form != base::QuantityForm::range) fact.value = quantity.stated.nominal;
  if (quantity.has_ends()) {
    fact.low = quantity.stated.low;
    fact.high = quantity.stated.high;
  }
}

std::string source_text(std::string_view source, std::string_view where) {
  std::string text(source);
  if (!text.empty() && !where.empty()) text += ", ";
  return text + std::string(where);
}

void add_stated_facts(const Record& record, model::FactBase& facts) { Walker(record, facts).walk(); }

void make_stated_facts(Making& making) {
  for (const Record* record : making.base.all()) add_stated_facts(*record, making.facts);
}

}  // namespace benchleaf::derive
