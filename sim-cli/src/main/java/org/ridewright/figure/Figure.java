package org.ridewright.figure;

import java.util.List;

/**
 * One printed figure: panels in a grid, filled row by row.
 *
 * @param fileName name without extension; letters, digits, hyphen, dot and underscore
 * @param title what is seen, one sentence; drawn above the panels, may be blank
 * @param caption longer text for the page that shows the figure; kept inside the files, not drawn
 * @param panels at least one
 * @param columns panels side by side, 1 to 4
 * @param widthMm printed width (mm), 40 to 1000
 * @param heightMm printed height (mm), 30 to 1500
 */
public record Figure(
        String fileName,
        String title,
        String caption,
        List<Panel> panels,
        int columns,
        double widthMm,
        double heightMm) {

    /** Text width of a book page (mm). */
    public static final double PAGE_WIDTH_MM = 170;

    /**
     * Checks sizes and names.
     *
     * @throws IllegalArgumentException if a value is outside its range
     */
    public Figure {
        if (!fileName.matches("[A-Za-z0-9._-]+")) {
            throw new IllegalArgumentException(
                    "figure file name must be of letters, digits, '-', '.' and '_', got '%s'".formatted(fileName));
        }
        panels = List.copyOf(panels);
        if (panels.isEmpty()) {
            throw new IllegalArgumentException("figure %s must have ≥ 1 panel, got 0".formatted(fileName));
        }
        if (columns < 1 || columns > 4) {
            throw new IllegalArgumentException(
                    "figure %s: columns must be 1 to 4, got %d".formatted(fileName, columns));
        }
        requireBetween(fileName, "width", widthMm, 40, 1000);
        requireBetween(fileName, "height", heightMm, 30, 1500);
    }

    /**
     * A figure of page width, its panels below one another.
     *
     * @param fileName name without extension
     * @param title what is seen
     * @param caption longer text for the page
     * @param heightMm printed height (mm)
     * @param panels at least one
     * @return the figure
     */
    public static Figure stacked(String fileName, String title, String caption, double heightMm, Panel... panels) {
        return new Figure(fileName, title, caption, List.of(panels), 1, PAGE_WIDTH_MM, heightMm);
    }

    private static void requireBetween(String fileName, String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    "figure %s: %s must be %s to %s mm, got %s".formatted(fileName, what, low, high, value));
        }
    }
}
