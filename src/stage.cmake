# In: folders.txt, the table of folders and what each may see. Out: BENCHLEAF_STAGES, the folders in build order, and the
# function that makes one folder's library.
file(STRINGS "${CMAKE_CURRENT_LIST_DIR}/folders.txt" table REGEX "^[a-z/]+:")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${CMAKE_CURRENT_LIST_DIR}/folders.txt")
set(BENCHLEAF_STAGES "")
foreach(line IN LISTS table)
  string(REGEX MATCHALL "[a-z/]+" words "${line}")
  list(POP_FRONT words folder)
  list(APPEND BENCHLEAF_STAGES ${folder})
  set(BENCHLEAF_ALLOWED_${folder} "${words}")
endforeach()

# benchleaf_stage(FOLDER [NATIVE a.cc ...] [LIBRARIES external::fmt ...])
#
# The library of one folder, benchleaf_FOLDER with `_` for `/`: every .cc below it but those of a folder that is a stage of its own
# and those called main.cc. It links what folders.txt lets it see. LIBRARIES are those of others, which the page's build has not:
# it leaves out the sources under NATIVE, which need them.
function(benchleaf_stage folder)
  cmake_parse_arguments(PARSE_ARGV 1 stage "" "" "NATIVE;LIBRARIES")
  if(stage_UNPARSED_ARGUMENTS)
    message(FATAL_ERROR "src/${folder}: unexpected ${stage_UNPARSED_ARGUMENTS}")
  endif()
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS RELATIVE "${CMAKE_CURRENT_SOURCE_DIR}" "${CMAKE_CURRENT_SOURCE_DIR}/*.cc")
  list(FILTER sources EXCLUDE REGEX "(^|/)main\\.cc$")  # of a program of its own
  foreach(below IN LISTS BENCHLEAF_STAGES)
    if(below MATCHES "^${folder}/(.*)$")
      list(FILTER sources EXCLUDE REGEX "^${CMAKE_MATCH_1}/")
    endif()
  endforeach()
  if(EMSCRIPTEN)
    list(REMOVE_ITEM sources "" ${stage_NATIVE})
  endif()
  benchleaf_library_name(${folder} library)
  add_library(${library} STATIC ${sources})
  target_include_directories(${library} PUBLIC "${PROJECT_SOURCE_DIR}/src")
  target_link_libraries(${library} PRIVATE benchleaf_options)
  if(NOT EMSCRIPTEN)
    target_precompile_headers(${library} REUSE_FROM benchleaf_common_headers)
    target_link_libraries(${library} PRIVATE ${stage_LIBRARIES})
  endif()
  foreach(link IN LISTS BENCHLEAF_ALLOWED_${folder})
    benchleaf_library_name(${link} linked)
    target_link_libraries(${library} PUBLIC ${linked})
  endforeach()
endfunction()

# benchleaf_library_name(FOLDER VARIABLE): benchleaf_compose_charts of compose/charts.
function(benchleaf_library_name folder variable)
  string(REPLACE "/" "_" name "benchleaf_${folder}")
  set(${variable} ${name} PARENT_SCOPE)
endfunction()

# benchleaf_precompile(NAME HEADERS ... LINKS ...): the target NAME, whose compiled headers others take with REUSE_FROM.
function(benchleaf_precompile name)
  cmake_parse_arguments(PARSE_ARGV 1 precompile "" "" "HEADERS;LINKS")
  file(WRITE "${CMAKE_CURRENT_BINARY_DIR}/${name}.cc" "// Carries the precompiled headers.\n")
  add_library(${name} OBJECT "${CMAKE_CURRENT_BINARY_DIR}/${name}.cc")
  target_link_libraries(${name} PRIVATE benchleaf_options ${precompile_LINKS})
  target_precompile_headers(${name} PRIVATE ${precompile_HEADERS})
endfunction()
