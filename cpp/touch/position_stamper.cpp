// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "touch/position_stamper.h"

namespace halfcup::touch {

namespace {

constexpr int lookEveryMs = 1000; // only to notice that the time is up; fixes come by themselves

} // namespace

PositionStamper::PositionStamper(const device::Clock& clock, MakeSource makeSource, QObject* parent)
    : QObject(parent)
    , m_clock(clock)
    , m_makeSource(std::move(makeSource)) {
    m_timer.setInterval(lookEveryMs);
    connect(&m_timer, &QTimer::timeout, this, &PositionStamper::look);
}

PositionStamper::~PositionStamper() = default;

void PositionStamper::useSource(const QString& setting) {
    if (m_source && setting == m_setting)
        return;
    forget();
    m_setting = setting;
    m_source.reset();
    m_problem.reset();
    m_problemSentence.clear();
}

void PositionStamper::want() {
    if (m_running)
        return;
    m_builder.start(now());
    m_running = true;
    m_done = false;
    m_timer.start();
    if (!m_held)
        startSource();
    emit changed();
}

void PositionStamper::go() {
    m_held = false;
    if (m_running)
        startSource();
}

void PositionStamper::startSource() {
    if (!m_source) {
        m_source = m_makeSource(m_setting);
        connect(m_source.get(), &place::PositionSource::fixReceived, this, [this](const place::Fix& fix) {
            if (m_builder.add(fix, now()) == place::StampBuilder::Taken::Yes) {
                m_problem.reset();
                m_problemSentence.clear();
            }
            look();
            emit changed();
        });
        connect(m_source.get(), &place::PositionSource::problem, this,
                [this](place::PositionSource::Problem kind, const QString& sentence) {
                    m_problem = kind;
                    m_problemSentence = sentence;
                    emit changed();
                });
    }
    m_source->start();
}

void PositionStamper::wantAnew() {
    if (m_running)
        m_builder.start(now());
    else
        want();
}

void PositionStamper::forget() {
    if (m_running)
        stop();
}

void PositionStamper::stop() {
    m_running = false;
    m_timer.stop();
    if (m_source)
        m_source->stop();
}

void PositionStamper::look() {
    if (!m_running || m_builder.progress(now()) == place::StampBuilder::Progress::Collecting)
        return;
    stop();
    m_done = true;
    emit changed();
}

std::optional<place::Stamp> PositionStamper::best() const {
    return m_builder.stamp(now());
}

std::int64_t PositionStamper::now() const {
    return m_clock.now().utcMs;
}

} // namespace halfcup::touch
