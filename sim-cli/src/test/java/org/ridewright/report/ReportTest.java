package org.ridewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.Peak;
import org.ridewright.ride.RideResult.PointResult;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.Scenario;

class ReportTest {
    private static final Rides GATE = Rides.GATE;

    @Test
    void textOfTheUserIsShownAsTextAndNeverRun() {
        Scenario scenario = GATE.named("A <script>alert(1)</script> & co", "</p><img src=x onerror=alert(2)>");
        String page = HtmlReport.render(scenario, GATE.results(), List.of());
        assertThat(page)
                .doesNotContain("<script", "<img")
                .contains("A &lt;script&gt;alert(1)&lt;/script&gt; &amp; co", "&lt;img src=x onerror=alert(2)&gt;");
    }

    @Test
    void whatIsNotModelledIsWhatTheseVehiclesLack() {
        List<String> limits = ModelLimits.of(GATE.scenario(), GATE.results());
        assertThat(limits).contains("surge, to and fro, and the speed lost at an obstacle");
        assertThat(limits).contains("changes of speed: the wheels come to everything at the steady speed stated");
        assertThat(limits).doesNotContain("pitch");
        assertThat(HtmlReport.render(GATE.scenario(), GATE.results(), List.of()))
                .contains("Not modelled:", limits.get(0))
                .doesNotContain("words for discomfort are not given");
    }

    @Test
    void springLoopsAreOnEqualAxesAndWheelLoadsShowOneBlow() {
        for (RideResult result : GATE.results()) {
            for (Figure figure : RideFigures.ofTest(result)) {
                if (figure.fileName().endsWith("-spring-loops")) {
                    assertThat(figure.panels().stream().map(Panel::x).distinct())
                            .hasSize(1);
                    assertThat(figure.panels().stream().map(Panel::y).distinct())
                            .hasSize(1);
                } else if (figure.fileName().endsWith("-wheel-loads")) {
                    AxisSpec time = figure.panels().get(0).x();
                    double at = Extremes.heaviestWheel(result).greatest().at();
                    assertThat(time.max().getAsDouble() - time.min().getAsDouble())
                            .isLessThan(2.001);
                    assertThat(at)
                            .isBetween(time.min().getAsDouble(), time.max().getAsDouble());
                }
            }
        }
    }

    @Test
    void numbersOfRidesAreExplainedInTheLegend() {
        Figure missed = MissedFigures.of(GATE.results()).get(0);
        assertThat(missed.panels().get(0).series())
                .extracting(Series::name)
                .contains("1: gateway at 5 km/h", "2: gateway at 12 km/h");
    }

    @Test
    void fileNamesEndWithAWholeWord() {
        assertThat(RideName.slug("Moderately rough ground with a long name that goes on"))
                .isEqualTo("moderately-rough-ground-with-a-long-name");
        assertThat(RideName.slug("x".repeat(50))).hasSize(40);
    }

    @Test
    void pageNeedsNoOtherFile() {
        String page = HtmlReport.render(GATE.scenario(), GATE.results(), List.of());
        assertThat(page).doesNotContain("<link", "src=", "@import", "url(");
        assertThat(page).contains("<h2>Caution</h2>", "kerb", "40 mm");
    }

    @Test
    void figureIsInThePageWithItsCaption() {
        Figure figure =
                FigureGroup.of(GATE.scenario(), GATE.results()).get(0).figures().get(0);
        FigureFiles files = new FigureWriter().files(figure);
        String page = HtmlReport.render(GATE.scenario(), GATE.results(), List.of(files));
        assertThat(page)
                .contains(
                        files.svg().strip(),
                        "<figcaption>" + Unbroken.of(figure.caption()).replace("'", "&#39;"));
    }

    @Test
    void everyFigureHasANameOfItsOwnAndACaptionThatIsASentence() {
        List<Figure> figures = FigureGroup.of(GATE.scenario(), GATE.results()).stream()
                .flatMap(g -> g.figures().stream())
                .toList();
        assertThat(figures).extracting(Figure::fileName).doesNotHaveDuplicates();
        assertThat(figures).allSatisfy(f -> assertThat(f.caption()).matches("[A-Z].*\\d.*\\."));
        // four dray tests and two of the saloon; two paths; one comparison; what surge and sway add
        assertThat(figures).hasSize(6 * 4 + 2 + 1 + 1);
    }

    @Test
    void sentencesSayThatItCannotBeToldOnceNumbersAreWithinWhatTheRunResolves() {
        List<RideResult> apart = scaled(2);
        List<RideResult> alike = scaled(1.004);
        assertThat(Answer.sentences(GATE.scenario(), apart))
                .allSatisfy(s -> assertThat(s).doesNotContain("cannot be told"));
        assertThat(Answer.sentences(GATE.scenario(), alike))
                .allSatisfy(s -> assertThat(s).contains("cannot be told"));
    }

