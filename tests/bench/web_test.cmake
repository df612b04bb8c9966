# In: PROGRAM (benchleaf), LINES (the writer of table and figure lines), SCRIPT (bench.js), NODE, ANSWER (web_answer.cjs),
# VECTORS (outside_vectors.txt), SCHEMA, CONTENT, WORK.
# Fails unless the page's script answers every vector, and some requests that are refused, with the text of the terminal,
# letter for letter.
file(MAKE_DIRECTORY "${WORK}")
execute_process(COMMAND "${LINES}" "${SCHEMA}" "${CONTENT}" OUTPUT_FILE "${WORK}/lines.txt" RESULT_VARIABLE failed)
if(failed)
  message(FATAL_ERROR "tables and figures could not be written: ${failed}")
endif()

# One request a line, each once. A semicolon would part the elements of a list, so it is a tab here.
set(requests "cell-decode\tdesignation=SR754W" "cell-decode\tdesignation=4LR44" "cell-decode\tdesignation=CR2032"
  "cell-decode\tdesignation=SR2O32" "cell-decode\tdesignaton=SR44" "gasket-fit\told-inside=31.85mm\tseries=round-0-8"
  "gasket-fit\tseat=31.85" "crust-dose\tresidue=potassium-carbonate-crust\tmass=50 to 100 mg\tliquid=white-vinegar"
  "scratch-ladder\tscratch=nail-catches\tgrades=800,P1200" "cell-life\tcell=393\tmodule=lcd-filament-lamp" "no-such")
file(STRINGS "${VECTORS}" lines ENCODING UTF-8)
foreach(line IN LISTS lines)
  if(line MATCHES "^([a-z]+-?[a-z]+;[^|]*) \\| ")
    string(REPLACE "; " "\t" request "${CMAKE_MATCH_1}")
    list(APPEND requests "${request}")
  endif()
endforeach()
list(REMOVE_DUPLICATES requests)
list(LENGTH requests count)
if(count LESS 80)
  message(FATAL_ERROR "only ${count} requests were found")
endif()

set(terminal "")
set(asked "")
foreach(request IN LISTS requests)
  string(REPLACE "\t" ";" arguments "${request}")
  execute_process(COMMAND "${PROGRAM}" reckon ${arguments} --schema "${SCHEMA}" --content "${CONTENT}"
    OUTPUT_VARIABLE answer ERROR_VARIABLE said)
  if(answer STREQUAL "")
    message(FATAL_ERROR "${request}: the terminal gave no answer: ${said}")
  endif()
  string(APPEND terminal "${answer}====\n")
  string(REPLACE "\t" "; " line "${request}")
  string(APPEND asked "${line}\n")
endforeach()
file(WRITE "${WORK}/requests.txt" "${asked}")
file(WRITE "${WORK}/terminal.txt" "${terminal}")
execute_process(COMMAND "${NODE}" "${ANSWER}" "${SCRIPT}" "${WORK}/lines.txt" "${WORK}/requests.txt"
  OUTPUT_FILE "${WORK}/page.txt" ERROR_VARIABLE said RESULT_VARIABLE failed)
if(failed)
  message(FATAL_ERROR "the script failed: ${failed} ${said}")
endif()
execute_process(COMMAND ${CMAKE_COMMAND} -E compare_files "${WORK}/terminal.txt" "${WORK}/page.txt" RESULT_VARIABLE differs)
if(differs)
  message(FATAL_ERROR "the answers differ: compare ${WORK}/terminal.txt and ${WORK}/page.txt")
endif()
message(STATUS "${count} requests, the same text in both")
