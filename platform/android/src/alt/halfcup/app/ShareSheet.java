// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.app.Activity;
import android.content.ActivityNotFoundException;
import android.content.ClipData;
import android.content.Intent;
import android.net.Uri;

import java.io.File;
import java.io.FileInputStream;
import java.io.IOException;

/** Hands a file on through Android's share sheet. */
public final class ShareSheet {
    private ShareSheet() {
    }

    /**
     * From C++, any thread. path: absolute, a file that is complete and closed. A copy is shared, so that the file may
     * change or go while the other app still reads.
     */
    public static void share(final Activity activity, final String path, final String mimeType) {
        new Thread(new Runnable() {
            @Override
            public void run() {
                File file = new File(path);
                File copy = new File(FileCopy.tidied(SharedFiles.folder(activity)), SafeName.of(file.getName()));
                try {
                    FileCopy.write(new FileInputStream(file), copy);
                } catch (IOException noRoomOrGone) {
                    return; // the file lies in its folder all the same, and the page has said where
                }
                show(activity, SharedFiles.addressOf(copy), mimeType);
            }
        }).start();
    }

    private static void show(final Activity activity, final Uri address, final String mimeType) {
        final Intent send = new Intent(Intent.ACTION_SEND);
        send.setType(mimeType);
        send.putExtra(Intent.EXTRA_STREAM, address);
        // The permission goes to whoever the keeper picks, and for this one address; it is carried by the clip.
        send.setClipData(ClipData.newRawUri(null, address));
        send.addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION);
        activity.runOnUiThread(new Runnable() {
            @Override
            public void run() {
                try {
                    activity.startActivity(Intent.createChooser(send, activity.getString(R.string.hand_on)));
                } catch (ActivityNotFoundException nothingToSendWith) {
                    // As above: the file lies in its folder.
                }
            }
        });
    }
}
