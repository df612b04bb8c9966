# Writes TEXT (a file) into OUT, a source file that gives it back from benchleaf::html::style_sheet().
# Pieces of 8 kB, since a compiler need not take longer literals.
file(READ "${TEXT}" text)
string(LENGTH "${text}" length)
set(literals "")
set(at 0)
while(at LESS length)
  string(SUBSTRING "${text}" ${at} 8000 piece)
  if(piece MATCHES "\\)text\"")
    message(FATAL_ERROR "${TEXT} holds the end mark of the literal")
  endif()
  string(APPEND literals "\n    R\"text(${piece})text\"")
  math(EXPR at "${at} + 8000")
endwhile()
file(WRITE "${OUT}" "// Written by embed.cmake.
#include \"html/style_sheet.h\"

namespace benchleaf::html {

std::string_view style_sheet() {
  return ${literals};
}

}  // namespace benchleaf::html
")
