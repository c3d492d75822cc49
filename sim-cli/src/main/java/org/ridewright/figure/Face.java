package org.ridewright.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The cuts of the typeface that comes with the program, so that figures look the same on every machine. */
final class Face {
    /** Units of a glyph outline per em. */
    static final int EM = 1000;

    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

    /** Labels and numbers. */
    static final Face REGULAR = new Face("LiberationSans-Regular.ttf");

    /** Titles. */
    static final Face BOLD = new Face("LiberationSans-Bold.ttf");

    /** Texts of markers and levels. */
    static final Face ITALIC = new Face("LiberationSans-Italic.ttf");

    private final Font font;

    private Face(String resource) {
        try (InputStream in = Face.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("typeface %s is missing from the program".formatted(resource));
            }
            font = Font.createFont(Font.TRUETYPE_FONT, new BufferedInputStream(in))
                    .deriveFont((float) EM);
        } catch (IOException e) {
            throw new UncheckedIOException("typeface %s cannot be read".formatted(resource), e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("typeface %s is damaged".formatted(resource), e);
        }
    }

    /**
     * Outlines and places of the glyphs of a text that starts at the origin.
     *
     * @param text one line
     * @return glyphs in units of 1/{@value #EM} em, y down
     */
    GlyphVector glyphs(String text) {
        return font.createGlyphVector(UNHINTED, text);
    }

    /**
     * Advance width of a text.
     *
     * @param text one line
     * @param size type size (pt)
     * @return width (pt)
     */
    double width(String text, double size) {
        if (text.isEmpty()) {
            return 0;
        }
        GlyphVector glyphs = glyphs(text);
        return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX() * size / EM;
    }

    /**
     * Whether each character has a glyph.
     *
     * @param text any text
     * @return true if nothing would print as an empty box
     */
    boolean covers(String text) {
        return font.canDisplayUpTo(text) < 0;
    }
}
