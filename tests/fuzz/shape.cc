// In: a shape, a line `---`, a record. Out: nothing; aborts where the shape engine breaks its word.
#include "fuzz/property.h"
#include "read/shape.h"
#include "read/yaml_reader.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using benchleaf::fuzz::must;
  namespace read = benchleaf::read;
  const std::string_view text = benchleaf::fuzz::text_of(data, size);
  const std::string_view line = "\n---\n";
  const std::size_t place = text.find(line);
  if (place == std::string_view::npos) return 0;
  benchleaf::report::Findings of_shape;
  const auto schema = read::read_yaml({text.substr(0, place), 0, 1}, of_shape);
  if (!schema.root) return 0;
  const auto shape = read::Shape::compile(*schema.root, of_shape);
  must(shape || of_shape.has_errors(), "no shape is refused without a finding");
  benchleaf::report::Findings of_record;
  const auto record = read::read_yaml({text.substr(place + line.size()), 0, 1}, of_record);
  if (!shape || !record.root) return 0;
  benchleaf::report::Findings first, second;
  const auto report = read::check_shape(*shape, *record.root, record.refused, first);
  const auto again = read::check_shape(*shape, *record.root, record.refused, second);
  must(first.all().size() == second.all().size() && report.unusable == again.unusable, "one verdict on one record");
  return 0;
}
