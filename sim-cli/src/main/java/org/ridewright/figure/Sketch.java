package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * A line drawing with dimension letters, black on white, for a sheet that is printed. Places and sizes in millimetres, y downwards; lettered in
 * the typeface of the figures. Filled first, then written or painted.
 */
public final class Sketch {
    private static final double POINTS = 72 / 25.4;
    private static final double ARROW_LENGTH = 2;
    private static final double ARROW_HALF = 0.6;
    private static final double LETTER_SIZE = 8.5;
    private static final double LETTER_RADIUS = 2.7;
    private static final double TEXT_SIZE = 7.5;
    /** Dimension lines that are shorter than this have their letter beside them (mm). */
    private static final double SHORT = 9;

    /** Pens. */
    public enum Pen {
        /** Edges of things. */
        BOLD(0.5, false),
        /** Things less important. */
        FINE(0.25, false),
        /** Lines that lead from a thing to its dimension. */
        HAIR(0.15, false),
        /** Centre lines. */
        DASHED(0.2, true);

        private final double width;
        private final boolean dashed;

        Pen(double width, boolean dashed) {
            this.width = width;
            this.dashed = dashed;
        }

        private BasicStroke stroke() {
            float[] pattern = dashed ? new float[] {(float) (2 * POINTS), (float) (1.2 * POINTS)} : null;
            return new BasicStroke(
                    (float) (width * POINTS), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, pattern, 0);
        }
    }

    private final String name;
    private final String title;
    private final double width;
    private final double height;
    private final Sheet sheet;

    /**
     * An empty drawing.
     *
     * @param name unlike that of other drawings on the same page
     * @param title for those who cannot see it
     * @param width (mm)
     * @param height (mm)
     */
    public Sketch(String name, String title, double width, double height) {
        this.name = name;
        this.title = title;
        this.width = width;
        this.height = height;
        sheet = new Sheet(width * POINTS, height * POINTS);
    }

    /** Name within its page. */
    public String name() {
        return name;
    }

    /** Width (mm). */
    public double width() {
        return width;
    }

    /** Height (mm). */
    public double height() {
        return height;
    }

    /** A straight line. */
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        sheet.line(x1 * POINTS, y1 * POINTS, x2 * POINTS, y2 * POINTS, pen.stroke(), Color.BLACK);
    }

    /** Straight lines through points, x and y in turn. */
    public void lines(Pen pen, double... xy) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < xy.length; i += 2) {
            if (i == 0) {
                path.moveTo(xy[0] * POINTS, xy[1] * POINTS);
            } else {
                path.lineTo(xy[i] * POINTS, xy[i + 1] * POINTS);
            }
        }
        sheet.stroke(path, pen.stroke(), Color.BLACK);
    }

    /** A bow from one point to another, whose middle lies {@code sag} below the straight line (mm; negative: above). */
    public void bow(double x1, double y1, double x2, double y2, double sag, Pen pen) {
        Path2D path = new Path2D.Double();
        path.moveTo(x1 * POINTS, y1 * POINTS);
        path.quadTo((x1 + x2) / 2 * POINTS, ((y1 + y2) / 2 + 2 * sag) * POINTS, x2 * POINTS, y2 * POINTS);
        sheet.stroke(path, pen.stroke(), Color.BLACK);
    }

    /** A circle. */
    public void circle(double x, double y, double radius, Pen pen) {
        sheet.stroke(disc(x, y, radius), pen.stroke(), Color.BLACK);
    }

    /** A filled disc. */
    public void dot(double x, double y, double radius) {
        sheet.fill(disc(x, y, radius), Color.BLACK);
    }

    /** A rectangle by two corners, white inside. */
    public void box(double x1, double y1, double x2, double y2, Pen pen) {
        Rectangle2D shape = new Rectangle2D.Double(
                Math.min(x1, x2) * POINTS,
                Math.min(y1, y2) * POINTS,
                Math.abs(x2 - x1) * POINTS,
                Math.abs(y2 - y1) * POINTS);
        sheet.fill(shape, Color.WHITE);
        sheet.stroke(shape, pen.stroke(), Color.BLACK);
    }

    /** A text in the middle of a point. */
    public void text(String text, double x, double y) {
        sheet.text(
                text,
                new Sheet.Type(Face.REGULAR, TEXT_SIZE, Color.BLACK),
                x * POINTS,
                y * POINTS + TEXT_SIZE * 0.35,
                Sheet.Anchor.MIDDLE);
    }

    /**
     * A dimension line, level or upright, with an arrow at either end and its letter; a short one has the letter beyond its second end.
     *
     * @param letter one or two characters
     */
    public void dimension(double x1, double y1, double x2, double y2, String letter) {
        line(x1, y1, x2, y2, Pen.FINE);
        double length = Math.hypot(x2 - x1, y2 - y1);
        if (length > 0) {
            double ux = (x2 - x1) / length;
            double uy = (y2 - y1) / length;
            double size = Math.min(ARROW_LENGTH, length / 2.2);
            arrow(x1, y1, ux * size, uy * size);
            arrow(x2, y2, -ux * size, -uy * size);
            if (length < SHORT) {
                letter(x2 + ux * (LETTER_RADIUS + 0.6), y2 + uy * (LETTER_RADIUS + 0.6), letter);
                return;
            }
        }
        letter((x1 + x2) / 2, (y1 + y2) / 2, letter);
    }

    /** A letter in a ring. */
    public void letter(double x, double y, String letter) {
        sheet.fill(disc(x, y, LETTER_RADIUS), Color.WHITE);
        sheet.stroke(disc(x, y, LETTER_RADIUS), Pen.FINE.stroke(), Color.BLACK);
        double size = letter.length() > 1 ? LETTER_SIZE - 1 : LETTER_SIZE;
        sheet.text(
                letter,
                new Sheet.Type(Face.BOLD, size, Color.BLACK),
                x * POINTS,
                y * POINTS + size * 0.36,
                Sheet.Anchor.MIDDLE);
    }

    private void arrow(double x, double y, double dx, double dy) {
        double nx = -dy / Math.hypot(dx, dy) * ARROW_HALF;
        double ny = dx / Math.hypot(dx, dy) * ARROW_HALF;
        Path2D path = new Path2D.Double();
        path.moveTo(x * POINTS, y * POINTS);
        path.lineTo((x + dx + nx) * POINTS, (y + dy + ny) * POINTS);
        path.lineTo((x + dx - nx) * POINTS, (y + dy - ny) * POINTS);
        path.closePath();
        sheet.fill(path, Color.BLACK);
    }

    private static Ellipse2D disc(double x, double y, double radius) {
        return new Ellipse2D.Double(
                (x - radius) * POINTS, (y - radius) * POINTS, 2 * radius * POINTS, 2 * radius * POINTS);
    }

    /** The drawing as an SVG element. */
    public String svg() {
        return SvgFormat.write(sheet, name, width, height, title, "");
    }

    /** Paints it with its upper left corner at the origin, a point (1/72 in) to each unit. */
    public void paint(Graphics2D graphics) {
        sheet.inks().forEach(ink -> PngFormat.draw(graphics, ink));
    }
}
