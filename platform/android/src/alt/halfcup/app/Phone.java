// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.app.Activity;
import android.content.Context;
import android.os.Build;
import android.os.Environment;
import android.os.VibrationEffect;
import android.os.Vibrator;
import android.provider.Settings;
import android.view.WindowManager;

import java.io.File;

/**
 * Vibration, a screen that stays on, and what else of the phone has no class of its own. Called from C++, from any
 * thread; a phone without a motor or a window that has gone is no error.
 */
public final class Phone {
    private Phone() {
    }

    /** Whether this phone has a motor. */
    public static boolean canBuzz(Context context) {
        Vibrator motor = (Vibrator) context.getSystemService(Context.VIBRATOR_SERVICE);
        return motor != null && motor.hasVibrator();
    }

    /** Buzzes for lengthMs, 1 to 2000; the caller has cut it to that. One that still runs is replaced. */
    @SuppressWarnings("deprecation") // the one-argument form is all there is before Android 8
    public static void buzz(Context context, long lengthMs) {
        Vibrator motor = (Vibrator) context.getSystemService(Context.VIBRATOR_SERVICE);
        if (motor == null || lengthMs < 1)
            return;
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.O)
            motor.vibrate(VibrationEffect.createOneShot(lengthMs, VibrationEffect.DEFAULT_AMPLITUDE));
        else
            motor.vibrate(lengthMs);
    }

    /** Keeps the screen on while this window is in front. Needs no permission, and ends with the window by itself. */
    public static void keepScreenOn(final Activity activity, final boolean on) {
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                if (on)
                    activity.getWindow().addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
                else
                    activity.getWindow().clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON);
            }
        });
    }

    /** The folder for the app's documents on the shared storage; empty where there is no such storage now. */
    public static String documentsFolder(Context context) {
        File folder = context.getExternalFilesDir(Environment.DIRECTORY_DOCUMENTS);
        return folder == null ? "" : folder.getAbsolutePath();
    }

    /** How often this phone was started, 1 and more; 0 where Android does not tell (before Android 7). */
    public static int bootCount(Context context) {
        if (Build.VERSION.SDK_INT < Build.VERSION_CODES.N)
            return 0;
        return Settings.Global.getInt(context.getContentResolver(), Settings.Global.BOOT_COUNT, 0);
    }
}
