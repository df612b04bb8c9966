# In: PROGRAM (benchleaf), LINES (the writer of table lines), SCRIPT (bench.js), NODE, ANSWER (web_answer.cjs), SCHEMA, WORK.
# Fails unless the page's script answers with the text of the terminal, letter for letter.
file(MAKE_DIRECTORY "${WORK}")
execute_process(COMMAND "${LINES}" "${SCHEMA}" OUTPUT_FILE "${WORK}/tables.txt" RESULT_VARIABLE failed)
if(failed)
  message(FATAL_ERROR "the tables could not be written: ${failed}")
endif()
set(requests "designation=SR754W" "designation=4LR44" "designation=CR2032" "designation=SR41SW" "designation=SR2O32" "designation=XR1" "designaton=SR44")
foreach(request IN LISTS requests)
  execute_process(COMMAND "${PROGRAM}" reckon cell-decode "${request}" --schema "${SCHEMA}" OUTPUT_VARIABLE terminal ERROR_VARIABLE said)
  execute_process(COMMAND "${NODE}" "${ANSWER}" "${SCRIPT}" "${WORK}/tables.txt" cell-decode "${request}"
    OUTPUT_VARIABLE web ERROR_VARIABLE said_web RESULT_VARIABLE failed)
  if(failed OR web STREQUAL "")
    message(FATAL_ERROR "${request}: the script failed: ${failed} ${said_web}")
  endif()
  if(NOT web STREQUAL terminal)
    message(FATAL_ERROR "${request}: the answers differ\nterminal:\n${terminal}${said}\npage:\n${web}")
  endif()
endforeach()
