// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0

#include "device/android/calls_from_java.h"

#include "device/android/java.h"

#include <QJniEnvironment>
#include <QMetaObject>

#include <mutex>

namespace halfcup::device {

namespace {

// A native method is a plain function: where it finds its receiver has to lie outside of any object.
std::mutex s_lock;
CallsFromJava* s_receiver = nullptr;

template <typename Say>
void tell(Say say) {
    const std::scoped_lock lock(s_lock);
    if (CallsFromJava* receiver = s_receiver)
        QMetaObject::invokeMethod(
            receiver, [receiver, say = std::move(say)] { say(*receiver); }, Qt::QueuedConnection);
}

QString textOf(jstring text) {
    return QJniObject(static_cast<jobject>(text)).toString();
}

void chosen(JNIEnv*, jclass, jstring path) {
    tell([path = textOf(path)](CallsFromJava& to) { Q_EMIT to.documentChosen(path); });
}

void cancelled(JNIEnv*, jclass) {
    tell([](CallsFromJava& to) { Q_EMIT to.documentCancelled(); });
}

void opened(JNIEnv*, jclass, jstring path) {
    tell([path = textOf(path)](CallsFromJava& to) { Q_EMIT to.documentOpened(path); });
}

void pressed(JNIEnv*, jclass, jboolean up) {
    tell([up](CallsFromJava& to) { Q_EMIT to.volumeKeyPressed(up != JNI_FALSE); });
}

void edgesAre(JNIEnv*, jclass, jint left, jint top, jint right, jint bottom) {
    tell([=](CallsFromJava& to) { Q_EMIT to.edgesChanged(left, top, right, bottom); });
}

void isShort(JNIEnv*, jclass) {
    tell([](CallsFromJava& to) { Q_EMIT to.memoryIsShort(); });
}

template <typename Function>
JNINativeMethod method(const char* name, const char* signature, Function* function) {
    return {const_cast<char*>(name), const_cast<char*>(signature), reinterpret_cast<void*>(function)};
}

void registerAll() {
    QJniEnvironment environment;
    environment.registerNativeMethods(java::kDocuments, {method("chosen", "(Ljava/lang/String;)V", chosen),
                                                         method("cancelled", "()V", cancelled),
                                                         method("opened", "(Ljava/lang/String;)V", opened)});
    environment.registerNativeMethods(java::kVolumeKeys, {method("pressed", "(Z)V", pressed)});
    environment.registerNativeMethods(java::kEdges, {method("edgesAre", "(IIII)V", edgesAre)});
    environment.registerNativeMethods(java::kMemory, {method("isShort", "()V", isShort)});
}

} // namespace

CallsFromJava::CallsFromJava() {
    const std::scoped_lock lock(s_lock);
    s_receiver = this;
}

CallsFromJava::~CallsFromJava() {
    const std::scoped_lock lock(s_lock);
    if (s_receiver == this)
        s_receiver = nullptr;
}

std::shared_ptr<CallsFromJava> CallsFromJava::open() {
    static std::weak_ptr<CallsFromJava> there;
    auto calls = there.lock();
    if (!calls) {
        static const bool registered = (registerAll(), true);
        Q_UNUSED(registered)
        calls.reset(new CallsFromJava);
        there = calls;
    }
    return calls;
}

} // namespace halfcup::device
