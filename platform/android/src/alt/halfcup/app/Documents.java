// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.app.Activity;
import android.content.ActivityNotFoundException;
import android.content.Intent;
import android.net.Uri;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes files into the app's hands: one the keeper picks, and one that another app opens with Halfcup. What arrives is
 * an address (content:...) that only lives for a while, so it is copied, and C++ is told the path of the copy.
 */
public final class Documents {
    private static final int CHOOSE = 0x4843; // "HC": Qt's own requests are small numbers
    private static final Object LOCK = new Object();
    private static final List<String> waiting = new ArrayList<>();
    private static boolean listening = false;

    private Documents() {
    }

    /** From C++, any thread, once it has registered the functions below: from now on it is told what arrives. */
    public static void listen() {
        List<String> arrived;
        synchronized (LOCK) {
            listening = true;
            arrived = new ArrayList<>(waiting);
            waiting.clear();
        }
        for (String path : arrived)
            opened(path);
    }

    /** From C++: asks the keeper for a file. Ends in chosen() or cancelled(). */
    public static void choose(final Activity activity) {
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                // Pickers grey out what does not fit a type, and know none for our endings: all files are shown.
                Intent question = new Intent(Intent.ACTION_OPEN_DOCUMENT);
                question.addCategory(Intent.CATEGORY_OPENABLE);
                question.setType("*/*");
                try {
                    activity.startActivityForResult(question, CHOOSE);
                } catch (ActivityNotFoundException noPicker) {
                    cancelled();
                }
            }
        });
    }

    /** Whether the answer was to our question. */
    static boolean answered(Activity activity, int request, int result, Intent answer) {
        if (request != CHOOSE)
            return false;
        if (result != Activity.RESULT_OK || answer == null || answer.getData() == null)
            cancelled();
        else
            take(activity, answer.getData(), true);
        return true;
    }

    /** Another app started this one, or came back to it, perhaps with a file. */
    static void arrived(Activity activity, Intent intent) {
        if (intent == null || (intent.getFlags() & Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY) != 0)
            return;
        Uri uri = null;
        try {
            if (Intent.ACTION_VIEW.equals(intent.getAction()))
                uri = intent.getData();
            else if (Intent.ACTION_SEND.equals(intent.getAction()))
                uri = intent.getParcelableExtra(Intent.EXTRA_STREAM);
        } catch (RuntimeException strangeIntent) {
            return;
        }
        if (uri != null)
            take(activity, uri, false);
    }

    // Copying may take a while, and the window must not wait for it.
    private static void take(final Activity activity, final Uri uri, final boolean wasAsked) {
        new Thread(new Runnable() {
            @Override
            public void run() {
                File folder = FileCopy.tidied(new File(activity.getCacheDir(), "arrived"));
                File copy = new File(folder, FileCopy.nameOf(activity.getContentResolver(), uri));
                try {
                    InputStream from = activity.getContentResolver().openInputStream(uri);
                    if (from == null)
                        throw new IOException("nothing behind the address");
                    FileCopy.write(from, copy);
                } catch (IOException | RuntimeException unreadable) {
                    // Told all the same: the page says in a sentence that the file cannot be read.
                    copy.delete();
                }
                tell(copy.getAbsolutePath(), wasAsked);
            }
        }).start();
    }

    private static void tell(String path, boolean wasAsked) {
        if (wasAsked) {
            chosen(path);
            return;
        }
        synchronized (LOCK) {
            if (!listening) {
                waiting.add(path);
                return;
            }
        }
        opened(path);
    }

    /** In C++; each may be called on any thread. The path is absolute and may be unreadable. */
    private static native void chosen(String path);

    private static native void cancelled();

    private static native void opened(String path);
}
