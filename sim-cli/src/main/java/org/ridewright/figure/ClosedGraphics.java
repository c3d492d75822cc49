package org.ridewright.figure;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;

/**
 * Graphics that refuse everything: a subclass opens what it can do, and a drawing library that asks for more is told so
 * rather than left out silently. Its length is that of the interface.
 */
abstract class ClosedGraphics extends Graphics2D {

    private static UnsupportedOperationException refused(String what) {
        return new UnsupportedOperationException("the sheet does not take %s".formatted(what));
    }

    @Override
    public Graphics create() {
        throw refused("create");
    }

    @Override
    public void translate(int x, int y) {
        throw refused("translate");
    }

    @Override
    public void translate(double tx, double ty) {
        throw refused("translate");
    }

    @Override
    public void rotate(double theta) {
        throw refused("rotate");
    }

    @Override
    public void rotate(double theta, double x, double y) {
        throw refused("rotate");
    }

    @Override
    public void scale(double sx, double sy) {
        throw refused("scale");
    }

    @Override
    public void shear(double shx, double shy) {
        throw refused("shear");
    }

    @Override
    public void transform(AffineTransform t) {
        throw refused("transform");
    }

    @Override
    public void setTransform(AffineTransform t) {
        throw refused("setTransform");
    }

    @Override
    public AffineTransform getTransform() {
        throw refused("getTransform");
    }

    @Override
    public Color getColor() {
        throw refused("getColor");
    }

    @Override
    public void setColor(Color c) {
        throw refused("setColor");
    }

    @Override
    public void setPaintMode() {
        throw refused("setPaintMode");
    }

    @Override
    public void setXORMode(Color c) {
        throw refused("setXORMode");
    }

    @Override
    public Font getFont() {
        throw refused("getFont");
    }

    @Override
    public void setFont(Font font) {
        throw refused("setFont");
    }

    @Override
    public FontMetrics getFontMetrics(Font f) {
        throw refused("getFontMetrics");
    }

    @Override
    public Rectangle getClipBounds() {
        throw refused("getClipBounds");
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        throw refused("clipRect");
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        throw refused("setClip");
    }

    @Override
    public Shape getClip() {
        throw refused("getClip");
    }

    @Override
    public void setClip(Shape clip) {
        throw refused("setClip");
    }

    @Override
    public void clip(Shape s) {
        throw refused("clip");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw refused("copyArea");
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        throw refused("drawLine");
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        throw refused("fillRect");
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        throw refused("clearRect");
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw refused("drawRoundRect");
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        throw refused("fillRoundRect");
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        throw refused("drawOval");
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        throw refused("fillOval");
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int startAngle, int arcAngle) {
        throw refused("drawArc");
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int startAngle, int arcAngle) {
        throw refused("fillArc");
    }

    @Override
    public void drawPolyline(int[] xPoints, int[] yPoints, int nPoints) {
        throw refused("drawPolyline");
    }

    @Override
    public void drawPolygon(int[] xPoints, int[] yPoints, int nPoints) {
        throw refused("drawPolygon");
    }

    @Override
    public void fillPolygon(int[] xPoints, int[] yPoints, int nPoints) {
        throw refused("fillPolygon");
    }

    @Override
    public void drawString(String str, int x, int y) {
        throw refused("drawString");
    }

    @Override
    public void drawString(String str, float x, float y) {
        throw refused("drawString");
    }

    @Override
    public void drawString(AttributedCharacterIterator iterator, int x, int y) {
        throw refused("drawString");
    }

    @Override
    public void drawString(AttributedCharacterIterator iterator, float x, float y) {
        throw refused("drawString");
    }

    @Override
    public void drawGlyphVector(GlyphVector g, float x, float y) {
        throw refused("drawGlyphVector");
    }

    @Override
    public boolean drawImage(Image img, AffineTransform xform, ImageObserver obs) {
        throw refused("drawImage");
    }

    @Override
    public void drawImage(BufferedImage img, BufferedImageOp op, int x, int y) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(Image img, int x, int y, ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(Image img, int x, int y, int width, int height, ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(Image img, int x, int y, Color bgcolor, ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(Image img, int x, int y, int width, int height, Color bgcolor, ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(
            Image img, int dx1, int dy1, int dx2, int dy2, int sx1, int sy1, int sx2, int sy2, ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public boolean drawImage(
            Image img,
            int dx1,
            int dy1,
            int dx2,
            int dy2,
            int sx1,
            int sy1,
            int sx2,
            int sy2,
            Color bgcolor,
            ImageObserver observer) {
        throw refused("drawImage");
    }

    @Override
    public void drawRenderedImage(RenderedImage img, AffineTransform xform) {
        throw refused("drawRenderedImage");
    }

    @Override
    public void drawRenderableImage(RenderableImage img, AffineTransform xform) {
        throw refused("drawRenderableImage");
    }

    @Override
    public void dispose() {
        // nothing is held
    }

    @Override
    public void draw(Shape s) {
        throw refused("draw");
    }

    @Override
    public void fill(Shape s) {
        throw refused("fill");
    }

    @Override
    public boolean hit(Rectangle rect, Shape s, boolean onStroke) {
        throw refused("hit");
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw refused("getDeviceConfiguration");
    }

    @Override
    public void setComposite(Composite comp) {
        throw refused("setComposite");
    }

    @Override
    public Composite getComposite() {
        throw refused("getComposite");
    }

    @Override
    public void setPaint(Paint paint) {
        throw refused("setPaint");
    }

    @Override
    public Paint getPaint() {
        throw refused("getPaint");
    }

    @Override
    public void setStroke(Stroke s) {
        throw refused("setStroke");
    }

    @Override
    public Stroke getStroke() {
        throw refused("getStroke");
    }

    @Override
    public void setRenderingHint(RenderingHints.Key hintKey, Object hintValue) {
        throw refused("setRenderingHint");
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key hintKey) {
        throw refused("getRenderingHint");
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        throw refused("setRenderingHints");
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        throw refused("addRenderingHints");
    }

    @Override
    public RenderingHints getRenderingHints() {
        throw refused("getRenderingHints");
    }

    @Override
    public void setBackground(Color color) {
        throw refused("setBackground");
    }

    @Override
    public Color getBackground() {
        throw refused("getBackground");
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        throw refused("getFontRenderContext");
    }
}
