# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# What is installed on Linux, and the Debian package made of it:
#   cmake --install BUILD [--prefix FOLDER]
#   cpack -G DEB --config BUILD/CPackConfig.cmake
# Included from the top, after the programs are known.
include(GNUInstallDirs)
include(${CMAKE_CURRENT_LIST_DIR}/metainfo.cmake)
set(here ${CMAKE_CURRENT_LIST_DIR})
set(icons ${here}/../../assets/icons)
set(kind application-x-halfcup-exchange)
set(HALFCUP_WEBSITE "" CACHE STRING "Where the publisher of this package serves pictures/ (https://...); empty: nowhere")

install(TARGETS halfcup halfcup-desk RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
# Loaded by the app itself, from beside wherever it was installed. One folder deeper than others put such a thing: for
# those just under lib CPack has the package call ldconfig, whose business they are not.
set(own_libraries ${CMAKE_INSTALL_LIBDIR}/halfcup/loaded)
install(TARGETS halfcup_sound LIBRARY DESTINATION ${own_libraries})
file(RELATIVE_PATH own_from_programs /${CMAKE_INSTALL_BINDIR} /${own_libraries})
set_target_properties(halfcup PROPERTIES INSTALL_RPATH "$ORIGIN/${own_from_programs}")
install(FILES ${here}/halfcup.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${here}/halfcup-exchange.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(DIRECTORY ${here}/icons/hicolor DESTINATION ${CMAKE_INSTALL_DATADIR}/icons FILES_MATCHING PATTERN "*.png")
install(FILES ${icons}/halfcup.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${icons}/halfcup-exchange.svg
    DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/mimetypes RENAME ${kind}.svg)

set(metainfo ${CMAKE_CURRENT_BINARY_DIR}/packaging/${HALFCUP_METAINFO_ID}.metainfo.xml)
halfcup_metainfo(${metainfo} "${HALFCUP_WEBSITE}")
install(FILES ${metainfo} DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)

# /usr/share/doc/halfcup (Debian Policy 12.5 and 12.7).
set(doc ${CMAKE_INSTALL_DATADIR}/doc/halfcup)
install(FILES ${here}/debian/copyright DESTINATION ${doc})
# The licences of what is compiled in ask to be passed on with it; Debian has them where the libraries came from.
foreach(library libboost-math-dev libsqlitecpp-dev nlohmann-json3-dev)
    set(terms /usr/share/doc/${library}/copyright)
    if(EXISTS ${terms})
        file(REAL_PATH ${terms} terms)
        install(FILES ${terms} DESTINATION ${doc} RENAME copyright.${library})
    else()
        message(STATUS "No ${terms}: this build may be installed, but not given away without that file.")
    endif()
endforeach()
find_program(HALFCUP_GZIP gzip)
if(HALFCUP_GZIP)
    # -n: without the name and time of the file, so that the same sources give the same package.
    set(changelog ${CMAKE_CURRENT_BINARY_DIR}/packaging/changelog.gz)
    execute_process(COMMAND ${HALFCUP_GZIP} -9nc ${here}/debian/changelog OUTPUT_FILE ${changelog} COMMAND_ERROR_IS_FATAL ANY)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${here}/debian/changelog)
    install(FILES ${changelog} DESTINATION ${doc})
    # Pages of the manual are compressed (Policy 12.1), for whatever reads them.
    foreach(program halfcup halfcup-desk)
        set(page ${CMAKE_CURRENT_BINARY_DIR}/packaging/${program}.1.gz)
        execute_process(COMMAND ${HALFCUP_GZIP} -9nc ${here}/man/${program}.1 OUTPUT_FILE ${page} COMMAND_ERROR_IS_FATAL ANY)
        set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${here}/man/${program}.1)
        install(FILES ${page} DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
    endforeach()
endif()

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME halfcup)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_VENDOR "The Halfcup developers")
# No mail reaches an address under .example (RFC 2606). Who publishes the package is its maintainer and says so:
# cpack -D CPACK_PACKAGE_CONTACT="..."
set(CPACK_PACKAGE_CONTACT "The Halfcup developers <developers@halfcup.example>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "${PROJECT_DESCRIPTION}")
set(CPACK_PACKAGE_DESCRIPTION
"Halfcup is for keepers of honey bees who fight Varroa mites. At the open
hive, in gloves, it leads through a wash of half a cup of bees step by step,
tells how many mites are on every 100 bees and how sure that is, and holds
it against your line. Over the season it says which colonies are due, which
treatment fits and which does not, keeps the treatment record, and tells
from the next wash whether it worked.
.
The package has the app, halfcup, and the same calculations without a
screen, halfcup-desk. Neither opens a network connection by itself.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_PRE_BUILD_SCRIPTS ${here}/debian/folders.cmake)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
if(HALFCUP_WEBSITE)
    set(CPACK_DEBIAN_PACKAGE_HOMEPAGE ${HALFCUP_WEBSITE})
endif()
if(CMAKE_CROSSCOMPILING AND NOT CPACK_DEBIAN_PACKAGE_ARCHITECTURE)
    # By itself CPack asks the machine that builds.
    if(CMAKE_SYSTEM_PROCESSOR MATCHES "^(aarch64|arm64)$")
        set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE arm64)
    else()
        message(STATUS "Debian's name for ${CMAKE_SYSTEM_PROCESSOR} is not known here: set CPACK_DEBIAN_PACKAGE_ARCHITECTURE.")
    endif()
endif()

# Libraries are found in the programs themselves. Modules of QML are loaded by name at the start, so no tool sees
# them: they are those of the one list of packages.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
file(STRINGS ${here}/packages modules REGEX "^build +qml6-module-")
list(TRANSFORM modules REPLACE "^build +" "")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${here}/packages)
list(JOIN modules ", " modules)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "${modules}")
# Each of these only adds: the app runs without, and says what is missing where it matters.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS
    "fonts-inter, geoclue-2.0, libqt6positioning6-plugins, qt6-speech-speechd-plugin, qt6-wayland, xdg-desktop-portal")
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "feedbackd")
include(CPack)
