#pragma once

#include "model/knowledge_base.h"
#include "read/decode_fields.h"

namespace benchleaf::read {

/// What every record has: id and places are set by the caller.
void decode_common(const Fields& fields, const DecodeContext& context, model::Record& record);

// The fields of one kind each.
void decode(const Fields& fields, model::Cell& cell);
void decode(const Fields& fields, model::Module& module);
void decode(const Fields& fields, model::Gasket& gasket);
void decode(const Fields& fields, model::Crystal& crystal);
void decode(const Fields& fields, model::Material& material);
void decode(const Fields& fields, model::Part& part);
void decode(const Fields& fields, model::Tool& tool);
void decode(const Fields& fields, model::Substance& substance);
void decode(const Fields& fields, model::Residue& residue);
void decode(const Fields& fields, model::Chemistry& chemistry);
void decode(const Fields& fields, model::Abrasive& abrasive);
void decode(const Fields& fields, model::Caution& caution);
void decode(const Fields& fields, model::Procedure& procedure);
void decode(const Fields& fields, model::Symptom& symptom);
void decode(const Fields& fields, model::Term& term);
void decode(const Fields& fields, model::Source& source);
void decode(const Fields& fields, model::Chart& chart);
void decode(const Fields& fields, model::Job& job);
void decode(const Fields& fields, model::Hold& hold);
void decode(const Fields& fields, model::Question& question);
void decode(const Fields& fields, model::Look& look);
void decode(const Fields& fields, model::Page& page);
void decode(const Fields& fields, model::Watch& watch);
void decode(const Fields& fields, model::Stock& stock);

/// The head of the handbook.
void decode(const Fields& fields, model::Handbook& handbook);
/// The head of an overlay.
void decode(const Fields& fields, model::Overlay& overlay);

}  // namespace benchleaf::read
