# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Settings of the program for Qt for Android, included from the top after the program is known. Properties as in Qt's
# "CMake Property Reference"; the least version is the least of Qt 6.4. The newest version of Android that the app is
# made for (QT_ANDROID_TARGET_SDK_VERSION) is left to the Qt it is built with, which was tried with it.
math(EXPR versionCode "${PROJECT_VERSION_MAJOR} * 10000 + ${PROJECT_VERSION_MINOR} * 100 + ${PROJECT_VERSION_PATCH}")
set_target_properties(halfcup PROPERTIES
    QT_ANDROID_PACKAGE_SOURCE_DIR ${CMAKE_CURRENT_LIST_DIR}
    QT_ANDROID_MIN_SDK_VERSION 23
    QT_ANDROID_VERSION_NAME ${PROJECT_VERSION}
    QT_ANDROID_VERSION_CODE ${versionCode})
