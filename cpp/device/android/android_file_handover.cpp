// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/android_file_handover.h"

#include "device/android/java.h"

#include <QFileOpenEvent>

#include <utility>

namespace halfcup::device {

AndroidFileHandover::AndroidFileHandover(std::shared_ptr<CallsFromJava> calls, QObject* parent)
    : FileHandover(parent)
    , m_calls(std::move(calls)) {
    connect(m_calls.get(), &CallsFromJava::documentChosen, this, &FileHandover::chosen);
    connect(m_calls.get(), &CallsFromJava::documentCancelled, this, &FileHandover::cancelled);
    connect(m_calls.get(), &CallsFromJava::documentOpened, this,
            [](const QString& path) { QCoreApplication::postEvent(qApp, new QFileOpenEvent(path)); });
    // What came with the start waits in Java until now; told later still, when the pages listen for it.
    QMetaObject::invokeMethod(
        this, [] { QJniObject::callStaticMethod<void>(java::kDocuments, "listen", "()V"); },
        Qt::QueuedConnection);
}

bool AndroidFileHandover::canShare() const {
    return java::activity().isValid();
}

bool AndroidFileHandover::canChoose() const {
    return java::activity().isValid();
}

void AndroidFileHandover::share(const QString& path, const QString& mimeType) {
    const QJniObject activity = java::activity();
    if (!activity.isValid())
        return;
    QJniObject::callStaticMethod<void>(java::kShareSheet, "share",
                                       "(Landroid/app/Activity;Ljava/lang/String;Ljava/lang/String;)V",
                                       activity.object(), QJniObject::fromString(path).object<jstring>(),
                                       QJniObject::fromString(mimeType).object<jstring>());
}

// Neither the title nor the endings have a place in Android's picker.
void AndroidFileHandover::chooseFile(const QString&, const QStringList&) {
    const QJniObject activity = java::activity();
    if (!activity.isValid()) {
        Q_EMIT cancelled();
        return;
    }
    QJniObject::callStaticMethod<void>(java::kDocuments, "choose", "(Landroid/app/Activity;)V",
                                       activity.object());
}

} // namespace halfcup::device
