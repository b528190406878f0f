// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
package alt.halfcup.app;

/** A file name from another app, made harmless for a folder of ours. Plain Java, so that it can be tried anywhere. */
final class SafeName {
    private static final int LONGEST = 100;

    private SafeName() {
    }

    /**
     * Without folders, without a dot or a blank in front, not empty and not too long; the ending stays, for by it the app
     * knows what the file is. What came out once comes out unchanged again.
     */
    static String of(String name) {
        String plain = name == null ? "" : name.replaceAll("[/\\\\\\p{Cntrl}]", "_");
        if (plain.length() > LONGEST)
            plain = plain.substring(plain.length() - LONGEST);
        plain = plain.replaceAll("^[.\\s]+|\\s+$", "");
        return plain.isEmpty() ? "file" : plain;
    }
}
