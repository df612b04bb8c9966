#pragma once

#include "command/options.h"
#include "command/terminal.h"

namespace benchleaf::command {

// One function a command, one file each. Each gives back its exit code.

int run_check(const CheckOptions& options, const CommonOptions& common, Terminal& terminal);
int run_bind(const BindOptions& options, const CommonOptions& common, Terminal& terminal);
int run_find(const FindOptions& options, const CommonOptions& common, Terminal& terminal);
int run_reckon(const ReckonOptions& options, const CommonOptions& common, Terminal& terminal);
int run_ticket(const TicketOptions& options, const CommonOptions& common, Terminal& terminal);
int run_label(const LabelOptions& options, const CommonOptions& common, Terminal& terminal);
int run_draft(const DraftOptions& options, const CommonOptions& common, Terminal& terminal);
int run_changes(const ChangesOptions& options, const CommonOptions& common, Terminal& terminal);

}  // namespace benchleaf::command
