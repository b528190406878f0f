# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Compiles for arm64 (Debian's name; aarch64 is the compiler's) on a Debian of another kind, with libraries for arm64 beside
# the machine's own (Debian multiarch). Nothing else has to be said: CMake finds /usr/lib/aarch64-linux-gnu by the compiler.
#   cmake -DCMAKE_TOOLCHAIN_FILE=platform/linux/arm64/toolchain.cmake ...
# What has to be installed for it: platform/linux/arm64/packages.
set(CMAKE_SYSTEM_NAME Linux)
set(CMAKE_SYSTEM_PROCESSOR aarch64)
set(CMAKE_C_COMPILER aarch64-linux-gnu-gcc)
set(CMAKE_CXX_COMPILER aarch64-linux-gnu-g++)
set(PKG_CONFIG_EXECUTABLE aarch64-linux-gnu-pkg-config CACHE FILEPATH "Finds the libraries for arm64")

# The tools of Qt that run during the build (moc, rcc, qmlcachegen, lrelease) are the building machine's own.
set(QT_HOST_PATH /usr CACHE PATH "Where the Qt of the building machine is")
file(GLOB halfcup_host_qt /usr/lib/*-linux-gnu/cmake/Qt6HostInfo)
list(FILTER halfcup_host_qt EXCLUDE REGEX "/aarch64-linux-gnu/")
if(halfcup_host_qt)
    list(GET halfcup_host_qt 0 halfcup_host_qt)
    get_filename_component(halfcup_host_qt ${halfcup_host_qt} DIRECTORY)
    set(QT_HOST_PATH_CMAKE_DIR ${halfcup_host_qt} CACHE PATH "Where that Qt tells CMake of its tools")
endif()
