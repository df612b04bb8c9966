// In: what two states say differently. Out: one JSON object.

#include <nlohmann/json.hpp>

#include "base/quantity.h"
#include "command/changes_written.h"

namespace benchleaf::command {
namespace {

using Json = nlohmann::ordered_json;

Json list_of(const std::vector<compose::Change>& changes) {
  Json list = Json::array();
  for (const auto& change : changes) {
    Json one;
    one["of"] = compose::of_name(change.of);
    one["how"] = compose::how_name(change.how);
    one["id"] = change.id;
    one["before"] = base::to_terminal(change.before);
    one["after"] = base::to_terminal(change.after);
    one["basis"] = change.basis;
    one["fields"] = change.fields;
    one["because"] = change.because;
    list.push_back(std::move(one));
  }
  return list;
}

}  // namespace

std::string changes_json(const compose::Changes& changes) {
  Json root;
  root["same"] = changes.empty();
  root["stated"] = list_of(changes.stated);
  root["derived"] = list_of(changes.derived);
  return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace benchleaf::command
