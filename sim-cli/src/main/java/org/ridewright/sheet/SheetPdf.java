package org.ridewright.sheet;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.ridewright.figure.Sketch;

/** Sets the page of a sheet on paper. */
final class SheetPdf {
    private static final String FAMILY = "Liberation Sans";
    private static final String TYPE = "application/x-sketch-";

    /** Looks for typefaces of the machine, which the sheet does not use, and warns of those that are missing. Held, so that its level stays. */
    private static final Logger PDFBOX = Logger.getLogger("org.apache.pdfbox");

    private SheetPdf() {}

    /** What stands in the page where a drawing is to be painted. */
    static String placeOf(Sketch sketch) {
        return String.format(
                Locale.ROOT,
                "<object type=\"%s%s\" style=\"width:%.2fmm;height:%.2fmm\"></object>",
                TYPE,
                sketch.name(),
                sketch.width(),
                sketch.height());
    }

    static byte[] write(String page, List<Sketch> sketches) {
        XRLog.setLoggingEnabled(false);
        PDFBOX.setLevel(Level.SEVERE);
        DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
        sketches.forEach(sketch -> drawers.registerDrawer(TYPE + sketch.name(), drawer(sketch)));
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .withHtmlContent(page, null)
                .useFont(() -> font("Regular"), FAMILY, 400, FontStyle.NORMAL, true)
                .useFont(() -> font("Bold"), FAMILY, 700, FontStyle.NORMAL, true)
                .useFont(() -> font("Italic"), FAMILY, 400, FontStyle.ITALIC, true)
                .useObjectDrawerFactory(drawers)
                .withProducer("Ridewright");
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Points of the drawing are spread over the place that the page has for it. */
    private static FSObjectDrawer drawer(Sketch sketch) {
        return (element, x, y, width, height, device, context, dotsPerPixel) -> {
            device.drawWithGraphics(
                    (float) x, (float) y, (float) width / dotsPerPixel, (float) height / dotsPerPixel, graphics -> {
                        double scale = width / dotsPerPixel / (sketch.width() * 72 / 25.4);
                        graphics.scale(scale, scale);
                        sketch.paint(graphics);
                    });
            return null;
        };
    }

    private static InputStream font(String cut) {
        InputStream in = Sketch.class.getResourceAsStream("LiberationSans-" + cut + ".ttf");
        if (in == null) {
            throw new IllegalStateException("the typeface is missing from the program: " + cut);
        }
        return in;
    }
}
