package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Colours of a field and the key to them. Each cell of the grid is cut into four triangles about its middle, and each triangle at the levels; what is
 * above a level is painted over what is below it, so that no seam shows.
 */
final class FieldPainter {
    /** From light to dark, evenly enough in lightness to be read in grey. */
    private static final int[] COLOURS = {0xFAF5DC, 0xCFE3B6, 0x86C5A4, 0x459FA0, 0x23708F, 0x16437A, 0x0E1F4B};

    private static final double BAR = 9;
    private static final BasicStroke EDGE = PrintStyle.stroke(0.4f, LineStyle.SOLID);
    private static final Color NOTHING = new Color(0xD0D0D0);
    private static final Sheet.Type NUMBER = new Sheet.Type(Face.REGULAR, PrintStyle.TICK_LABEL, PrintStyle.TEXT);
    private static final Sheet.Type TITLE = new Sheet.Type(Face.REGULAR, PrintStyle.AXIS_TITLE, PrintStyle.TEXT);

    private FieldPainter() {}

    /** A corner on the sheet (pt) and its height. */
    private record Corner(double x, double y, double z) {}

    static void paint(Sheet sheet, PlacedPanel placed, Field field) {
        sheet.fill(placed.plot(), NOTHING);
        double[] levels = field.levels();
        for (int band = 0; band + 1 < levels.length; band++) {
            // the lowest band holds everything that has a value
            double level = band == 0 ? Double.NEGATIVE_INFINITY : levels[band];
            Path2D above = new Path2D.Double();
            for (int i = 0; i + 1 < field.x().length; i++) {
                for (int j = 0; j + 1 < field.y().length; j++) {
                    cell(placed, field, i, j, level, above);
                }
            }
            sheet.add(new Ink.Filled(above, colour(band, levels.length - 1), placed.plot()));
        }
    }

    private static void cell(PlacedPanel placed, Field field, int i, int j, double level, Path2D path) {
        Corner[] corners = {
            corner(placed, field, i, j),
            corner(placed, field, i + 1, j),
            corner(placed, field, i + 1, j + 1),
            corner(placed, field, i, j + 1)
        };
        double x = 0;
        double y = 0;
        double z = 0;
        for (Corner corner : corners) {
            x += corner.x / 4;
            y += corner.y / 4;
            z += corner.z / 4;
        }
        if (!Double.isFinite(z)) {
            return;
        }
        Corner middle = new Corner(x, y, z);
        for (int c = 0; c < 4; c++) {
            add(path, above(List.of(corners[c], corners[(c + 1) % 4], middle), level));
        }
    }

    private static Corner corner(PlacedPanel placed, Field field, int i, int j) {
        return new Corner(placed.sheetX(field.x()[i]), placed.sheetY(field.y()[j]), field.z(i, j));
    }

    /** The part of a polygon that is not below a level, by Sutherland and Hodgman's cut. */
    private static List<Corner> above(List<Corner> polygon, double level) {
        List<Corner> kept = new ArrayList<>();
        for (int c = 0; c < polygon.size(); c++) {
            Corner from = polygon.get(c);
            Corner to = polygon.get((c + 1) % polygon.size());
            if (from.z >= level) {
                kept.add(from);
            }
            if ((from.z >= level) != (to.z >= level)) {
                double share = (level - from.z) / (to.z - from.z);
                kept.add(new Corner(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), level));
            }
        }
        return kept;
    }

    private static void add(Path2D path, List<Corner> polygon) {
        if (polygon.size() < 3) {
            return;
        }
        path.moveTo(polygon.get(0).x, polygon.get(0).y);
        polygon.stream().skip(1).forEach(c -> path.lineTo(c.x, c.y));
        path.closePath();
    }

    private static Color colour(int band, int bands) {
        double at = bands == 1 ? 0.3 : (double) band / (bands - 1);
        double place = at * (COLOURS.length - 1);
        int low = Math.min(COLOURS.length - 2, (int) place);
        Color a = new Color(COLOURS[low]);
        Color b = new Color(COLOURS[low + 1]);
        double share = place - low;
        return new Color(
                mixed(a.getRed(), b.getRed(), share),
                mixed(a.getGreen(), b.getGreen(), share),
                mixed(a.getBlue(), b.getBlue(), share));
    }

    private static int mixed(int a, int b, double share) {
        return (int) Math.round(a + (b - a) * share);
    }

    /** Width of the key to the right of a plot (pt). */
    static double keyWidth(Field field) {
        return 3 * PrintStyle.GAP + BAR + numberWidth(field) + PrintStyle.AXIS_TITLE * 1.5;
    }

    private static double numberWidth(Field field) {
        double widest = 0;
        for (String label : labels(field)) {
            widest = Math.max(widest, Face.REGULAR.width(label, PrintStyle.TICK_LABEL));
        }
        return widest;
    }

    private static List<String> labels(Field field) {
        double[] levels = field.levels();
        int decimals = 0;
        for (double level : levels) {
            decimals = Math.max(
                    decimals, BigDecimal.valueOf(level).stripTrailingZeros().scale());
        }
        List<String> labels = new ArrayList<>();
        for (double level : levels) {
            labels.add(Ticks.number(BigDecimal.valueOf(level), decimals));
        }
        return labels;
    }

    static void paintKey(Sheet sheet, PlacedPanel placed, Field field) {
        Rectangle2D plot = placed.plot();
        double[] levels = field.levels();
        List<String> labels = labels(field);
        double left = plot.getMaxX() + 2 * PrintStyle.GAP;
        double step = plot.getHeight() / (levels.length - 1);
        for (int band = 0; band + 1 < levels.length; band++) {
            Rectangle2D box = new Rectangle2D.Double(left, plot.getMaxY() - (band + 1) * step, BAR, step);
            sheet.fill(box, colour(band, levels.length - 1));
            sheet.stroke(box, EDGE, PrintStyle.FRAME);
        }
        for (int l = 0; l < levels.length; l++) {
            double middle = plot.getMaxY() - l * step;
            double baseline = Math.max(
                    plot.getY() + 0.72 * PrintStyle.TICK_LABEL,
                    Math.min(plot.getMaxY(), middle + 0.36 * PrintStyle.TICK_LABEL));
            sheet.text(labels.get(l), NUMBER, left + BAR + PrintStyle.GAP, baseline, Sheet.Anchor.START);
        }
        String title = field.unit().isBlank() ? field.quantity() : field.quantity() + ", " + field.unit();
        double titleX = left + BAR + PrintStyle.GAP + numberWidth(field) + PrintStyle.AXIS_TITLE * 1.2;
        sheet.uprightText(title, TITLE, titleX, plot.getCenterY());
    }
}
