package org.ridewright.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shares the area of a figure among its panels: plots of one column have the same left and right ends, plots of the figure
 * the same height.
 *
 * <p>Margins depend on the numbers at the axes, these on the size of the plots, and this on the margins; three rounds
 * settle it, since only the width of a number can still change.
 */
final class FigureLayout {
    private static final int ROUNDS = 3;
    private static final double LEAST_PLOT = 24;

    private final Figure figure;
    private final List<Panel> panels;
    private final int columns;
    private final int rows;
    private final Rectangle2D area;
    private final double cellWidth;
    private final double[] left;
    private final double[] right;
    private final Scale[] xScales;

    private FigureLayout(Figure figure, Rectangle2D area) {
        this.figure = figure;
        this.area = area;
        panels = figure.panels();
        columns = Math.min(figure.columns(), panels.size());
        rows = (panels.size() + columns - 1) / columns;
        cellWidth = (area.getWidth() - (columns - 1) * PrintStyle.COLUMN_GAP) / columns;
        left = new double[columns];
        fillLeft();
        right = new double[columns];
        for (int i = 0; i < panels.size(); i++) {
            right[i % columns] = Math.max(right[i % columns], rightMargin(panels.get(i)));
        }
        evenOut(right);
        xScales = sharedScales();
    }

    /** Small multiples, panels with one and the same horizontal axis, are equally wide, whatever stands beside them. */
    private void evenOut(double[] margins) {
        AxisSpec first = panels.get(0).x();
        if (first.names().isEmpty() && panels.stream().allMatch(p -> p.x().equals(first) && !p.isSketch())) {
            Arrays.fill(margins, Arrays.stream(margins).max().orElse(0));
        }
    }

