package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** One thing drawn on a sheet, in points. */
sealed interface Ink {

    /**
     * A line along a path.
     *
     * @param path where
     * @param stroke width and dashes (pt)
     * @param colour colour
     * @param clip part of the sheet it shows in
     */
    record Stroked(Path2D path, BasicStroke stroke, Color colour, Rectangle2D clip) implements Ink {}

    /**
     * A filled area.
     *
     * @param path its edge
     * @param colour colour
     * @param clip part of the sheet it shows in
     */
    record Filled(Path2D path, Color colour, Rectangle2D clip) implements Ink {}

    /**
     * Letters of one size on one base line.
     *
     * @param text characters
     * @param face cut
     * @param size type size (pt)
     * @param x left end of the base line (pt)
     * @param y base line (pt)
     * @param upright whether it runs from the bottom to the top
     * @param colour colour
     */
    record Lettered(String text, Face face, double size, double x, double y, boolean upright, Color colour)
            implements Ink {}
}