    @Test
    void sentenceNamesTheRougherRideWhicheverItIs() {
        List<RideResult> rising = scaled(2);
        List<RideResult> falling = scaled(0.5);
        assertThat(Answer.sentences(GATE.scenario(), rising).get(1)).contains("rides rougher");
        assertThat(Answer.sentences(GATE.scenario(), falling).get(1)).contains("rides smoother");
    }

    @Test
    void resolutionIsNeverFinerThanOnePerCent() {
        assertThat(GATE.results())
                .allSatisfy(r -> assertThat(Resolution.of(r.model().vehicle()).relative())
                        .isBetween(0.01, 1.0));
    }

    @Test
    void numbersAreJsonWithoutNaN() throws IOException {
        RideResult first = GATE.results().get(0);
        RideResult still = with(
                first,
                List.of(),
                List.of(new PointResult(
                        "p",
                        new Peak(Double.NaN, 0),
                        new Peak(0, 0),
                        new Peak(Double.NaN, 0),
                        new Peak(Double.NaN, 0))));
        String json = MetricsJson.render(
                GATE.scenario(), List.of(still, GATE.results().get(4)));
        JsonNode root = new ObjectMapper().readTree(json);
        assertThat(json).doesNotContain("NaN", "Infinity");
        JsonNode value = root.at("/ride tests/0/points/0/values/0");
        assertThat(value.get("value").isNull()).isTrue();
        assertThat(value.get("unit").asText()).isEqualTo("m/s²");
        JsonNode rms = root.at("/ride tests/1/seats/0/at the seat/z/2");
        assertThat(rms.get("name").asText()).isEqualTo("weighted r.m.s.");
        assertThat(rms.get("value").asDouble()).isPositive();
        JsonNode pitchDose = root.at("/ride tests/1/seats/0/at the seat/pitch/4");
        assertThat(pitchDose.get("name").asText()).isEqualTo("VDV");
        assertThat(pitchDose.get("unit").asText()).isEqualTo("rad/s^1.75");
    }

    @Test
    void wheelLoadsAtRestInTheNumbersCarryTheVehicle() throws IOException {
        JsonNode ride = new ObjectMapper()
                .readTree(MetricsJson.render(GATE.scenario(), GATE.results()))
                .at("/ride tests/4");
        double carried = 0;
        for (JsonNode wheel : ride.get("wheels")) {
            carried += wheel.at("/values/0/value").asDouble();
        }
        double mass = ride.at("/at rest/masses/1/value").asDouble();
        assertThat(carried).isCloseTo(mass * 9.80665, org.assertj.core.data.Percentage.withPercentage(1e-6));
    }

    @Test
    void tracesHaveAHeaderWithUnitsAndALineForEachInstant() {
        RideResult result = GATE.results().get(0);
        List<String> lines = TracesCsv.render(result).lines().toList();
        assertThat(lines.get(0)).startsWith("time (s),body heave (m)").contains("draught (N)");
        assertThat(lines).hasSize(1 + result.traces().get(0).size());
        assertThat(lines.get(1).split(",")).hasSize(1 + result.traces().size());
        assertThat(lines.get(1)).startsWith("0.0,");
    }

    @Test
    void numbersKeepTheirDigits() {
        assertThat(Numbers.of(1234.5)).isEqualTo("1230");
        assertThat(Numbers.of(-0.012345)).isEqualTo("−0.0123");
        assertThat(Numbers.of(9.996)).isEqualTo("10.0");
        assertThat(Numbers.of(3e-9, 2)).isEqualTo("3·10⁻⁹");
        assertThat(Numbers.of(Double.NaN)).isEqualTo("–");
    }

    @Test
    void reportWithoutRideTestsIsRefused() {
        assertThatThrownBy(() -> HtmlReport.render(GATE.scenario(), List.of(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("≥ 1 ride test");
    }

    /** Peaks of 10 m/s², times the factor in whatever is laden or ridden fast, twice where both. */
    private static List<RideResult> scaled(double factor) {
        return GATE.results().stream()
                .filter(r -> r.vehicleFile().contains("dray"))
                .map(r -> {
                    double loaded = r.model().loadCase().name().equals("laden") ? factor : 1;
                    double fast = r.speed() > 2 ? factor : 1;
                    Peak peak = new Peak(10 * loaded * fast, 1);
                    return with(
                            r,
                            List.of(),
                            List.of(new PointResult("middle of the load", peak, new Peak(-1, 1), peak, peak)));
                })
                .toList();
    }

    private static RideResult with(RideResult r, List<SeatResult> seats, List<PointResult> points) {
        return new RideResult(
                r.vehicleFile(),
                r.model(),
                r.road(),
                r.plan(),
                r.duration(),
                r.traces(),
                r.wheelPaths(),
                r.axles(),
                r.window(),
                seats,
                points,
                r.springs(),
                r.wheels(),
                r.draught(),
                r.speedGained(),
                r.missed(),
                r.energy(),
                r.statistics(),
                r.spectra(),
                r.remarks());
    }
}
