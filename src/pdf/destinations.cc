// In: named places on pages. Out: a name tree of destinations that keep the zoom of the reader.
#include "pdf/destinations.h"

#include <cstddef>
#include <map>
#include <string>

#include "pdf/tree.h"

namespace benchleaf::pdf {

namespace {

void append_destination(std::string& out, const page::Destination& place, const page::Document& document,
                        const std::vector<ObjectNumber>& pages) {
  const std::size_t page = static_cast<std::size_t>(place.page);
  out += '[';
  append_reference(out, pages.at(page));
  out += "/XYZ ";
  append_tenths(out, place.x);
  out += ' ';
  append_tenths(out, document.pages.at(page).height - place.y);
  out += " null]";
}

}  // namespace

int destination_objects(const page::Document& document) {
  return document.destinations.empty() ? 0 : tree_objects(document.destinations.size());
}

void write_destinations(FileOutput& out, ObjectNumber root, const page::Document& document,
                        const std::vector<ObjectNumber>& pages) {
  if (document.destinations.empty()) return;
  std::vector<std::map<std::string, page::Destination>::const_iterator> places;
  for (auto place = document.destinations.cbegin(); place != document.destinations.cend(); ++place) places.push_back(place);
  write_tree(out, root,
             {"/Names", places.size(), [&](std::string& bytes, std::size_t i) { append_bytes(bytes, places.at(i)->first); },
              [&](std::string& bytes, std::size_t i) { append_destination(bytes, places.at(i)->second, document, pages); }});
}

}  // namespace benchleaf::pdf
