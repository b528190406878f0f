// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "device/any/speech_voice.h"

#include <QLocale>
#include <QTextToSpeech>

namespace halfcup::device {

/// The part that lives in the thread.
class SpeechWorker : public QObject {
    Q_OBJECT
public:
    explicit SpeechWorker(QString engine)
        : m_wanted(std::move(engine)) {}

public Q_SLOTS:
    void open(const QLocale& locale) {
        if (m_speech && speaks(locale)) {
            Q_EMIT opened(true);
            return;
        }
        QStringList engines = QTextToSpeech::availableEngines();
        engines.removeAll(QStringLiteral("mock")); // for tests of Qt; makes no sound
        if (!m_wanted.isEmpty())
            engines = engines.contains(m_wanted) ? QStringList{m_wanted} : QStringList();
        for (const QString& name : engines) {
            m_speech = std::make_unique<QTextToSpeech>(name);
            if (m_speech->state() != QTextToSpeech::Error && speaks(locale))
                break;
            m_speech.reset();
        }
        Q_EMIT opened(m_speech != nullptr);
    }

    void say(const QString& sentence, const QLocale& locale) {
        if (!m_speech)
            return;
        if (m_speech->locale().language() != locale.language() && !speaks(locale)) {
            Q_EMIT opened(false); // a voice of another language is worse than a tone
            return;
        }
        m_speech->stop();
        m_speech->say(sentence);
    }

    void hush() {
        if (m_speech)
            m_speech->stop();
    }

Q_SIGNALS:
    void opened(bool works);

private:
    bool speaks(const QLocale& locale) {
        for (const QLocale& each : m_speech->availableLocales())
            if (each.language() == locale.language()) {
                m_speech->setLocale(each);
                return true;
            }
        return false;
    }

    QString m_wanted;
    std::unique_ptr<QTextToSpeech> m_speech; // made and unmade in the thread
};

SpeechVoice::SpeechVoice(const QString& engine, QObject* parent)
    : Voice(parent)
    , m_engine(engine) {}

SpeechVoice::~SpeechVoice() {
    m_thread.quit();
    m_thread.wait();
}

void SpeechVoice::prepare() {
    if (!m_worker) {
        m_worker = new SpeechWorker(m_engine);
        m_worker->moveToThread(&m_thread);
        connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
        connect(m_worker, &SpeechWorker::opened, this, &SpeechVoice::tell);
        m_thread.start(QThread::LowPriority);
    }
    QMetaObject::invokeMethod(m_worker, [worker = m_worker, locale = QLocale()] { worker->open(locale); });
}

void SpeechVoice::tell(bool works) {
    if (m_works == works)
        return;
    m_works = works;
    Q_EMIT worksChanged();
}

void SpeechVoice::say(const QString& sentence) {
    if (m_on && m_works && m_worker)
        QMetaObject::invokeMethod(
            m_worker, [worker = m_worker, sentence, locale = QLocale()] { worker->say(sentence, locale); });
}

void SpeechVoice::setOn(bool on) {
    m_on = on;
    if (!on && m_worker)
        QMetaObject::invokeMethod(m_worker, [worker = m_worker] { worker->hush(); });
}

} // namespace halfcup::device

#include "speech_voice.moc"
