// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#include "pictures/palette.h"

namespace halfcup::pictures {

// Page, Ink, Quiet, Rule, Field, Action, Honey, Rust, Sky, Green

const Palette& Palette::day() {
    static const Palette palette(Colors{QColor(0xFF, 0xFF, 0xFF), QColor(0x00, 0x00, 0x00),
                                        QColor(0x46, 0x46, 0x46), QColor(0xC9, 0xC6, 0xC0),
                                        QColor(0xF4, 0xF2, 0xED), QColor(0x00, 0x52, 0x7F),
                                        QColor(0xE6, 0x9F, 0x00), QColor(0x8A, 0x33, 0x06),
                                        QColor(0x56, 0xB4, 0xE9), QColor(0x00, 0x9E, 0x73)});
    return palette;
}

const Palette& Palette::dusk() {
    static const Palette palette(Colors{QColor(0x10, 0x12, 0x14), QColor(0xF2, 0xF0, 0xEA),
                                        QColor(0xBF, 0xBD, 0xB8), QColor(0x4A, 0x4E, 0x52),
                                        QColor(0x1D, 0x20, 0x23), QColor(0x8C, 0xCB, 0xF0),
                                        QColor(0xE6, 0x9F, 0x00), QColor(0xE8, 0x8A, 0x4A),
                                        QColor(0x3A, 0x86, 0xB4), QColor(0x2F, 0xB8, 0x8C)});
    return palette;
}

const Palette& Palette::paper() {
    static const Palette palette(Colors{QColor(0xFF, 0xFF, 0xFF), QColor(0x00, 0x00, 0x00),
                                        QColor(0x3A, 0x3A, 0x3A), QColor(0xB4, 0xB4, 0xB4),
                                        QColor(0xF2, 0xF2, 0xF2), QColor(0x00, 0x40, 0x66),
                                        QColor(0xE6, 0x9F, 0x00), QColor(0x8A, 0x33, 0x06),
                                        QColor(0x56, 0xB4, 0xE9), QColor(0x00, 0x9E, 0x73)});
    return palette;
}

} // namespace halfcup::pictures
