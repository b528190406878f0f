// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/window_keep_awake.h"

#include "device/android/java.h"

#include <utility>

namespace halfcup::device {

namespace {

void keepScreenOn(bool on) {
    const QJniObject activity = java::activity();
    if (activity.isValid())
        QJniObject::callStaticMethod<void>(java::kPhone, "keepScreenOn", "(Landroid/app/Activity;Z)V",
                                           activity.object(), static_cast<jboolean>(on));
}

} // namespace

class WindowKeepAwake::CountedHold final : public KeepAwake::Hold {
public:
    explicit CountedHold(std::shared_ptr<int> holds)
        : m_holds(std::move(holds)) {
        if (++*m_holds == 1)
            keepScreenOn(true);
    }
    ~CountedHold() override {
        if (--*m_holds == 0)
            keepScreenOn(false);
    }

private:
    std::shared_ptr<int> m_holds;
};

WindowKeepAwake::WindowKeepAwake(QObject* parent)
    : KeepAwake(parent)
    , m_holds(std::make_shared<int>(0)) {}

// Android has no list of who keeps the screen on, so nobody is told the reason.
std::unique_ptr<KeepAwake::Hold> WindowKeepAwake::hold(const QString&) {
    return std::make_unique<CountedHold>(m_holds);
}

bool WindowKeepAwake::works() const {
    return java::activity().isValid();
}

} // namespace halfcup::device
