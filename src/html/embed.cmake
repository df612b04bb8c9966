# Writes the files FILES (parted by commas) into OUT, a source file that gives them back from benchleaf::html::assets().
# Pieces of 8 kB, since a compiler need not take longer literals.
set(rows "")
string(REPLACE "," ";" FILES "${FILES}")
foreach(file IN LISTS FILES)
  file(READ "${file}" text)
  get_filename_component(name "${file}" NAME)
  string(LENGTH "${text}" length)
  set(literals "")
  set(at 0)
  while(at LESS length)
    string(SUBSTRING "${text}" ${at} 8000 piece)
    if(piece MATCHES "\\)text\"")
      message(FATAL_ERROR "${file} holds the end mark of the literal")
    endif()
    string(APPEND literals "\n       R\"text(${piece})text\"")
    math(EXPR at "${at} + 8000")
  endwhile()
  string(APPEND rows "      {\"assets/${name}\",${literals}},\n")
endforeach()
file(WRITE "${OUT}" "// Written by embed.cmake.
#include \"html/assets.h\"

namespace benchleaf::html {

const std::vector<Asset>& assets() {
  static const std::vector<Asset> kAssets = {
${rows}  };
  return kAssets;
}

}  // namespace benchleaf::html
")
