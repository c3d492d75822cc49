package org.ridewright.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One line of text with raised and lowered pieces.
 *
 * @param pieces from left to right
 */
record RichText(List<Piece> pieces) {
    /** Size of a raised or lowered piece as a part of the type size. */
    private static final double SMALL = 0.72;

    /** Raised {@code ^{…}}, lowered {@code _{…}}, or a run of raised characters with the minus the typeface lacks. */
    private static final Pattern SHIFTED =
            Pattern.compile("\\^\\{(?<up>[^}]*)}|_\\{(?<down>[^}]*)}|(?<run>[⁰¹²³⁴-⁹]*⁻[⁰¹²³⁴-⁹⁻]*)");

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻";
    private static final String PLAIN = "0123456789−";

    /**
     * A piece set in one size on one base line.
     *
     * @param text characters
     * @param scale its size as a part of the type size
     * @param drop base line below that of the line (em)
     */
    record Piece(String text, double scale, double drop) {}

    /**
     * Reads {@code ^{…}} and {@code _{…}}.
     *
     * @param source text with marks
     * @return the line
     */
    static RichText of(String source) {
        List<Piece> pieces = new ArrayList<>();
        Matcher matcher = SHIFTED.matcher(source);
        int done = 0;
        while (matcher.find()) {
            addPlain(pieces, source.substring(done, matcher.start()));
            if (matcher.group("down") != null) {
                pieces.add(new Piece(matcher.group("down"), SMALL, 0.16));
            } else {
                String up = matcher.group("up") != null ? matcher.group("up") : plain(matcher.group("run"));
                pieces.add(new Piece(up, SMALL, -0.33));
            }
            done = matcher.end();
        }
        addPlain(pieces, source.substring(done));
        return new RichText(List.copyOf(pieces));
    }

    /**
     * Width when set.
     *
     * @param face cut
     * @param size type size (pt)
     * @return width (pt)
     */
    double width(Face face, double size) {
        double sum = 0;
        for (Piece piece : pieces) {
            sum += face.width(piece.text(), size * piece.scale());
        }
        return sum;
    }

    /**
     * Breaks a text at blanks so that each line is no wider than asked, if its words allow.
     *
     * @param source text with marks
     * @param face cut
     * @param size type size (pt)
     * @param room width (pt)
     * @return lines, none for a blank text
     */
    static List<String> wrap(String source, Face face, double size, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : source.strip().split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && of(longer).width(face, size) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private static void addPlain(List<Piece> pieces, String text) {
        if (!text.isEmpty()) {
            pieces.add(new Piece(text, 1, 0));
        }
    }

    private static String plain(String run) {
        StringBuilder out = new StringBuilder();
        run.chars().forEach(c -> out.append(PLAIN.charAt(RAISED.indexOf(c))));
        return out.toString();
    }
}
