# Writes every case of FOLDER (RULE.case) into OUT, a source file that gives their texts back by rule.
file(GLOB cases "${FOLDER}/*.case")
list(SORT cases)
set(rows "")
foreach(case IN LISTS cases)
  get_filename_component(rule "${case}" NAME)
  string(REGEX REPLACE "\\.case$" "" rule "${rule}")
  file(READ "${case}" text)
  if(text MATCHES "\\)case\"")
    message(FATAL_ERROR "${case} holds the end mark of the literal")
  endif()
  string(APPEND rows "    {\"${rule}\", R\"case(${text})case\"},\n")
endforeach()
file(WRITE "${OUT}" "// Written by embed_samples.cmake.
#include \"report/samples.h\"

namespace benchleaf::report {

std::string_view sample_text(std::string_view rule) {
  static constexpr std::pair<std::string_view, std::string_view> kCases[] = {
${rows}  };
  for (const auto& [name, text] : kCases) {
    if (name == rule) return text;
  }
  return {};
}

}  // namespace benchleaf::report
")
