package org.ridewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.io.VehicleDocument;
import org.ridewright.narrowing.Answer;
import org.ridewright.narrowing.Narrowing;
import org.ridewright.narrowing.UncertainValue;
import org.ridewright.narrowing.UncertainValues;
import org.ridewright.vehicle.Vehicle;

class FieldSheetTest {
    /** The wheelbase and nothing else: what the sheet shows of an answer does not hang on which. */
    private static final class Wheelbase implements Answer {
        @Override
        public List<Figure> figures() {
            return List.of(new Figure("wheelbase", "m"));
        }

        @Override
        public String asked() {
            return "How long is it?";
        }

        @Override
        public List<Double> of(Vehicle vehicle) {
            return List.of(vehicle.axles()
                    .get(vehicle.axles().size() - 1)
                    .behindFrontAxle()
                    .value());
        }
    }

    private static VehicleDocument document(String name) {
        return VehicleDocument.read(Path.of("..", "scenarios", "vehicles", name + ".yaml"));
    }

    private static FieldSheet sheet(VehicleDocument document) {
        Answer answer = new Wheelbase();
        return FieldSheet.of(
                document.asWritten(), Narrowing.of(document.asWritten(), guesses(document), answer), answer);
    }

    private static List<UncertainValue> guesses(VehicleDocument document) {
        return UncertainValues.of(document).stream()
                .filter(UncertainValue::isGuess)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"phaeton", "dray", "lorry", "van", "saloon", "trailer"})
    void aVehiclesSheetHasEveryGuessUnderItsKeyAndSaysHowToMeasure(String name) throws IOException {
        VehicleDocument document = document(name);
        FieldSheet sheet = sheet(document);
        String page = sheet.html();
        for (UncertainValue value : guesses(document)) {
            String key = ValueNames.named(document.asWritten(), value.path());
            assertThat(page).contains(">" + key.replace("'", "&#39;") + "</div>");
        }
        assertThat(sheet.dimensions()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.what()).isNotBlank();
            assertThat(row.how()).isNotBlank();
            assertThat(row.precision()).startsWith("±");
            assertThat(row.key()).isNotBlank();
        });
        assertThat(sheet.dimensions()).extracting(Dimension::letter).doesNotHaveDuplicates();
        printed(sheet);
    }

    @Test
    void eachTableOfWhatToMeasureFirstIsNumberedByItselfAndNamesTheThingBeforeItsKey() {
        VehicleDocument document = document("phaeton");
        Answer answer = new Wheelbase();
        Vehicle vehicle = document.asWritten();
        Narrowing narrowing = Narrowing.of(vehicle, UncertainValues.of(document), answer);
        assertThat(PriorityTable.guesses(vehicle, narrowing).get(0)).containsEntry("rank", "1");
        assertThat(PriorityTable.stated(vehicle, narrowing).get(0)).containsEntry("rank", "1");
        assertThat(ValueNames.plain(vehicle, "axles[0].springs[0].rate")).isEqualTo("front springs: rate");
        assertThat(ValueNames.plain(vehicle, "axles[1].springs[0].friction.share of load"))
                .isEqualTo("rear springs: friction, share of load");
        assertThat(ValueNames.plain(vehicle, "seats[0].cushion.rate")).isEqualTo("driver's place: cushion, rate");
        assertThat(ValueNames.plain(vehicle, "axles[1].unsprung mass")).isEqualTo("rear axle: unsprung mass");
        assertThat(ValueNames.plain(vehicle, "body.pitch inertia")).isEqualTo("body: pitch inertia");
    }

    @Test
    void aBlankSheetAsksForEveryKindOfMeasurementAndWarns() throws IOException {
        List<String> pages = printed(FieldSheet.blank());
        String all = String.join("\n", pages).replaceAll("\\s+", " ");
        assertThat(all)
                .contains(
                        "Nobody beneath a body that stands on its springs",
                        "Brake on, wheels chocked",
                        "Horse out of the shafts",
                        "Heights of four corners",
                        "Load and deflection",
                        "going up",
                        "going down",
                        "cycles to rest",
                        "watch as you let go",
                        "chocks tight before and behind every wheel",
                        "settled from below",
                        "settled from above",
                        "Phone logs",
                        "readings a second",
                        "the rider's words")
                .doesNotContain("What to measure first");
    }

    @Test
    void namesThatLookLikeMarkupDoNoHarm() throws IOException {
        VehicleDocument document = document("phaeton");
        Vehicle odd = document.asWritten()
                .seated("Cart <b>\"\\ & } </style>", document.asWritten().seats());
        Answer answer = new Wheelbase();
        FieldSheet sheet = FieldSheet.of(odd, Narrowing.of(odd, guesses(document), answer), answer);
        assertThat(sheet.html()).contains("Cart &lt;b&gt;").doesNotContain("Cart <b>");
        printed(sheet);
    }

    /** Pages of the PDF, each A4 upright, none without text beside its foot. */
    private static List<String> printed(FieldSheet sheet) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(sheet.pdf())) {
            List<String> pages = new ArrayList<>();
            for (int page : IntStream.rangeClosed(1, pdf.getNumberOfPages()).toArray()) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(pdf);
                pages.add(text);
                PDRectangle size = pdf.getPage(page - 1).getMediaBox();
                assertThat(size.getWidth()).isBetween(594f, 597f);
                assertThat(size.getHeight()).isBetween(840f, 843f);
                String foot = String.format(Locale.ROOT, "page %d of %d", page, pdf.getNumberOfPages());
                assertThat(text).contains(foot);
                assertThat(text.length()).as("text of page " + page).isGreaterThan(200);
            }
            return pages;
        }
    }
}
