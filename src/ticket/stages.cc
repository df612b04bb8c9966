// Out: the stages of bench work in their order; the shape of a job lists the same words, and a test compares them.
#include "ticket/jobs.h"

namespace benchleaf::ticket {

const std::vector<std::string_view>& stages() {
  static const std::vector<std::string_view> kStages = {
      "look",   "strap", "identify", "open", "inspect", "clear", "contact", "measure", "display", "pusher", "crystal",   "case",
      "gasket", "seal",  "cell",     "wake", "check",   "close", "set",     "fog",     "rate",    "bars",   "hand-over", "after"};
  return kStages;
}

const model::Job* job_of(const model::KnowledgeBase& records, const RecordRef& procedure) {
  for (const auto& [id, job] : records.jobs) {
    if (job.procedure == procedure) return &job;
  }
  return nullptr;
}

}  // namespace benchleaf::ticket
