package org.ridewright.figure;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

class FigureWriterTest {
    private final FigureWriter writer = new FigureWriter();

    @Test
    void svgIsWellFormedAndHasItsPrintedSize() throws Exception {
        for (Figure figure : SampleFigures.all()) {
            Document svg = parsed(writer.svg(figure));
            assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("170mm");
            assertThat(Double.parseDouble(
                            svg.getDocumentElement().getAttribute("height").replace("mm", "")))
                    .isEqualTo(figure.heightMm());
        }
    }

    @Test
    void svgKeepsTitleAndCaptionWhateverTheyHold() throws Exception {
        Figure figure = named("a", "Rise < 50 mm & \"fall\" > 10 mm", "1 < 2 \u0007 && ]]> φ");
        Document svg = parsed(writer.svg(figure));
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo(figure.title());
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("1 < 2   && ]]> φ");
    }

    @Test
    void everyReferenceInAnSvgFindsItsDefinitionAndFiguresOnOnePageShareNoName() throws Exception {
        Set<String> seen = new HashSet<>();
        for (Figure figure : SampleFigures.all()) {
            String text = writer.svg(figure);
            Set<String> defined = new HashSet<>();
            NodeList all = parsed(text).getElementsByTagName("*");
            for (int i = 0; i < all.getLength(); i++) {
                if (all.item(i).getAttributes().getNamedItem("id") != null) {
                    String id = all.item(i).getAttributes().getNamedItem("id").getNodeValue();
                    assertThat(defined.add(id)).isTrue();
                    assertThat(seen.add(id)).isTrue();
                }
            }
            Matcher used = Pattern.compile("#([a-zA-Z][\\w-]*-[gc]\\d+)").matcher(text);
            while (used.find()) {
                assertThat(defined).contains(used.group(1));
            }
        }
    }

    @Test
    void sixPanelsOfTenThousandSamplesMakeASmallSvg() {
        assertThat(writer.svg(SampleFigures.dense()).getBytes(UTF_8)).hasSizeLessThan(300_000);
    }

    @Test
    void pngHasThreeHundredDotsPerInchAndSaysSo() throws IOException {
        Figure figure = SampleFigures.timeTraces();
        byte[] png = writer.png(figure);
        var image = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(image.getWidth()).isEqualTo((int) Math.round(170 / 25.4 * 300));
        assertThat(image.getHeight()).isEqualTo((int) Math.round(75 / 25.4 * 300));
        int at = new String(png, ISO_8859_1).indexOf("pHYs") + 4;
        ByteBuffer density = ByteBuffer.wrap(png, at, 9);
        assertThat(density.getInt() * 0.0254).isCloseTo(300, within(0.02));
        assertThat(density.getInt() * 0.0254).isCloseTo(300, within(0.02));
        assertThat(density.get()).isEqualTo((byte) 1);
    }

    @Test
    void pngShowsInkOnWhite() throws IOException {
        var image = ImageIO.read(new ByteArrayInputStream(writer.png(SampleFigures.timeTraces())));
        assertThat(image.getRGB(0, 0) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        int rust = Tone.RUST.colour().getRGB();
        long found = java.util.stream.IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) == rust)
                .count();
        assertThat(found).isGreaterThan(1000);
    }

    @Test
    void pdfIsOnePageOfThePrintedSizeWithATrueTableOfObjects() {
        String pdf = new String(writer.pdf(SampleFigures.timeTraces()), ISO_8859_1);
        assertThat(pdf).startsWith("%PDF-1.5").endsWith("%%EOF\n").contains("/Count 1");
        Matcher box = Pattern.compile("MediaBox\\[0 0 ([\\d.]+) ([\\d.]+)]").matcher(pdf);
        assertThat(box.find()).isTrue();
        assertThat(Double.parseDouble(box.group(1))).isCloseTo(170 / 25.4 * 72, within(0.01));
        assertThat(Double.parseDouble(box.group(2))).isCloseTo(75 / 25.4 * 72, within(0.01));
        Matcher start = Pattern.compile("startxref\n(\\d+)\n").matcher(pdf);
        assertThat(start.find()).isTrue();
        assertThat(pdf.substring(Integer.parseInt(start.group(1)))).startsWith("xref\n0 6\n");
        Matcher entry = Pattern.compile("(\\d{10}) 00000 n").matcher(pdf);
        for (int number = 1; number <= 5; number++) {
            assertThat(entry.find()).isTrue();
            assertThat(pdf.substring(Integer.parseInt(entry.group(1)))).startsWith(number + " 0 obj\n");
        }
    }

    @Test
    void theSameFigureGivesTheSameBytesAloneAndBesideOthers() {
        List<FigureFiles> together = writer.files(SampleFigures.all());
        for (int i = 0; i < together.size(); i++) {
            Figure figure = SampleFigures.all().get(i);
            FigureFiles files = together.get(i);
            assertThat(files.fileName()).isEqualTo(figure.fileName());
            assertThat(files.svg()).isEqualTo(writer.svg(figure));
            assertThat(files.pdf()).isEqualTo(writer.pdf(figure));
        }
        assertThat(together.get(0).png())
                .isEqualTo(writer.png(SampleFigures.all().get(0)));
    }

    @Test
    void numbersDoNotDependOnTheLanguageOfTheMachine() {
        java.util.Locale before = java.util.Locale.getDefault();
        String plain = writer.svg(SampleFigures.measured());
        byte[] pdf = writer.pdf(SampleFigures.measured());
        try {
            java.util.Locale.setDefault(java.util.Locale.forLanguageTag("ar-EG"));
            assertThat(writer.svg(SampleFigures.measured())).isEqualTo(plain);
            assertThat(writer.pdf(SampleFigures.measured())).isEqualTo(pdf);
        } finally {
            java.util.Locale.setDefault(before);
        }
    }

    private static Figure named(String fileName, String title, String caption) {
        Series series = Series.line(0, "a", new double[] {0, 1}, new double[] {0, 1});
        Panel panel = Panel.of("", AxisSpec.of("Time", "s"), AxisSpec.of("Travel", "mm"), series);
        return Figure.stacked(fileName, title, caption, 60, panel);
    }

    private static Document parsed(String svg) throws ParserConfigurationException, SAXException, IOException {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(UTF_8)));
    }
}
