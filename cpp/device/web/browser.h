// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
#pragma once

/// What the browser is asked for, written in JavaScript: platform/web/browser.js says how each is done, and
/// platform/web/kept_files.js how files are kept. None fails: what a browser lacks does nothing. Texts are
/// UTF-8. A function that is called back gets `self` as its first argument, for as long as the page lives: it
/// must belong to something that lives as long, and comes from the page's event loop, never from within the
/// call.
extern "C" {
int halfcupHasWakeLock();
void halfcupWantWakeLock(int wanted); // held again by itself whenever the page is seen again

void halfcupLoadSound(int number, const void* wav, int bytes); // the bytes are copied
void halfcupPlaySound(int number);                             // once all that was done before is kept
void halfcupStopSounds();
int halfcupHasSounds();

void halfcupVibrate(int milliseconds); // once all that was done before is kept
int halfcupHasVibration();

int halfcupHasVoice(const char* language);                   // "de"
void halfcupSay(const char* sentence, const char* language); // once all that was done before is kept
void halfcupHush();
void halfcupOnVoices(void (*changed)(void* self), void* self); // browsers load their voices late

int halfcupIsSeen();
void halfcupOnSeen(void (*changed)(void* self), void* self);

void halfcupInsets(double* leftTopRightBottom); // CSS pixels
void halfcupOnResized(void (*changed)(void* self), void* self);

void halfcupShare(const char* path, const char* mimeType); // or saves it among the downloads
void halfcupChoose(const char* endings, const char* folder, void (*chosen)(void* self, const char* path),
                   void (*cancelled)(void* self), void* self); // endings: ".halfcup,.csv"

/// The page once more, with the newest version of the program that the server has, where it can be asked.
void halfcupLoadAnew();

/// Whether everything that was written to files is in the browser's storage, to stay.
int halfcupIsAllKept();
void halfcupOnKept(void (*kept)(void* self), void* self); // each time it is so again
}
