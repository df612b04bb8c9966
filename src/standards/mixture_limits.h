#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "standards/mixture.h"

namespace benchleaf::standards {

/// `Skin Corr. 1` for its three sub-categories, else the class itself.
std::string family_of(const std::string& hazard_class);

bool begins_with(std::string_view text, std::string_view start);

/// Percent by mass in a column of a row, 0 where it states none.
double percent_of(const model::PublishedTable::Row& row, std::string_view column);

/// Whether a part has a class; an empty statement means any.
bool has_class(const MixturePart& part, const std::string& family, std::string_view statement);

/// All rows of the table of generic limits that give one class and statement.
struct LimitRule {
  std::string gives;
  std::string statement;
  std::vector<const model::PublishedTable::Row*> rows;
};

std::vector<LimitRule> generic_rules(const model::Tables& tables);

/// The limit of one part under one rule and the share from which the part counts at all, percent by mass.
struct PartLimit {
  double limit = 0;
  double cut_off = 0;
  const model::PublishedTable::Row* row = nullptr;  ///< that gave one of the two; none where the part has both of its own
};

std::optional<PartLimit> limit_of(const MixturePart& part, const LimitRule& rule);

/// The multiplying factor of a part under a rule, 1 for all but water life.
double factor_of(const MixturePart& part, const LimitRule& rule);

}  // namespace benchleaf::standards
