# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# halfcup_embed(OUT_VARIABLE NAME file...)
# Texts of files compiled in, for layers without Qt: writes NAME.cpp with
#   std::span<const std::string_view> NAME();  in namespace halfcup::embedded
# and puts its path into OUT_VARIABLE. Declare the function where it is used. Written anew when a file changes.
function(halfcup_embed out name)
    set(pieces "")
    foreach(file IN LISTS ARGN)
        set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${file})
        file(READ ${file} text)
        string(APPEND pieces "    std::string_view(R\"=====(${text})=====\"),\n")
    endforeach()
    set(source "// Made from files by cpp/embed.cmake.
#include <array>
#include <span>
#include <string_view>
namespace halfcup::embedded {
std::span<const std::string_view> ${name}();
std::span<const std::string_view> ${name}() {
    static const std::array texts{
${pieces}    };
    return texts;
}
} // namespace halfcup::embedded
")
    set(path ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    file(CONFIGURE OUTPUT ${path} CONTENT "@source@" @ONLY)
    set(${out} ${path} PARENT_SCOPE)
endfunction()
