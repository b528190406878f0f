// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QCoreApplication>
#include <QJniObject>

#include <optional>

/// Calls of the classes in platform/android/src. Their names and signatures stand here and in the .java
/// files; a test compares them (tests/unit/platform_android_jni.py).
namespace halfcup::device::java {

inline constexpr const char* kDocuments = "alt/halfcup/app/Documents";
inline constexpr const char* kEdges = "alt/halfcup/app/Edges";
inline constexpr const char* kMemory = "alt/halfcup/app/Memory";
inline constexpr const char* kPhone = "alt/halfcup/app/Phone";
inline constexpr const char* kShareSheet = "alt/halfcup/app/ShareSheet";
inline constexpr const char* kVolumeKeys = "alt/halfcup/app/VolumeKeys";

/// The window's activity; an invalid object where the program runs without one.
[[nodiscard]] inline QJniObject activity() {
    return QNativeInterface::QAndroidApplication::isActivityContext()
               ? QJniObject(QNativeInterface::QAndroidApplication::context())
               : QJniObject();
}

/// The program as Android sees it, with or without a window.
[[nodiscard]] inline QJniObject context() {
    return QJniObject(QNativeInterface::QAndroidApplication::context());
}

} // namespace halfcup::device::java
