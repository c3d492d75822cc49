package org.ridewright.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Puts a sheet into an SVG in units of a hundredth of a point, whole numbers throughout. Letters are outlines, each glyph
 * defined once; title and caption are there as text. Source: W3C SVG 1.1.
 */
final class SvgFormat {
    private static final double FINE = 100;

    /** Units per em of glyph outlines in the file. */
    private static final double GLYPH_EM = 1000;

    private final String prefix;
    private final Sheet sheet;
    private final StringBuilder body = new StringBuilder(1 << 16);
    private final Map<GlyphKey, String> glyphs = new LinkedHashMap<>();
    private final Map<Rectangle2D, String> clips = new LinkedHashMap<>();
    private final StringBuilder definitions = new StringBuilder(1 << 14);

    private record GlyphKey(Face face, int code) {}

    private SvgFormat(Sheet sheet, String prefix) {
        this.sheet = sheet;
        this.prefix = prefix;
    }

    /**
     * Writes a sheet.
     *
     * @param sheet what
     * @param figure whose names and size
     * @return the document, without an XML declaration so that it can stand inside a page
     */
    static String write(Sheet sheet, Figure figure) {
        return write(sheet, figure.fileName(), figure.widthMm(), figure.heightMm(), figure.title(), figure.caption());
    }

    /** The same of a sheet that is no figure; its size in millimetres. */
    static String write(Sheet sheet, String fileName, double widthMm, double heightMm, String title, String caption) {
        // names inside the file are unlike those of other figures on the same page
        SvgFormat format = new SvgFormat(sheet, fileName.replace('.', '-') + "-");
        for (Ink ink : sheet.inks()) {
            format.draw(ink);
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\" role=\"img\">\n"
                        .formatted(
                                millimetres(widthMm), millimetres(heightMm), fine(sheet.width()), fine(sheet.height()))
                + "<title>" + escaped(title) + "</title>\n<desc>" + escaped(caption) + "</desc>\n"
                + "<defs>\n" + format.definitions + "</defs>\n"
                + "<path fill=\"#fff\" d=\"M0 0h%sv%sH0z\"/>\n".formatted(fine(sheet.width()), fine(sheet.height()))
                + format.body + "</svg>\n";
    }

    private void draw(Ink ink) {
        if (ink instanceof Ink.Stroked line) {
            body.append("<path fill=\"none\" stroke=\"")
                    .append(hex(line.colour()))
                    .append('"');
            stroke(line.stroke());
            clip(line.clip());
            path(line.path());
        } else if (ink instanceof Ink.Filled area) {
            body.append("<path fill=\"").append(hex(area.colour())).append('"');
            clip(area.clip());
            path(area.path());
        } else if (ink instanceof Ink.Lettered text) {
            letters(text);
        }
    }

    private void stroke(BasicStroke stroke) {
        body.append(" stroke-width=\"").append(fine(stroke.getLineWidth())).append("\" stroke-linejoin=\"round\"");
        float[] dashes = stroke.getDashArray();
        if (dashes != null) {
            body.append(" stroke-dasharray=\"");
            for (int i = 0; i < dashes.length; i++) {
                body.append(i == 0 ? "" : " ").append(fine(dashes[i]));
            }
            body.append('"');
        }
    }

    private void clip(Rectangle2D clip) {
        if (clip.equals(sheet.whole())) {
            return;
        }
        String id = clips.computeIfAbsent(clip, c -> {
            String fresh = prefix + "c" + clips.size();
            definitions.append("<clipPath id=\"%s\"><path d=\"M%s %sh%sv%sh%sz\"/></clipPath>\n"
                    .formatted(
                            fresh,
                            fine(c.getX()),
                            fine(c.getY()),
                            fine(c.getWidth()),
                            fine(c.getHeight()),
                            -fine(c.getWidth())));
            return fresh;
        });
        body.append(" clip-path=\"url(#").append(id).append(")\"");
    }

    private void path(Shape shape) {
        body.append(" d=\"");
        appendPath(body, shape, FINE);
        body.append("\"/>\n");
    }

    private void letters(Ink.Lettered text) {
        GlyphVector set = text.face().glyphs(text.text());
        double scale = text.size() * FINE / GLYPH_EM;
        body.append("<g fill=\"")
                .append(hex(text.colour()))
                .append("\" transform=\"translate(")
                .append(fine(text.x()))
                .append(' ')
                .append(fine(text.y()))
                .append(text.upright() ? ")rotate(-90)scale(" : ")scale(")
                .append(String.format(Locale.ROOT, "%.4f", scale))
                .append(")\">");
        for (int i = 0; i < set.getNumGlyphs(); i++) {
            if (set.getGlyphOutline(i).getPathIterator(null).isDone()) {
                continue;
            }
            long x = Math.round(set.getGlyphPosition(i).getX() * GLYPH_EM / Face.EM);
            body.append("<use href=\"#")
                    .append(glyph(text.face(), set.getGlyphCode(i), text.text().charAt(i)))
                    .append(x == 0 ? "\"/>" : "\" x=\"" + x + "\"/>");
        }
        body.append("</g>\n");
    }

    private String glyph(Face face, int code, char character) {
        return glyphs.computeIfAbsent(new GlyphKey(face, code), key -> {
            String fresh = prefix + "g" + glyphs.size();
            definitions.append("<path id=\"").append(fresh).append("\" d=\"");
            Shape outline = face.glyphs(String.valueOf(character)).getOutline();
            appendPath(definitions, outline, GLYPH_EM / Face.EM);
            definitions.append("\"/>\n");
            return fresh;
        });
    }

    /** Whole numbers, each relative to the point before, so that rounding does not add up. */
    private static void appendPath(StringBuilder out, Shape shape, double scale) {
        double[] c = new double[6];
        long[] at = {0, 0, 0, 0};
        char last = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            char command = "MlqcZ".charAt(kind);
            if (kind == PathIterator.SEG_CLOSE) {
                out.append('Z');
                at[0] = at[2];
                at[1] = at[3];
                last = command;
                continue;
            }
            if (command != last || command == 'M') {
                out.append(command);
            }
            int count = kind == PathIterator.SEG_MOVETO ? 2 : 2 * kind;
            long baseX = kind == PathIterator.SEG_MOVETO ? 0 : at[0];
            long baseY = kind == PathIterator.SEG_MOVETO ? 0 : at[1];
            boolean first = command != last || command == 'M';
            for (int i = 0; i < count; i += 2) {
                at[0] = Math.round(c[i] * scale);
                at[1] = Math.round(c[i + 1] * scale);
                first = append(out, at[0] - baseX, first);
                first = append(out, at[1] - baseY, first);
            }
            if (kind == PathIterator.SEG_MOVETO) {
                at[2] = at[0];
                at[3] = at[1];
            }
            last = command;
        }
    }

    private static boolean append(StringBuilder out, long value, boolean first) {
        if (!first && value >= 0) {
            out.append(' ');
        }
        out.append(value);
        return false;
    }

    private static long fine(double points) {
        return Math.round(points * FINE);
    }

    private static String millimetres(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
    }

    private static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                default -> {
                    boolean allowed = (c >= 0x20 && c < 0xD800) || (c >= 0xE000 && c < 0xFFFE) || c > 0xFFFF;
                    out.appendCodePoint(allowed ? c : ' ');
                }
            }
        });
        return out.toString();
    }
}
