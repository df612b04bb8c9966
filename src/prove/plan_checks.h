#pragma once

#include "prove/proof.h"

namespace benchleaf::prove {

// jobs.cc
void check_plan_conditions(const Proof& proof);
void check_jobs_are_reached(const Proof& proof);
void check_questions_are_asked(const Proof& proof);
void check_job_order(const Proof& proof);
void check_briefs(const Proof& proof);
void check_look_slots(const Proof& proof);

}  // namespace benchleaf::prove
