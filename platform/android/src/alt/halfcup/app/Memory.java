// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.content.ComponentCallbacks2;

/** Passes on that the phone runs short of memory. */
public final class Memory {
    private static volatile boolean listening = false;

    private Memory() {
    }

    /** From C++, any thread, once it has registered isShort(). */
    public static void listen() {
        listening = true;
    }

    /** From the activity, with a level of ComponentCallbacks2. Being out of sight alone is no shortage. */
    static void level(int level) {
        boolean isLow = level == ComponentCallbacks2.TRIM_MEMORY_RUNNING_LOW
            || level == ComponentCallbacks2.TRIM_MEMORY_RUNNING_CRITICAL
            || level >= ComponentCallbacks2.TRIM_MEMORY_BACKGROUND;
        if (listening && isLow)
            isShort();
    }

    /** In C++; called on Android's thread. */
    private static native void isShort();
}
