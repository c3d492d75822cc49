package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Arrays;

/**
 * What the chart library paints on: puts its lines and marks on a sheet, joining pieces that touch into one path so that
 * dashes run through and files stay small.
 */
final class CurveGraphics extends ClosedGraphics {
    /** Points nearer to the line than this are not seen in print (pt). */
    private static final double INVISIBLE = 0.025;

    private final Sheet sheet;
    private final AffineTransform toSheet;
    private final Shape clip;
    private final double scale;

    private Color colour = Color.BLACK;
    private Stroke stroke = new BasicStroke();
    private Shape libraryClip;

    private double[] xs = new double[256];
    private double[] ys = new double[256];
    private int points;
    private Color lineColour = Color.BLACK;
    private BasicStroke lineStroke = new BasicStroke();

    /**
     * Graphics onto a part of a sheet.
     *
     * @param sheet where the ink goes
     * @param plotUnits part of the sheet that shows it (units of the library)
     * @param unit length of one unit of the library's drawing (pt)
     */
    CurveGraphics(Sheet sheet, Rectangle plotUnits, double unit) {
        this.sheet = sheet;
        this.scale = unit;
        this.toSheet = AffineTransform.getScaleInstance(unit, unit);
        toSheet.translate(plotUnits.x, plotUnits.y);
        this.clip = AffineTransform.getScaleInstance(unit, unit).createTransformedShape(plotUnits);
        this.libraryClip = new Rectangle(plotUnits.width, plotUnits.height);
    }

    /** Puts the line that is still growing on the sheet. */
    void finish() {
        if (points > 1) {
            sheet.add(new Ink.Stroked(
                    Thinning.path(xs, ys, points, INVISIBLE), lineStroke, lineColour, clip.getBounds2D()));
        }
        points = 0;
    }

    @Override
    public void draw(Shape shape) {
        if (shape instanceof Line2D line) {
            Point2D from = toSheet.transform(line.getP1(), null);
            Point2D to = toSheet.transform(line.getP2(), null);
            append(from, to);
        } else {
            Path2D path = new Path2D.Double(shape, toSheet);
            sheet.add(new Ink.Stroked(path, scaled(), colour, clip.getBounds2D()));
        }
    }

    @Override
    public void fill(Shape shape) {
        if (colour.getAlpha() > 0) {
            sheet.add(new Ink.Filled(new Path2D.Double(shape, toSheet), colour, clip.getBounds2D()));
        }
    }

    private void append(Point2D from, Point2D to) {
        BasicStroke pen = scaled();
        boolean goesOn = points > 0
                && xs[points - 1] == from.getX()
                && ys[points - 1] == from.getY()
                && lineColour.equals(colour)
                && lineStroke.equals(pen);
        if (!goesOn) {
            finish();
            lineColour = colour;
            lineStroke = pen;
            push(from);
        }
        push(to);
    }

    private void push(Point2D point) {
        if (points == xs.length) {
            xs = Arrays.copyOf(xs, 2 * points);
            ys = Arrays.copyOf(ys, 2 * points);
        }
        xs[points] = point.getX();
        ys[points] = point.getY();
        points++;
    }

    private BasicStroke scaled() {
        BasicStroke pen = (BasicStroke) stroke;
        float[] dashes = pen.getDashArray();
        if (dashes != null) {
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] = (float) (dashes[i] * scale);
            }
        }
        return new BasicStroke(
                (float) (pen.getLineWidth() * scale),
                pen.getEndCap(),
                pen.getLineJoin(),
                pen.getMiterLimit(),
                dashes,
                (float) (pen.getDashPhase() * scale));
    }

    @Override
    public void setColor(Color c) {
        colour = c;
    }

    @Override
    public Color getColor() {
        return colour;
    }

    @Override
    public void setStroke(Stroke s) {
        stroke = s;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public Shape getClip() {
        return libraryClip;
    }

    @Override
    public void setClip(Shape shape) {
        libraryClip = shape;
    }

    @Override
    public void setFont(Font font) {
        // the library names one though it sets no text here
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        // outlines have no use for hints
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return RenderingHints.VALUE_ANTIALIAS_ON;
    }
}
