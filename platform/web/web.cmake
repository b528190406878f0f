# SPDX-FileCopyrightText: 2026 The Halfcup developers
# SPDX-License-Identifier: Apache-2.0
#
# How the module is linked that a browser loads: halfcup.js and halfcup.wasm.
target_link_options(halfcup PRIVATE
    # Nothing is compiled out of strings in the page, so that its content security policy can forbid it.
    -sDYNAMIC_EXECUTION=0
    -sENVIRONMENT=web
    -sALLOW_MEMORY_GROWTH=1
    -sINITIAL_MEMORY=64MB
    -sEXPORTED_FUNCTIONS=_main,_free,_halfcupToldItems)
# Beside those that Qt's own JavaScript asks for.
set_target_properties(halfcup PROPERTIES QT_WASM_EXTRA_EXPORTED_METHODS ENV,UTF8ToString,addRunDependency,removeRunDependency)
foreach(library browser kept_files)
    target_link_options(halfcup PRIVATE "SHELL:--js-library ${CMAKE_CURRENT_LIST_DIR}/${library}.js")
    set_property(TARGET halfcup APPEND PROPERTY LINK_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/${library}.js)
endforeach()

# em++ takes longer to read Qt's headers than to compile what stands below them.
set(std <algorithm> <functional> <map> <memory> <optional> <string> <vector>)
set(core <QDateTime> <QObject> <QString> <QStringList> <QTimer>)
foreach(layer records season)
    target_precompile_headers(halfcup_${layer} PRIVATE ${std})
endforeach()
target_precompile_headers(halfcup_store PRIVATE ${std} <SQLiteCpp/SQLiteCpp.h>)
target_precompile_headers(halfcup_exchange PRIVATE ${std} ${core})
target_precompile_headers(halfcup_pictures PRIVATE ${std} <QPainter> <QString>)
target_precompile_headers(halfcup_touch PRIVATE ${std} ${core}
    <QAbstractListModel> <QLocale> <QQmlEngine> <QQuickItem> <QVariant>)

# What tests/browser/start.mjs holds the start against: Qt's own page with nothing in it, in a module of the same kind.
set_source_files_properties(tests/bench/EmptyWindow.qml PROPERTIES QT_RESOURCE_ALIAS EmptyWindow.qml)
find_package(Qt6 6.4 REQUIRED COMPONENTS QuickControls2)
qt_add_executable(empty_page EXCLUDE_FROM_ALL tests/browser/empty_page.cpp)
qt_add_qml_module(empty_page URI HalfcupBenchEmpty VERSION 1.0 NO_PLUGIN RESOURCE_PREFIX /qt/qml QML_FILES tests/bench/EmptyWindow.qml)
target_link_libraries(empty_page PRIVATE Qt6::Quick Qt6::QuickControls2)
