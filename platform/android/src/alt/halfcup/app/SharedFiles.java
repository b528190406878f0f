// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

import android.content.ContentProvider;
import android.content.ContentValues;
import android.content.Context;
import android.database.Cursor;
import android.database.MatrixCursor;
import android.net.Uri;
import android.os.ParcelFileDescriptor;
import android.provider.OpenableColumns;

import java.io.File;
import java.io.FileNotFoundException;
import java.util.Locale;

/**
 * Lets another app read a file out of one folder of the cache, by its name alone, and only where Android has granted it
 * that one address. Nothing can be listed, written or removed.
 */
public final class SharedFiles extends ContentProvider {
    private static final String AUTHORITY = "alt.halfcup.app.shared"; // as in AndroidManifest.xml
    private static final String[][] TYPES = {
        {".halfcup", "application/x-halfcup-exchange"}, {".csv", "text/csv"}, {".pdf", "application/pdf"},
        {".geojson", "application/geo+json"}, {".ics", "text/calendar"}};

    static File folder(Context context) {
        return new File(context.getCacheDir(), "shared");
    }

    static Uri addressOf(File file) {
        return new Uri.Builder().scheme("content").authority(AUTHORITY).appendPath(file.getName()).build();
    }

    @Override
    public boolean onCreate() {
        return true;
    }

    private File fileAt(Uri uri) throws FileNotFoundException {
        String name = uri.getPathSegments().size() == 1 ? uri.getLastPathSegment() : null;
        // A name that SafeName would change did not come from here; it might lead out of the folder.
        if (name == null || !name.equals(SafeName.of(name)))
            throw new FileNotFoundException("no such file");
        File file = new File(folder(getContext()), name);
        if (!file.isFile())
            throw new FileNotFoundException("no such file");
        return file;
    }

    @Override
    public ParcelFileDescriptor openFile(Uri uri, String mode) throws FileNotFoundException {
        if (!"r".equals(mode))
            throw new FileNotFoundException("for reading only");
        return ParcelFileDescriptor.open(fileAt(uri), ParcelFileDescriptor.MODE_READ_ONLY);
    }

    @Override
    public Cursor query(Uri uri, String[] columns, String selection, String[] arguments, String order) {
        String[] asked = columns != null ? columns : new String[] {OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE};
        MatrixCursor answer = new MatrixCursor(asked, 1);
        try {
            File file = fileAt(uri);
            Object[] row = new Object[asked.length];
            for (int i = 0; i < asked.length; ++i) {
                if (OpenableColumns.DISPLAY_NAME.equals(asked[i]))
                    row[i] = file.getName();
                else if (OpenableColumns.SIZE.equals(asked[i]))
                    row[i] = file.length();
            }
            answer.addRow(row);
        } catch (FileNotFoundException gone) {
            // An answer without a row says the same.
        }
        return answer;
    }

    @Override
    public String getType(Uri uri) {
        String name = String.valueOf(uri.getLastPathSegment()).toLowerCase(Locale.ROOT);
        for (String[] type : TYPES) {
            if (name.endsWith(type[0]))
                return type[1];
        }
        return "application/octet-stream";
    }

    @Override
    public Uri insert(Uri uri, ContentValues values) {
        throw new UnsupportedOperationException("for reading only");
    }

    @Override
    public int update(Uri uri, ContentValues values, String selection, String[] arguments) {
        throw new UnsupportedOperationException("for reading only");
    }

    @Override
    public int delete(Uri uri, String selection, String[] arguments) {
        throw new UnsupportedOperationException("for reading only");
    }
}
