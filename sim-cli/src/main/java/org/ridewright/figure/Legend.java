package org.ridewright.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Names of series beside a piece of their line, in rows.
 *
 * @param rows entries of each row
 */
record Legend(List<List<Series>> rows) {
    private static final double PITCH = PrintStyle.LEGEND_TEXT * PrintStyle.LEADING;
    private static final Sheet.Type TYPE = new Sheet.Type(Face.REGULAR, PrintStyle.LEGEND_TEXT, PrintStyle.TEXT);

    /**
     * As many entries side by side as a width holds, keys in rows of their own.
     *
     * @param series entries
     * @param width (pt)
     * @return the legend
     */
    static Legend flowing(List<Series> series, double width) {
        List<List<Series>> rows = new ArrayList<>();
        List<Series> row = new ArrayList<>();
        double used = 0;
        for (Series each : series) {
            double entry = entryWidth(each);
            boolean keysBegin =
                    each.trace() == Trace.KEY && row.stream().anyMatch(before -> before.trace() != Trace.KEY);
            if (!row.isEmpty() && (keysBegin || used + PrintStyle.LEGEND_BETWEEN + entry > width)) {
                rows.add(List.copyOf(row));
                row.clear();
                used = 0;
            }
            used += (row.isEmpty() ? 0 : PrintStyle.LEGEND_BETWEEN) + entry;
            row.add(each);
        }
        if (!row.isEmpty()) {
            rows.add(List.copyOf(row));
        }
        return new Legend(List.copyOf(rows));
    }

    /** One entry per row. */
    static Legend column(List<Series> series) {
        return new Legend(series.stream().map(List::of).toList());
    }

    /** Entries of all panels that share the legend at the foot of the figure; a name and look are listed once. */
    static List<Series> shared(List<Panel> panels) {
        Map<List<Object>, Series> entries = new LinkedHashMap<>();
        for (Panel panel : panels) {
            if (panel.legend() == LegendPlace.SHARED) {
                for (Series each : panel.series()) {
                    entries.putIfAbsent(List.of(each.name(), each.style(), each.tone(), each.trace()), each);
                }
            }
        }
        return List.copyOf(entries.values());
    }

    /** Height (pt), 0 when empty. */
    double height() {
        return rows.isEmpty() ? 0 : PITCH * rows.size() + PrintStyle.GAP;
    }

    /** Width of the widest row (pt). */
    double width() {
        double widest = 0;
        for (List<Series> row : rows) {
            double sum = -PrintStyle.LEGEND_BETWEEN;
            for (Series each : row) {
                sum += PrintStyle.LEGEND_BETWEEN + entryWidth(each);
            }
            widest = Math.max(widest, sum);
        }
        return widest;
    }

    /**
     * Draws the legend.
     *
     * @param sheet where to
     * @param left left end (pt)
     * @param top upper end (pt)
     */
    void paint(Sheet sheet, double left, double top) {
        double baseline = top + PrintStyle.GAP + PrintStyle.LEGEND_TEXT * 0.85;
        for (List<Series> row : rows) {
            double x = left;
            for (Series each : row) {
                paintEntry(sheet, each, x, baseline);
                x += entryWidth(each) + PrintStyle.LEGEND_BETWEEN;
            }
            baseline += PITCH;
        }
    }

    private static void paintEntry(Sheet sheet, Series series, double x, double baseline) {
        double middle = baseline - 0.33 * PrintStyle.LEGEND_TEXT;
        if (series.trace().ownInk() && series.trace() != Trace.KEY) {
            double height = 0.7 * PrintStyle.LEGEND_TEXT;
            sheet.fill(new Rectangle2D.Double(x, baseline - height, sampleWidth(series), height), Areas.colour(series));
        } else if (series.trace() != Trace.MARKS && series.trace() != Trace.KEY) {
            sheet.line(
                    x,
                    middle,
                    x + PrintStyle.LEGEND_SAMPLE,
                    middle,
                    PrintStyle.curve(series.style(), false),
                    series.tone().colour());
        }
        if (series.trace().marked()) {
            CurvePainter.paintMark(sheet, series, x + 0.5 * sampleWidth(series), middle);
        }
        sheet.text(series.name(), TYPE, x + sampleWidth(series) + PrintStyle.GAP, baseline, Sheet.Anchor.START);
    }

    private static double sampleWidth(Series series) {
        return switch (series.trace()) {
            case MARKS -> 2 * PrintStyle.MARK_SIZE;
            case BARS, BARS_ACROSS, AREA, DEEP_AREA -> PrintStyle.LEGEND_TEXT;
            case KEY -> 0;
            case LINE, STEP, LINE_AND_MARKS -> PrintStyle.LEGEND_SAMPLE;
        };
    }

    private static double entryWidth(Series series) {
        return sampleWidth(series)
                + PrintStyle.GAP
                + RichText.of(series.name()).width(Face.REGULAR, PrintStyle.LEGEND_TEXT);
    }

    /** Where a legend to the right of a plot stands. */
    void paintBeside(Sheet sheet, Rectangle2D plot, double offset) {
        paint(sheet, plot.getMaxX() + offset, plot.getY() - PrintStyle.GAP);
    }
}
