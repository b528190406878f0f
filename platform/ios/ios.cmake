# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# Settings of the program for Qt for iOS, included from the top after the program is known. Target properties as in
# CMake's manual ("MACOSX_BUNDLE_INFO_PLIST") and Qt's "Platform Notes - iOS"; a plist of our own replaces Qt's.
set(here ${CMAKE_CURRENT_LIST_DIR})
set_target_properties(halfcup PROPERTIES
    MACOSX_BUNDLE TRUE
    MACOSX_BUNDLE_INFO_PLIST ${here}/Info.plist
    MACOSX_BUNDLE_GUI_IDENTIFIER alt.halfcup.app
    MACOSX_BUNDLE_BUNDLE_NAME Halfcup
    MACOSX_BUNDLE_SHORT_VERSION_STRING ${PROJECT_VERSION}
    MACOSX_BUNDLE_BUNDLE_VERSION ${PROJECT_VERSION}
    XCODE_ATTRIBUTE_PRODUCT_BUNDLE_IDENTIFIER alt.halfcup.app
    XCODE_ATTRIBUTE_ASSETCATALOG_COMPILER_APPICON_NAME AppIcon
    XCODE_ATTRIBUTE_TARGETED_DEVICE_FAMILY "1,2")

set(resources ${here}/Assets.xcassets ${here}/PrivacyInfo.xcprivacy)
set_source_files_properties(${resources} PROPERTIES MACOSX_PACKAGE_LOCATION Resources)
target_sources(halfcup PRIVATE ${resources})
foreach(language de en es fr)
    set(words ${here}/${language}.lproj/InfoPlist.strings)
    set_source_files_properties(${words} PROPERTIES MACOSX_PACKAGE_LOCATION Resources/${language}.lproj)
    target_sources(halfcup PRIVATE ${words})
endforeach()
