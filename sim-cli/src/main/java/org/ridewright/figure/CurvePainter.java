package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Circle;
import org.knowm.xchart.style.markers.Diamond;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.None;
import org.knowm.xchart.style.markers.Square;
import org.knowm.xchart.style.markers.TriangleDown;
import org.knowm.xchart.style.markers.TriangleUp;

/**
 * Lines, steps and marks of a panel, painted by the chart library. It gets the bare plot: frame, grid, ticks and texts are
 * ours, because the library places them by whole units and chooses ticks from the samples.
 */
final class CurvePainter {
    /** Library units per point: the library rounds sizes to whole units. */
    private static final int FINE = 100;

    /** Width of a column in which only extremes are kept (pt): about a third of a line. */
    private static final double COLUMN = 0.3;

    /** A curve that goes up and down by more than this many plot widths fills the plot. */
    private static final double FILLING = 15;

    private CurvePainter() {}

    /**
     * Draws the series of a panel.
     *
     * @param sheet where to
     * @param panel what
     * @param plot the plot on the sheet (pt)
     * @param x scale of the horizontal axis
     * @param y scale of the vertical axis
     */
    static void paint(Sheet sheet, Panel panel, Rectangle2D plot, Scale x, Scale y) {
        Rectangle units =
                new Rectangle(fine(plot.getX()), fine(plot.getY()), fine(plot.getWidth()), fine(plot.getHeight()));
        XYChart chart = bareChart(units, x, y);
        List<Series> curves =
                panel.series().stream().filter(s -> !s.trace().ownInk()).toList();
        if (curves.isEmpty()) {
            return;
        }
        for (Series series : curves) {
            add(chart, series, plot, x, y);
        }
        CurveGraphics graphics = new CurveGraphics(sheet, units, 1.0 / FINE);
        chart.paint(graphics, units.width, units.height);
        graphics.finish();
    }

    /**
     * Draws one mark, as in a legend.
     *
     * @param sheet where to
     * @param series whose mark
     * @param atX centre (pt)
     * @param atY centre (pt)
     */
    static void paintMark(Sheet sheet, Series series, double atX, double atY) {
        Rectangle around = new Rectangle(fine(atX) - 4 * FINE, fine(atY) - 4 * FINE, 8 * FINE, 8 * FINE);
        CurveGraphics graphics = new CurveGraphics(sheet, around, 1.0 / FINE);
        graphics.setColor(series.tone().colour());
        mark(series.tone()).paint(graphics, 4 * FINE, 4 * FINE, fine(PrintStyle.MARK_SIZE));
        graphics.finish();
    }

    private static XYChart bareChart(Rectangle units, Scale x, Scale y) {
        XYChart chart = new XYChart(units.width, units.height);
        XYStyler styler = chart.getStyler();
        styler.setChartTitleVisible(false).setLegendVisible(false).setChartPadding(0);
        styler.setChartBackgroundColor(clear()).setPlotContentSize(1).setPlotBorderVisible(false);
        styler.setPlotBackgroundColor(clear());
        styler.setPlotMargin(0).setAxisTitlesVisible(false).setAxisTicksVisible(false);
        styler.setPlotGridLinesVisible(false).setPlotTicksMarksVisible(false);
        styler.setXAxisMin(x.min()).setXAxisMax(x.max()).setYAxisMin(y.min()).setYAxisMax(y.max());
        styler.setXAxisLogarithmic(x.log()).setYAxisLogarithmic(y.log());
        styler.setMarkerSize(fine(PrintStyle.MARK_SIZE));
        // wider than any plot: the library then looks for no ticks
        styler.setXAxisTickMarkSpacingHint(Integer.MAX_VALUE).setYAxisTickMarkSpacingHint(Integer.MAX_VALUE);
        return chart;
    }

    private static void add(XYChart chart, Series series, Rectangle2D plot, Scale xScale, Scale yScale) {
        double[] x = series.x();
        double[] y = series.y();
        leaveOutWithoutLogarithm(x, y, xScale, yScale);
        boolean lineOnly = !series.trace().marked();
        if (lineOnly && series.runsForward()) {
            double[] position = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                position[i] = xScale.share(x[i]) * plot.getWidth();
            }
            int[] kept = Thinning.keepExtremes(position, y, COLUMN);
            x = pick(x, kept);
            y = pick(y, kept);
        }
        boolean fills = travel(y, yScale) * plot.getHeight() > FILLING * plot.getWidth();
        XYSeries drawn = chart.addSeries(series.name(), x, y, null);
        drawn.setLineColor(series.tone().colour());
        drawn.setMarkerColor(series.tone().colour());
        drawn.setLineStyle(finely(PrintStyle.curve(series.style(), fills)));
        drawn.setMarker(lineOnly ? new None() : mark(series.tone()));
        drawn.setXYSeriesRenderStyle(
                switch (series.trace()) {
                    case LINE, LINE_AND_MARKS -> XYSeries.XYSeriesRenderStyle.Line;
                    case STEP -> XYSeries.XYSeriesRenderStyle.Step;
                    case MARKS -> XYSeries.XYSeriesRenderStyle.Scatter;
                    case BARS, BARS_ACROSS, AREA, DEEP_AREA, KEY ->
                        throw new IllegalArgumentException("bars, areas and keys are no curve");
                });
    }

    /** Length of all ways up and down, in heights of the plot. */
    private static double travel(double[] y, Scale scale) {
        double sum = 0;
        for (int i = 1; i < y.length; i++) {
            double way = Math.abs(scale.share(y[i]) - scale.share(y[i - 1]));
            sum += Double.isNaN(way) ? 0 : way;
        }
        return sum;
    }

    /** Makes a gap of each sample that a logarithmic axis cannot show. */
    private static void leaveOutWithoutLogarithm(double[] x, double[] y, Scale xScale, Scale yScale) {
        for (int i = 0; i < x.length; i++) {
            boolean beyondX = xScale.log() && x[i] <= 0;
            boolean beyondY = yScale.log() && y[i] <= 0;
            if (beyondX || beyondY) {
                y[i] = Double.NaN;
                x[i] = beyondX ? xScale.min() : x[i];
            }
        }
    }

    private static Marker mark(Tone tone) {
        return switch (tone) {
            case INK -> new Circle();
            case NAVY -> new TriangleUp();
            case RUST -> new Square();
            case TEAL -> new Diamond();
            case AMBER -> new TriangleDown();
        };
    }

    private static double[] pick(double[] values, int[] indices) {
        double[] picked = new double[indices.length];
        for (int i = 0; i < indices.length; i++) {
            picked[i] = values[indices[i]];
        }
        return picked;
    }

    private static BasicStroke finely(BasicStroke stroke) {
        float[] dashes = stroke.getDashArray();
        if (dashes != null) {
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] *= FINE;
            }
        }
        return new BasicStroke(
                stroke.getLineWidth() * FINE,
                stroke.getEndCap(),
                stroke.getLineJoin(),
                stroke.getMiterLimit(),
                dashes,
                0);
    }

    private static Color clear() {
        return new Color(0, 0, 0, 0);
    }

    private static int fine(double points) {
        return (int) Math.round(points * FINE);
    }
}
