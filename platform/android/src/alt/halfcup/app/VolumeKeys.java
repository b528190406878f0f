// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.view.KeyEvent;

/**
 * The volume keys as two buttons, only while a page has grabbed them: then the volume stays as it is. A key that is held
 * counts once.
 */
public final class VolumeKeys {
    private static volatile boolean grabbed = false;

    private VolumeKeys() {
    }

    /** From C++, any thread. C++ has registered pressed() before. */
    public static void setGrabbed(boolean on) {
        grabbed = on;
    }

    /** Whether the event was one of ours and must go no further. On Android's thread. */
    static boolean take(KeyEvent event) {
        boolean up = event.getKeyCode() == KeyEvent.KEYCODE_VOLUME_UP;
        if (!grabbed || !(up || event.getKeyCode() == KeyEvent.KEYCODE_VOLUME_DOWN))
            return false;
        if (event.getAction() == KeyEvent.ACTION_DOWN && event.getRepeatCount() == 0)
            pressed(up);
        return true;
    }

    /** In C++: a key went down; called on Android's thread. */
    private static native void pressed(boolean up);
}
