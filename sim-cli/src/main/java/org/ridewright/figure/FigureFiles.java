package org.ridewright.figure;

/** One figure in the three formats. The arrays are handed over; the caller writes them. */
public final class FigureFiles {
    private final String fileName;
    private final String svg;
    private final byte[] png;
    private final byte[] pdf;

    FigureFiles(String fileName, String svg, byte[] png, byte[] pdf) {
        this.fileName = fileName;
        this.svg = svg;
        this.png = png;
        this.pdf = pdf;
    }

    /**
     * Name without extension.
     *
     * @return the file name of the figure
     */
    public String fileName() {
        return fileName;
    }

    /**
     * Vector drawing for the web and for embedding in a page.
     *
     * @return an SVG element, to be written in UTF-8
     */
    public String svg() {
        return svg;
    }

    /**
     * Raster of 300 dots per inch.
     *
     * @return a copy of the file
     */
    public byte[] png() {
        return png.clone();
    }

    /**
     * Vector drawing for print.
     *
     * @return a copy of the file
     */
    public byte[] pdf() {
        return pdf.clone();
    }
}
