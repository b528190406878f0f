// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "device/fake/fake_platform.h"
#include "device/fake/fake_surroundings.h"
#include "place/fix.h"
#include "touch/program.h"

#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>

#include <initializer_list>
#include <memory>
#include <vector>

namespace halfcup::screens {

/// Lets the pages in a window come to rest: until nothing more is to be laid out.
void settle(QQuickWindow* window);

/// The real program on a database of its own in a temporary folder, with a set clock and without a receiver;
/// and a hand that touches what it finds by name, as a keeper would: where it is drawn, through the window.
class Stage {
public:
    enum Records {
        Nothing, // no records; the page of the first start was read
        Demo,
        FirstStart, // as it comes from the store
    };
    /// language: a code of touch/languages.h, or "pseudo", whose words are longer and all between brackets.
    explicit Stage(Records records, QSize size = {360, 740}, const QString& language = {});

    touch::App& app() { return m_program->app(); }
    touch::Program& program() { return *m_program; }
    device::FakePlatform& device() { return m_device; }
    QQuickWindow* window() const { return m_program->window(); }
    const touch::Look& look() { return m_program->look(); }

    void resize(QSize size);
    /// From now on the receiver says that the phone is here; asks for it at once.
    void standAt(double latitudeDeg, double longitudeDeg);
    void setDusk(bool dusk);
    void setLeftHand(bool left);
    void setThickGloves(bool thick);
    void setTextPercent(int percent); // 100 to 200

    /// The item of that name that can be seen; nullptr where there is none.
    QQuickItem* find(const QString& name) const;
    /// True where it was there, could be seen and was touched in its middle. Scrolls to it first.
    bool touch(const QString& name);
    /// Brings an item of something that scrolls into sight.
    void scrollTo(QQuickItem* item);
    /// Lets the pages come to rest.
    void settle();
    /// Moves all clocks on and lets the pages see it.
    void wait(std::int64_t ms);
    QImage picture();

private:
    device::FakePlatform m_device;
    device::FakeSurroundings m_around; // not those of the desktop that the test runs on
    QTemporaryDir m_folder;
    std::vector<place::Fix> m_fixes; // of the receiver
    int m_places = 0;
    std::unique_ptr<touch::Program> m_program;
};

/// Touches them in turn, each where a new picture has it. False, with a warning that names it, at the first
/// that is not there.
bool press(Stage& stage, std::initializer_list<const char*> names);
bool press(Stage& stage, const QString& name);

/// All that can be seen under an item, itself included, back to front.
QList<QQuickItem*> visibleItems(QQuickItem* root);

} // namespace halfcup::screens