    /**
     * Places the panels.
     *
     * @param figure whose panels
     * @param area where (pt)
     * @return placed panels, in the order of the figure
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    static List<PlacedPanel> place(Figure figure, Rectangle2D area) {
        FigureLayout layout = new FigureLayout(figure, area);
        List<PlacedPanel> placed = layout.round();
        for (int i = 1; i < ROUNDS; i++) {
            layout.fitLeftMargins(placed);
            placed = layout.round();
        }
        return placed;
    }

    private List<PlacedPanel> round() {
        int n = panels.size();
        NoteStrip[] notes = new NoteStrip[n];
        Legend[] legends = new Legend[n];
        List<List<String>> titles = new ArrayList<>();
        double[] above = new double[rows];
        double[] below = new double[rows];
        for (int i = 0; i < n; i++) {
            Panel panel = panels.get(i);
            double width = plotWidth(i % columns);
            notes[i] = repeatsNotes(i)
                    ? new NoteStrip(List.of(), 0)
                    : NoteStrip.of(panel, xScales[i], plotLeft(i % columns), width);
            legends[i] = Legend.flowing(panel.legend() == LegendPlace.BELOW ? panel.series() : List.of(), cellWidth);
            titles.add(RichText.wrap(panel.title(), Face.BOLD, PrintStyle.PANEL_TITLE, width));
            int row = i / columns;
            above[row] = Math.max(above[row], PlacedPanel.above(titles.get(i).size(), notes[i].rows()));
            double axis = panel.isSketch() ? 0 : numbered(i) ? PlacedPanel.X_AXIS_HEIGHT : PrintStyle.TICK_LENGTH;
            below[row] = Math.max(below[row], axis + legends[i].height());
        }
        double height =
                plotHeight(Arrays.stream(above).sum() + Arrays.stream(below).sum());
        List<PlacedPanel> placed = new ArrayList<>();
        double top = area.getY();
        for (int row = 0; row < rows; row++) {
            for (int i = row * columns; i < Math.min(n, (row + 1) * columns); i++) {
                Rectangle2D plot =
                        new Rectangle2D.Double(plotLeft(i % columns), top + above[row], plotWidth(i % columns), height);
                placed.add(panel(i, plot, notes[i], titles.get(i), legends[i]));
            }
            top += above[row] + height + below[row] + PrintStyle.ROW_GAP;
        }
        return placed;
    }

    private PlacedPanel panel(int i, Rectangle2D plot, NoteStrip notes, List<String> title, Legend legend) {
        Panel panel = panels.get(i);
        Scale x = xScales[i];
        Scale y = AxisRange.ofY(panel);
        if (panel.equalScale()) {
            double perPoint = Math.max(x.span() / plot.getWidth(), y.span() / plot.getHeight());
            x = x.withSpan(perPoint * plot.getWidth());
            y = y.withSpan(perPoint * plot.getHeight());
        }
        return new PlacedPanel(
                panel,
                plot,
                x,
                y,
                xTicks(panel, x, plot.getWidth()),
                panel.y().names().isEmpty()
                        ? Ticks.upright(y, plot.getHeight())
                        : Ticks.named(panel.y().names()),
                numbered(i),
                notes,
                title,
                legend,
                Legend.column(panel.legend() == LegendPlace.RIGHT ? panel.series() : List.of()));
    }

    private static Ticks xTicks(Panel panel, Scale x, double width) {
        if (!panel.x().names().isEmpty()) {
            return Ticks.named(panel.x().names());
        }
        return Bars.count(panel) ? Ticks.counting(x, width) : Ticks.level(x, width);
    }

    private double plotHeight(double taken) {
        double room = area.getHeight() - taken - (rows - 1) * PrintStyle.ROW_GAP;
        double height = room / rows;
        if (height < LEAST_PLOT) {
            double missing = rows * LEAST_PLOT - room;
            throw new IllegalArgumentException(
                    "figure %s: height must be ≥ %.0f mm for its %d rows of panels, got %s mm"
                            .formatted(
                                    figure.fileName(),
                                    Math.ceil(figure.heightMm() + missing / PrintStyle.POINTS_PER_MM),
                                    rows,
                                    figure.heightMm()));
        }
        return height;
    }

    private double plotLeft(int column) {
        return area.getX() + column * (cellWidth + PrintStyle.COLUMN_GAP) + left[column];
    }

    private double plotWidth(int column) {
        double width = cellWidth - left[column] - right[column];
        if (width < 2 * LEAST_PLOT) {
            throw new IllegalArgumentException(
                    "figure %s: width %s mm is too small for %d columns with their labels; use fewer columns"
                            .formatted(figure.fileName(), figure.widthMm(), columns));
        }
        return width;
    }

    private void fillLeft() {
        boolean sketches = panels.stream().allMatch(Panel::isSketch);
        Arrays.fill(left, sketches ? PrintStyle.EDGE : PrintStyle.LEFT_MARGIN);
    }

    private void fitLeftMargins(List<PlacedPanel> placed) {
        fillLeft();
        for (int i = 0; i < placed.size(); i++) {
            PlacedPanel each = placed.get(i);
            if (each.panel().isSketch()) {
                continue;
            }
            int lines = PlacedPanel.yTitleLines(
                            each.panel(), each.yTicks(), each.plot().getHeight())
                    .size();
            double needed = PrintStyle.TICK_LENGTH
                    + 2
                    + PlacedPanel.numberWidth(each.yTicks())
                    + PrintStyle.GAP
                    + lines * PrintStyle.AXIS_TITLE * PrintStyle.LEADING;
            left[i % columns] = Math.max(left[i % columns], needed);
        }
        evenOut(left);
    }

    private static double rightMargin(Panel panel) {
        double notes = PanelPainter.rightNotesWidth(panel)
                + panel.field().map(FieldPainter::keyWidth).orElse(0.0);
        double names = panel.legend() == LegendPlace.RIGHT
                ? Legend.column(panel.series()).width() + 2 * PrintStyle.GAP
                : 0;
        return Math.max(PrintStyle.RIGHT_MARGIN, notes + names + 1);
    }

    /** Scales of the horizontal axes; panels below one another with equal axes get the joint one. */
    private Scale[] sharedScales() {
        Scale[] scales = panels.stream().map(AxisRange::ofX).toArray(Scale[]::new);
        for (int start = 0; start < scales.length; start++) {
            int first = start;
            if (start < columns || !sharesX(start - columns, start)) {
                int[] chain = IntStream.iterate(
                                first,
                                i -> i < scales.length && (i == first || sharesX(i - columns, i)),
                                i -> i + columns)
                        .toArray();
                Scale joint = Stream.of(
                                Arrays.stream(chain).mapToObj(i -> scales[i]).toArray(Scale[]::new))
                        .reduce(Scale::union)
                        .orElseThrow();
                Arrays.stream(chain).forEach(i -> scales[i] = joint);
            }
        }
        return scales;
    }

    private boolean sharesX(int upper, int lower) {
        Panel a = panels.get(upper);
        Panel b = panels.get(lower);
        return a.x().equals(b.x()) && !a.equalScale() && !b.equalScale();
    }

    /** A panel with nothing below it that shares its axis has the numbers, and for its sake the whole row, so that all look alike. */
    private boolean numbered(int i) {
        int first = i - i % columns;
        return IntStream.range(first, Math.min(first + columns, panels.size())).anyMatch(this::standsAlone);
    }

    private boolean standsAlone(int i) {
        return i + columns >= panels.size()
                || !sharesX(i, i + columns)
                || panels.get(i).legend() == LegendPlace.BELOW;
    }

    private boolean repeatsNotes(int i) {
        return i >= columns
                && sharesX(i - columns, i)
                && panels.get(i).markers().equals(panels.get(i - columns).markers())
                && panels.get(i).bands().stream().noneMatch(b -> b.span() == Band.Span.OF_X);
    }
}
