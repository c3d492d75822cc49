package org.ridewright.figure;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16BE;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.zip.Deflater;

/**
 * Puts a sheet into a one-page PDF of outlines, without a date, so that the same figure gives the same bytes.
 * Source: ISO 32000-1:2008, sections 7 (file) and 8 (graphics).
 */
final class PdfFormat {
    private final StringBuilder content = new StringBuilder(1 << 16);
    private final Sheet sheet;
    private Color colour = Color.BLACK;
    private BasicStroke stroke = new BasicStroke();

    private PdfFormat(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Writes a sheet.
     *
     * @param sheet what
     * @param title kept in the file
     * @param caption kept in the file
     * @return the file
     */
    static byte[] write(Sheet sheet, String title, String caption) {
        PdfFormat format = new PdfFormat(sheet);
        return file(sheet, format.content(), title, caption);
    }

    private String content() {
        content.append("1 0 0 -1 0 ").append(number(sheet.height())).append(" cm 1 j 0 0 0 RG 0 0 0 rg\n");
        Rectangle2D clip = sheet.whole();
        for (Ink ink : sheet.inks()) {
            Rectangle2D wanted = clipOf(ink);
            if (!wanted.equals(clip)) {
                changeClip(clip, wanted);
                clip = wanted;
            }
            draw(ink);
        }
        if (!clip.equals(sheet.whole())) {
            content.append("Q\n");
        }
        return content.toString();
    }

    private Rectangle2D clipOf(Ink ink) {
        if (ink instanceof Ink.Stroked line) {
            return line.clip();
        }
        return ink instanceof Ink.Filled area ? area.clip() : sheet.whole();
    }

    private void changeClip(Rectangle2D from, Rectangle2D to) {
        if (!from.equals(sheet.whole())) {
            content.append("Q\n");
        }
        if (!to.equals(sheet.whole())) {
            content.append("q ");
            numbers(to.getX(), to.getY(), to.getWidth(), to.getHeight());
            content.append("re W n\n");
        }
        // saved and restored states bring back other pens
        colour = new Color(0, 0, 0, 0);
        stroke = new BasicStroke(0);
    }

    private void draw(Ink ink) {
        if (ink instanceof Ink.Stroked line) {
            use(line.colour());
            use(line.stroke());
            path(line.path());
            content.append("S\n");
        } else if (ink instanceof Ink.Filled area) {
            use(area.colour());
            path(area.path());
            content.append("f\n");
        } else if (ink instanceof Ink.Lettered text) {
            use(text.colour());
            path(PngFormat.placeOf(text)
                    .createTransformedShape(text.face().glyphs(text.text()).getOutline()));
            content.append("f\n");
        }
    }

    private void use(Color wanted) {
        if (!wanted.equals(colour)) {
            colour = wanted;
            float[] rgb = wanted.getRGBColorComponents(null);
            for (String operator : List.of("rg ", "RG ")) {
                numbers3(rgb[0], rgb[1], rgb[2]);
                content.append(operator);
            }
        }
    }

    private void use(BasicStroke wanted) {
        if (!wanted.equals(stroke)) {
            stroke = wanted;
            content.append(number(wanted.getLineWidth())).append(" w [");
            float[] dashes = wanted.getDashArray();
            if (dashes != null) {
                for (float dash : dashes) {
                    content.append(number(dash)).append(' ');
                }
            }
            content.append("] 0 d ");
        }
    }

    private void path(Shape shape) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> point(c[0], c[1], "m ");
                case PathIterator.SEG_LINETO -> point(c[0], c[1], "l ");
                case PathIterator.SEG_QUADTO -> {
                    // the same parabola as a cubic
                    numbers(x + 2 * (c[0] - x) / 3, y + 2 * (c[1] - y) / 3);
                    numbers(c[2] + 2 * (c[0] - c[2]) / 3, c[3] + 2 * (c[1] - c[3]) / 3);
                    point(c[2], c[3], "c ");
                    c[0] = c[2];
                    c[1] = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    numbers(c[0], c[1], c[2], c[3]);
                    point(c[4], c[5], "c ");
                    c[0] = c[4];
                    c[1] = c[5];
                }
                default -> content.append("h ");
            }
            x = c[0];
            y = c[1];
        }
    }

    private void point(double x, double y, String operator) {
        numbers(x, y);
        content.append(operator);
    }

    private void numbers(double... values) {
        for (double value : values) {
            content.append(number(value)).append(' ');
        }
    }

    private void numbers3(double... values) {
        for (double value : values) {
            content.append(String.format(Locale.ROOT, "%.4f ", value));
        }
    }

    /** A number to a hundredth of a point. */
    private static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        long size = Math.abs(hundredths);
        long rest = size % 100;
        return (hundredths < 0 ? "-" : "") + size / 100 + (rest < 10 ? ".0" : ".") + rest;
    }

    private static byte[] file(Sheet sheet, String content, String title, String caption) {
        byte[] packed = packed(content.getBytes(ISO_8859_1));
        ByteArrayOutputStream out = new ByteArrayOutputStream(packed.length + 2048);
        List<Integer> places = new ArrayList<>();
        write(out, "%PDF-1.5\n%\u00E2\u00E3\u00CF\u00D3\n");
        object(out, places, "<</Type/Catalog/Pages 2 0 R>>");
        object(out, places, "<</Type/Pages/Kids[3 0 R]/Count 1>>");
        object(
                out,
                places,
                "<</Type/Page/Parent 2 0 R/MediaBox[0 0 %s %s]/Resources<<>>/Contents 4 0 R>>"
                        .formatted(number(sheet.width()), number(sheet.height())));
        places.add(out.size());
        write(out, "4 0 obj\n<</Length %s/Filter/FlateDecode>>\nstream\n".formatted(packed.length));
        out.writeBytes(packed);
        write(out, "\nendstream\nendobj\n");
        object(out, places, "<</Title %s/Subject %s>>".formatted(text(title), text(caption)));
        int start = out.size();
        StringBuilder table = new StringBuilder("xref\n0 6\n0000000000 65535 f \n");
        for (int place : places) {
            table.append(String.format(Locale.ROOT, "%010d 00000 n \n", place));
        }
        write(out, table + "trailer\n<</Size 6/Root 1 0 R/Info 5 0 R>>\nstartxref\n" + start + "\n%%EOF\n");
        return out.toByteArray();
    }

    private static void object(ByteArrayOutputStream out, List<Integer> places, String body) {
        places.add(out.size());
        write(out, places.size() + " 0 obj\n" + body + "\nendobj\n");
    }

    private static void write(ByteArrayOutputStream out, String text) {
        out.writeBytes(text.getBytes(ISO_8859_1));
    }

    private static String text(String value) {
        return "<FEFF" + HexFormat.of().withUpperCase().formatHex(value.getBytes(UTF_16BE)) + ">";
    }

    private static byte[] packed(byte[] raw) {
        Deflater deflater = new Deflater(6);
        deflater.setInput(raw);
        deflater.finish();
        ByteArrayOutputStream out = new ByteArrayOutputStream(raw.length / 2);
        byte[] buffer = new byte[1 << 15];
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }
}
