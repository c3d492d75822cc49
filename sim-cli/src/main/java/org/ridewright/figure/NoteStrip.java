package org.ridewright.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places the texts of upright markers above a plot: each begins at its line, in a row high enough that no line crosses
 * a text.
 *
 * @param notes placed texts
 * @param rows rows taken, 0 if there is no text
 */
record NoteStrip(List<Note> notes, int rows) {
    private static final double BESIDE_LINE = 2.5;
    private static final double BETWEEN = 5;

    /**
     * A placed text.
     *
     * @param lineX place of its line (pt)
     * @param left left end of the text (pt)
     * @param right right end of the text (pt)
     * @param row 0 is next to the plot
     * @param text the words
     * @param line whether a line leads up to it
     */
    record Note(double lineX, double left, double right, int row, String text, boolean line) {
        Note inRow(int other) {
            return new Note(lineX, left, right, other, text, line);
        }

        private boolean covers(double x) {
            return x > left - BESIDE_LINE && x < right + BESIDE_LINE;
        }

        private boolean overlaps(Note other) {
            return left < other.right + BETWEEN && other.left < right + BETWEEN;
        }
    }

    /**
     * Makes room for the texts of a panel.
     *
     * @param panel whose markers and upright bands
     * @param x its horizontal scale
     * @param plotLeft left end of the plot (pt)
     * @param plotWidth width of the plot (pt)
     * @return placed texts
     */
    static NoteStrip of(Panel panel, Scale x, double plotLeft, double plotWidth) {
        List<Note> wanted = new ArrayList<>();
        double end = plotLeft + plotWidth + PrintStyle.RIGHT_MARGIN;
        for (Marker marker : panel.markers()) {
            if (x.holds(marker.x()) && !marker.label().isBlank()) {
                wanted.add(note(marker.label(), plotLeft + x.share(marker.x()) * plotWidth, plotLeft, end, true));
            }
        }
        for (Band band : panel.bands()) {
            if (band.span() == Band.Span.OF_X
                    && !band.label().isBlank()
                    && band.from() < x.max()
                    && band.to() > x.min()) {
                double from = Math.max(band.from(), x.min());
                wanted.add(
                        note(band.label(), plotLeft + x.share(from) * plotWidth - BESIDE_LINE, plotLeft, end, false));
            }
        }
        return arranged(wanted);
    }

    private static Note note(String text, double lineX, double start, double end, boolean line) {
        double width = RichText.of(text).width(Face.ITALIC, PrintStyle.NOTE);
        double left = lineX + BESIDE_LINE;
        if (left + width > end && lineX - BESIDE_LINE - width >= start) {
            left = lineX - BESIDE_LINE - width;
        }
        return new Note(lineX, left, left + width, 0, text, line);
    }

    private static NoteStrip arranged(List<Note> wanted) {
        List<Note> order = new ArrayList<>(wanted);
        // texts to the right of their line first, from the right; then those to the left of it, from the left
        order.sort(Comparator.comparing((Note n) -> n.left() < n.lineX())
                .thenComparing(n -> n.left() < n.lineX() ? n.lineX() : -n.lineX()));
        List<Note> placed = new ArrayList<>();
        int rows = 0;
        for (Note note : order) {
            int row = 0;
            for (Note other : placed) {
                if (note.overlaps(other) || note.covers(other.lineX())) {
                    row = Math.max(row, other.row() + 1);
                }
            }
            placed.add(note.inRow(row));
            rows = Math.max(rows, row + 1);
        }
        return new NoteStrip(List.copyOf(placed), rows);
    }
}
