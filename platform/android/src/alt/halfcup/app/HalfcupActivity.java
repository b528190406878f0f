// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.content.Intent;
import android.os.Bundle;
import android.view.KeyEvent;

import org.qtproject.qt.android.bindings.QtActivity;

/** Qt's activity; what Android tells an activity alone is passed on to those who know what to do with it. */
public class HalfcupActivity extends QtActivity {
    @Override
    public void onCreate(Bundle savedState) {
        super.onCreate(savedState);
        // With a saved state this is the old start once more, and its file was taken then.
        if (savedState == null)
            Documents.arrived(this, getIntent());
    }

    @Override
    public void onNewIntent(Intent intent) {
        super.onNewIntent(intent);
        Documents.arrived(this, intent);
    }

    @Override
    public void onActivityResult(int request, int result, Intent answer) {
        if (!Documents.answered(this, request, result, answer))
            super.onActivityResult(request, result, answer);
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        return VolumeKeys.take(event) || super.dispatchKeyEvent(event);
    }

    @Override
    public void onTrimMemory(int level) {
        super.onTrimMemory(level);
        Memory.level(level);
    }
}
