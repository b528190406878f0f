// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QPointer>

#include <functional>

namespace halfcup::device {

/// Calls a member of `object` whenever the browser tells of something, for as long as the object lives. What
/// the browser holds instead of the object is made once a call and stays: these are called a few times in a
/// program's life.
template <typename Object>
void listen(void (*subscribe)(void (*)(void*), void*), Object* object, void (Object::*member)()) {
    auto* call = new std::function<void()>([pointer = QPointer<Object>(object), member] {
        if (pointer)
            (pointer.data()->*member)();
    });
    subscribe([](void* self) { (*static_cast<std::function<void()>*>(self))(); }, call);
}

} // namespace halfcup::device
