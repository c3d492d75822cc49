package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What a figure consists of, in drawing order. Filled by painters, read by the writers of the formats. */
final class Sheet {

    /** Where a text stands relative to its point. */
    enum Anchor {
        /** The text starts there. */
        START(0),
        /** The text is centred there. */
        MIDDLE(0.5),
        /** The text ends there. */
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }
    }

    /**
     * Look of a text.
     *
     * @param face cut
     * @param size type size (pt)
     * @param colour colour
     */
    record Type(Face face, double size, Color colour) {}

    private final double width;
    private final double height;
    private final Rectangle2D whole;
    private final List<Ink> inks = new ArrayList<>();

    /**
     * An empty sheet.
     *
     * @param width (pt)
     * @param height (pt)
     */
    Sheet(double width, double height) {
        this.width = width;
        this.height = height;
        this.whole = new Rectangle2D.Double(0, 0, width, height);
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** The whole sheet, as the clip of things that may stand anywhere. */
    Rectangle2D whole() {
        return whole;
    }

    List<Ink> inks() {
        return Collections.unmodifiableList(inks);
    }

    void add(Ink ink) {
        inks.add(ink);
    }

    void line(double x1, double y1, double x2, double y2, BasicStroke stroke, Color colour) {
        add(new Ink.Stroked(new Path2D.Double(new Line2D.Double(x1, y1, x2, y2)), stroke, colour, whole));
    }

    void stroke(Shape shape, BasicStroke stroke, Color colour) {
        add(new Ink.Stroked(new Path2D.Double(shape), stroke, colour, whole));
    }

    void fill(Shape shape, Color colour) {
        add(new Ink.Filled(new Path2D.Double(shape), colour, whole));
    }

    /** Sets a level text with its base line at y. */
    void text(String source, Type type, double x, double y, Anchor anchor) {
        RichText text = RichText.of(source);
        double at = x - anchor.share * text.width(type.face(), type.size());
        for (RichText.Piece piece : text.pieces()) {
            double size = type.size() * piece.scale();
            add(new Ink.Lettered(
                    piece.text(), type.face(), size, at, y + piece.drop() * type.size(), false, type.colour()));
            at += type.face().width(piece.text(), size);
        }
    }

    /** Sets a text that runs upwards, centred at y, with its base line at x. */
    void uprightText(String source, Type type, double x, double y) {
        RichText text = RichText.of(source);
        double at = y + text.width(type.face(), type.size()) / 2;
        for (RichText.Piece piece : text.pieces()) {
            double size = type.size() * piece.scale();
            add(new Ink.Lettered(
                    piece.text(), type.face(), size, x + piece.drop() * type.size(), at, true, type.colour()));
            at -= type.face().width(piece.text(), size);
        }
    }
}
