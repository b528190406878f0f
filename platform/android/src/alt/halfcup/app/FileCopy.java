// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.content.ContentResolver;
import android.database.Cursor;
import android.net.Uri;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;

/** Copies of files into the app's cache. */
final class FileCopy {
    private static final long DAY_MS = 24L * 60 * 60 * 1000;

    private FileCopy() {
    }

    /** The name that the other app gives to what it hands over; the last part of the address where it gives none. */
    static String nameOf(ContentResolver resolver, Uri uri) {
        String name = null;
        if (ContentResolver.SCHEME_CONTENT.equals(uri.getScheme())) {
            try (Cursor row = resolver.query(uri, new String[] {OpenableColumns.DISPLAY_NAME}, null, null, null)) {
                if (row != null && row.moveToFirst())
                    name = row.getString(0);
            } catch (RuntimeException otherAppsTrouble) {
                name = null;
            }
        }
        return SafeName.of(name != null ? name : uri.getLastPathSegment());
    }

    /** Writes all of the stream into the file, or leaves no file. Closes the stream. */
    static void write(InputStream from, File to) throws IOException {
        boolean complete = false;
        try (InputStream in = from; OutputStream out = new FileOutputStream(to)) {
            byte[] part = new byte[64 * 1024];
            for (int size = in.read(part); size >= 0; size = in.read(part))
                out.write(part, 0, size);
            complete = true;
        } finally {
            if (!complete)
                to.delete();
        }
    }

    /** The folder in the cache, without what lies there for more than a day: the copies, never the records. */
    static File tidied(File folder) {
        folder.mkdirs();
        File[] there = folder.listFiles();
        if (there != null) {
            for (File one : there) {
                if (System.currentTimeMillis() - one.lastModified() > DAY_MS)
                    one.delete();
            }
        }
        return folder;
    }
}
