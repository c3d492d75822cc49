package org.ridewright.report;

/** What a name gives to a file name: not too long, and not cut within a word. */
public final class FileNamePart {
    private static final int LONGEST = 40;

    private FileNamePart() {}

    /** Words joined by hyphens, as many whole ones as fit; a single word that is too long is cut. */
    public static String shortened(String hyphened) {
        if (hyphened.length() <= LONGEST) {
            return hyphened;
        }
        int end = hyphened.lastIndexOf('-', LONGEST);
        return hyphened.substring(0, end > 0 ? end : LONGEST);
    }
}
