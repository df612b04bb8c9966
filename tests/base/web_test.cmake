# In: COMPILER (em++), NODE, SOURCES, INCLUDE, NATIVE (the digest program of this compiler), WORK (a scratch folder).
# Fails unless the sources compile for the browser and print there what they print here.
file(MAKE_DIRECTORY "${WORK}")
execute_process(
  COMMAND ${COMPILER} -std=c++20 -O1 -ffp-contract=off -Wall -Wextra -Werror "-I${INCLUDE}" ${SOURCES}
    -sWASM=0 --memory-init-file 0 -sSINGLE_FILE=1 -sENVIRONMENT=node -sEXIT_RUNTIME=1 -sFILESYSTEM=0 -fexceptions
    -o "${WORK}/digest.js"
  RESULT_VARIABLE failed OUTPUT_VARIABLE said ERROR_VARIABLE said)
if(failed)
  message(FATAL_ERROR "the browser's compiler refused:\n${said}")
endif()
execute_process(COMMAND ${NODE} "${WORK}/digest.js" OUTPUT_VARIABLE web RESULT_VARIABLE failed)
execute_process(COMMAND ${NATIVE} OUTPUT_VARIABLE native RESULT_VARIABLE failed_here)
if(failed OR failed_here)
  message(FATAL_ERROR "a digest program failed: ${failed} ${failed_here}")
endif()
if(NOT web STREQUAL native)
  file(WRITE "${WORK}/web.txt" "${web}")
  file(WRITE "${WORK}/native.txt" "${native}")
  message(FATAL_ERROR "the outputs differ: compare web.txt and native.txt in ${WORK}")
endif()
string(LENGTH "${web}" length)
if(length LESS 100000)
  message(FATAL_ERROR "only ${length} characters were compared")
endif()
