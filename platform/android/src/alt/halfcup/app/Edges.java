// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.app.Activity;
import android.os.Build;
import android.view.DisplayCutout;
import android.view.View;
import android.view.WindowInsets;

/**
 * How far the notch, the bars and the strip for gestures reach into Qt's view, from each edge, in dots. Android lays the
 * window out anew when the phone is turned or unfolded or a bar comes, and each time this is told again.
 */
public final class Edges {
    private static View watched = null; // on Android's thread only

    private Edges() {
    }

    /** From C++, any thread, once it has registered edgesAre(). */
    public static void watch(final Activity activity) {
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                final View content = activity.findViewById(android.R.id.content);
                if (content == null)
                    return;
                if (content != watched) {
                    watched = content;
                    content.addOnLayoutChangeListener(new View.OnLayoutChangeListener() {
                        @Override
                        public void onLayoutChange(View view, int left, int top, int right, int bottom,
                                                   int oldLeft, int oldTop, int oldRight, int oldBottom) {
                            tell(view);
                        }
                    });
                }
                tell(content);
            }
        });
    }

    @SuppressWarnings("deprecation") // the four numbers of WindowInsets are all there is before Android 11
    private static void tell(View content) {
        WindowInsets window = content.getRootWindowInsets();
        View root = content.getRootView();
        if (window == null)
            return;
        int left = window.getSystemWindowInsetLeft();
        int top = window.getSystemWindowInsetTop();
        int right = window.getSystemWindowInsetRight();
        // The keyboard makes the view shorter by itself (adjustResize), so only what is always there counts below.
        int bottom = window.getStableInsetBottom();
        DisplayCutout notch = Build.VERSION.SDK_INT >= Build.VERSION_CODES.P ? window.getDisplayCutout() : null;
        if (notch != null) {
            left = Math.max(left, notch.getSafeInsetLeft());
            top = Math.max(top, notch.getSafeInsetTop());
            right = Math.max(right, notch.getSafeInsetRight());
            bottom = Math.max(bottom, notch.getSafeInsetBottom());
        }
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q)
            bottom = Math.max(bottom, window.getMandatorySystemGestureInsets().bottom);
        int[] at = new int[2];
        content.getLocationInWindow(at);
        int below = root.getHeight() - at[1] - content.getHeight();
        int behind = root.getWidth() - at[0] - content.getWidth();
        edgesAre(Math.max(0, left - at[0]), Math.max(0, top - at[1]), Math.max(0, right - behind),
                 Math.max(0, bottom - below));
    }

    /** In C++; called on Android's thread. */
    private static native void edgesAre(int left, int top, int right, int bottom);
}
