#pragma once

#include <string>
#include <vector>

#include "bench/codes.h"
#include "compose/desk.h"
#include "compose/entry_maker.h"
#include "model/book.h"

namespace benchleaf::compose {

/// One verdict with its reason, whoever states it.
struct VerdictRow {
  model::RecordRef record;  ///< what is touched or met
  model::Verdict verdict = model::Verdict::never;
  std::string words;  ///< why, what comes of it
  Sign sign;
};

/// A cell in the place of another, as cell-swap decides it: none where it does not fit.
model::Verdict place_verdict(bench::Code code);
/// Rows of one subject to the entry: a table of bans, then of what needs care; what does no harm and has no condition in
/// one sentence after it, by trust.
void add_verdicts(const Desk& desk, EntryMaker& maker, std::string table_name, std::string subject, std::vector<VerdictRow> rows);
/// Why a verdict holds and on what condition, in sentences.
std::string verdict_words(const model::OnMaterial& item);
/// What a liquid or an abrasive does to materials, and those of which it is not known.
void add_on_materials(const Desk& desk, EntryMaker& maker, const model::Record& agent,
                      const std::vector<model::OnMaterial>& on_materials);
/// Two sentences or parts as one; either may be empty.
std::string joined(const std::string& one, const std::string& other, const char* between = " ");

}  // namespace benchleaf::compose
