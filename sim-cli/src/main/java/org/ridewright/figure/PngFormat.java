package org.ridewright.figure;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Puts a sheet into a PNG of 300 dots per inch, with the density recorded. Source: ISO/IEC 15948:2004. */
final class PngFormat {
    static final int DPI = 300;

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private PngFormat() {}

    /**
     * Writes a sheet.
     *
     * @param sheet what
     * @param title kept in the file
     * @return the file
     */
    static byte[] write(Sheet sheet, String title) {
        BufferedImage image = raster(sheet);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
        out.writeBytes(SIGNATURE);
        // 8 bits, true colour, deflate, adaptive filters, not interlaced
        chunk(
                out,
                "IHDR",
                ByteBuffer.allocate(13)
                        .putInt(image.getWidth())
                        .putInt(image.getHeight())
                        .put(new byte[] {8, 2, 0, 0, 0})
                        .array());
        int perMetre = (int) Math.round(DPI / 0.0254);
        chunk(
                out,
                "pHYs",
                ByteBuffer.allocate(9)
                        .putInt(perMetre)
                        .putInt(perMetre)
                        .put((byte) 1)
                        .array());
        chunk(out, "iTXt", ("Title\0\0\0\0\0" + title).getBytes(UTF_8));
        chunk(out, "IDAT", deflated(image));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static BufferedImage raster(Sheet sheet) {
        double scale = DPI / 72.0;
        int width = (int) Math.round(sheet.width() * scale);
        int height = (int) Math.round(sheet.height() * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.scale(scale, scale);
        for (Ink ink : sheet.inks()) {
            draw(g, ink);
        }
        g.dispose();
        return image;
    }

    static void draw(Graphics2D g, Ink ink) {
        if (ink instanceof Ink.Stroked line) {
            g.setClip(line.clip());
            g.setColor(line.colour());
            g.setStroke(line.stroke());
            g.draw(line.path());
        } else if (ink instanceof Ink.Filled area) {
            g.setClip(area.clip());
            g.setColor(area.colour());
            g.fill(area.path());
        } else if (ink instanceof Ink.Lettered text) {
            g.setClip(null);
            g.setColor(text.colour());
            AffineTransform place = placeOf(text);
            g.fill(place.createTransformedShape(text.face().glyphs(text.text()).getOutline()));
        }
    }

    /** From units of a glyph outline at the start of a text to the sheet. */
    static AffineTransform placeOf(Ink.Lettered text) {
        AffineTransform place = AffineTransform.getTranslateInstance(text.x(), text.y());
        if (text.upright()) {
            place.quadrantRotate(-1);
        }
        place.scale(text.size() / Face.EM, text.size() / Face.EM);
        return place;
    }

    private static byte[] deflated(BufferedImage image) {
        int width = image.getWidth();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        byte[] row = new byte[1 + 3 * width];
        byte[] previous = new byte[3 * width];
        row[0] = 2; // each byte as the difference from the one above: lines and white become zeros
        Deflater deflater = new Deflater(5);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
        byte[] buffer = new byte[1 << 15];
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < width; x++) {
                int rgb = pixels[y * width + x];
                for (int c = 0; c < 3; c++) {
                    int at = 3 * x + c;
                    byte value = (byte) (rgb >> (16 - 8 * c));
                    row[1 + at] = (byte) (value - previous[at]);
                    previous[at] = value;
                }
            }
            deflater.setInput(row);
            while (!deflater.needsInput()) {
                out.write(buffer, 0, deflater.deflate(buffer));
            }
        }
        deflater.finish();
        while (!deflater.finished()) {
            out.write(buffer, 0, deflater.deflate(buffer));
        }
        deflater.end();
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(name);
        crc.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}
