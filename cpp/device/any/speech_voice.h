// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/voice.h"

#include <QThread>

namespace halfcup::device {

class SpeechWorker;

/// A voice through Qt TextToSpeech: the one place in the program that knows it. The engine lives in a thread
/// of its own, because opening one can block for seconds; nothing waits for it.
class SpeechVoice final : public Voice {
    Q_OBJECT
public:
    /// engine: a name of QTextToSpeech::availableEngines(); empty: the system's first that works.
    explicit SpeechVoice(const QString& engine = {}, QObject* parent = nullptr);
    ~SpeechVoice() override; // waits for an engine that is just being opened
    void prepare() override;
    void say(const QString& sentence) override;
    void setOn(bool on) override;
    [[nodiscard]] bool isOn() const override { return m_on; }
    [[nodiscard]] bool works() const override { return m_works; }

private:
    void tell(bool works);

    QString m_engine;
    QThread m_thread;
    SpeechWorker* m_worker = nullptr; // lives in the thread; null until prepare()
    bool m_on = true;
    bool m_works = false;
};

} // namespace halfcup::device
