# In: the program and what it reads. Out: `cmake --install`, and the Debian package that `cpack` makes of it.
include(GNUInstallDirs)
include("${CMAKE_CURRENT_LIST_DIR}/edition.cmake")

# Completions and the manual, made of the description of the command line and of the shapes.
set(BENCHLEAF_DESCRIBED "${PROJECT_BINARY_DIR}/described")
file(MAKE_DIRECTORY "${BENCHLEAF_DESCRIBED}")
set(described "${BENCHLEAF_DESCRIBED}/benchleaf.bash" "${BENCHLEAF_DESCRIBED}/_benchleaf"
  "${BENCHLEAF_DESCRIBED}/benchleaf.1" "${BENCHLEAF_DESCRIBED}/benchleaf-record.5")
file(GLOB shapes CONFIGURE_DEPENDS "${PROJECT_SOURCE_DIR}/schema/shapes/*.json")
add_custom_command(OUTPUT ${described}
  COMMAND benchleaf_describe "${PROJECT_SOURCE_DIR}/schema/shapes" "${PROJECT_VERSION}" "${BENCHLEAF_EDITION_DATE}" "${BENCHLEAF_DESCRIBED}"
  DEPENDS benchleaf_describe ${shapes}
  COMMENT "Describing the command line" VERBATIM)
# Debian keeps manual and changelog packed, without the time of packing.
set(BENCHLEAF_CHANGELOG "${BENCHLEAF_DESCRIBED}/changelog")
file(WRITE "${BENCHLEAF_CHANGELOG}"
  "benchleaf (${PROJECT_VERSION}) stable; urgency=medium\n\n  * What changed, by its effect, stands in the README of the source.\n\n"
  " -- Benchleaf contributors <contributors@benchleaf.invalid>  ${BENCHLEAF_EDITION_MAIL_DATE}\n")
set(packed "")
foreach(text IN ITEMS "${BENCHLEAF_DESCRIBED}/benchleaf.1" "${BENCHLEAF_DESCRIBED}/benchleaf-record.5" "${BENCHLEAF_CHANGELOG}")
  add_custom_command(OUTPUT "${text}.gz" COMMAND gzip -9 -n -k -f "${text}" DEPENDS "${text}" COMMENT "Packing ${text}" VERBATIM)
  list(APPEND packed "${text}.gz")
endforeach()
add_custom_target(described ALL DEPENDS ${described} ${packed})
add_dependencies(handbook described)  # so that `cmake --install` finds all of it after the README's first command

# What is installed is built before; tests, that are not, need not be.
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY ON)
set(share "${CMAKE_INSTALL_DATADIR}/benchleaf")
install(TARGETS benchleaf RUNTIME)
install(DIRECTORY schema content DESTINATION "${share}" PATTERN "*~" EXCLUDE PATTERN ".*" EXCLUDE)
install(FILES LICENSE DESTINATION "${share}")
install(FILES LICENSE DESTINATION "${CMAKE_INSTALL_DATADIR}/doc/benchleaf" RENAME copyright)
install(FILES "${PROJECT_BINARY_DIR}/program.js" DESTINATION "${share}" OPTIONAL)  # missing where no em++ was found
install(FILES "${BENCHLEAF_DESCRIBED}/benchleaf.bash" DESTINATION "${CMAKE_INSTALL_DATADIR}/bash-completion/completions" RENAME benchleaf)
install(FILES "${BENCHLEAF_DESCRIBED}/_benchleaf" DESTINATION "${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions")
install(FILES "${BENCHLEAF_CHANGELOG}.gz" DESTINATION "${CMAKE_INSTALL_DATADIR}/doc/benchleaf")
install(FILES "${BENCHLEAF_DESCRIBED}/benchleaf.1.gz" DESTINATION "${CMAKE_INSTALL_MANDIR}/man1")
install(FILES "${BENCHLEAF_DESCRIBED}/benchleaf-record.5.gz" DESTINATION "${CMAKE_INSTALL_MANDIR}/man5")

# The fonts and patterns that the program opens by name; the libraries that it links, dpkg-shlibdeps finds.
file(STRINGS "${PROJECT_SOURCE_DIR}/schema/fonts.yaml" packages REGEX "package:")
list(TRANSFORM packages REPLACE "^ *package: *" "")
list(REMOVE_DUPLICATES packages)
list(SORT packages)
list(JOIN packages ", " CPACK_DEBIAN_PACKAGE_DEPENDS)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_CONTACT "Benchleaf contributors <contributors@benchleaf.invalid>")
set(CPACK_PACKAGE_VENDOR "Benchleaf contributors")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "bench handbook for quartz watches from a knowledge base")
set(CPACK_PACKAGE_DESCRIPTION "Checks records on cells, leaks, gaskets and crystals, works out what\nfollows from them, and binds them as a printed handbook, offline pages\nand bench charts; answers the same at the terminal.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION text)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Dates inside the package: SOURCE_DATE_EPOCH, else the edition's, so that the same input gives the same bytes.
set(CPACK_PROJECT_CONFIG_FILE "${PROJECT_BINARY_DIR}/package_date.cmake")
file(WRITE "${CPACK_PROJECT_CONFIG_FILE}"
  "if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})\n  set(ENV{SOURCE_DATE_EPOCH} ${BENCHLEAF_EDITION_EPOCH})\nendif()\n")
include(CPack)
