package org.ridewright.figure;

import java.util.List;

/**
 * Makes files of figures. Every format is drawn from the same outlines and is the same, byte for byte, each time. Safe for
 * use from several threads.
 */
public final class FigureWriter {

    /**
     * SVG of a figure, for a file or for embedding in a page.
     *
     * @param figure what
     * @return an SVG element with its size in millimetres
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    public String svg(Figure figure) {
        return SvgFormat.write(FigurePainter.paint(figure), figure);
    }

    /**
     * PNG of a figure at 300 dots per inch.
     *
     * @param figure what
     * @return the file
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    public byte[] png(Figure figure) {
        return PngFormat.write(FigurePainter.paint(figure), figure.title());
    }

    /**
     * PDF of a figure, one page of its size.
     *
     * @param figure what
     * @return the file
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    public byte[] pdf(Figure figure) {
        return PdfFormat.write(FigurePainter.paint(figure), figure.title(), figure.caption());
    }

    /**
     * All formats of a figure, drawn once.
     *
     * @param figure what
     * @return the three files
     * @throws IllegalArgumentException if the figure is too small for what it must hold
     */
    public FigureFiles files(Figure figure) {
        Sheet sheet = FigurePainter.paint(figure);
        return new FigureFiles(
                figure.fileName(),
                SvgFormat.write(sheet, figure),
                PngFormat.write(sheet, figure.title()),
                PdfFormat.write(sheet, figure.title(), figure.caption()));
    }

    /**
     * All formats of many figures, several at a time.
     *
     * @param figures what
     * @return files in the order of the figures
     * @throws IllegalArgumentException if a figure is too small for what it must hold
     */
    public List<FigureFiles> files(List<Figure> figures) {
        return figures.parallelStream().map(this::files).toList();
    }
}
