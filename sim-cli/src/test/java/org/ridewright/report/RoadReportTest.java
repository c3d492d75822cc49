package org.ridewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureFiles;
import org.ridewright.figure.FigureWriter;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.roughness.RoadRemarks;
import org.ridewright.roughness.SurveyedRoad;

class RoadReportTest {
    private static final SurveyedRoad GRAVEL = SampleRoads.gravel(600, 0.01);
    private static final SurveyedRoad COARSE = SampleRoads.gravel(600, 0.25);
    private static final SurveyedRoad SETTS = SampleRoads.setts();

    @Test
    void everyFigureHasANameOfItsOwnAndACaptionWithNumbers() {
        List<Figure> figures = figures(List.of(GRAVEL, SETTS, GRAVEL));
        assertThat(figures).hasSize(12).extracting(Figure::fileName).doesNotHaveDuplicates();
        assertThat(figures).allSatisfy(f -> assertThat(f.caption()).matches("(?s)[A-Z].*\\d.*\\."));
    }

    private static List<Figure> figures(List<SurveyedRoad> roads) {
        return FigureGroup.of(roads).stream().flatMap(g -> g.figures().stream()).toList();
    }

    @Test
    void theFigureOfWheelsShowsThatLargerOnesPassLess() {
        Figure wheels = RoadWheelFigures.passing(SETTS).orElseThrow();
        Panel bySize = wheels.panels().get(1);
        Series rigid = bySize.series().get(0);
        assertThat(rigid.name()).isEqualTo("rigid wheels");
        for (int i = 1; i < rigid.y().length; i++) {
            assertThat(rigid.x()[i]).isGreaterThan(rigid.x()[i - 1]);
            assertThat(rigid.y()[i]).isLessThan(rigid.y()[i - 1]);
        }
        assertThat(wheels.panels().get(0).series()).hasSize(5);
    }

    @Test
    void heightsTooFarApartGiveNoFigureOfWheelsAndSaySo() {
        assertThat(RoadFigures.of(COARSE)).extracting(Figure::fileName).noneMatch(n -> n.contains("wheel"));
        assertThat(RoadRemarks.of(COARSE)).anyMatch(r -> r.contains("250 mm apart"));
        String page = RoadPage.render("Coarse", "", List.of(COARSE), List.of());
        assertThat(page).doesNotContain("What reaches the axle").contains("250 mm apart");
    }

    @Test
    void textOfTheUserIsShownAsTextAndNeverRun() {
        List<FigureFiles> drawn = new FigureWriter().files(figures(List.of(SETTS)));
        String page = RoadPage.render("A <script>alert(1)</script>", "<img src=x>", List.of(SETTS), drawn);
        assertThat(page).doesNotContain("<script", "<img", "mill <old>").contains("mill &lt;old&gt;", "<svg");
        assertThat(page).doesNotContain("<link", "@import").doesNotContainPattern("url\\((?!#)");
    }

    @Test
    void numbersAreWellFormedAndThoseOfThePage() throws IOException {
        JsonNode root = new ObjectMapper().readTree(RoadMetricsJson.render("both", List.of(GRAVEL, COARSE)));
        JsonNode track = root.get("roads").get(0).get("tracks").get(0);
        assertThat(track.get("class").asText()).isEqualTo("D");
        assertThat(track.get("spectrum").size()).isGreaterThan(40);
        assertThat(root.get("roads").get(0).get("wheels").size()).isEqualTo(6);
        assertThat(root.get("roads").get(1).get("wheels").size()).isZero();
        double index = GRAVEL.tracks().get(0).roughness().index().value();
        assertThat(track.get("values").findValuesAsText("name")).contains("International Roughness Index");
        assertThat(track.get("values").get(3).get("value").asDouble()).isEqualTo(index);
        assertThat(RoadPage.render("both", "", List.of(GRAVEL), List.of()))
                .contains("<td>D</td>", Numbers.of(1000 * index));
    }

    @Test
    void aPageWithoutARoadIsRefused() {
        assertThatThrownBy(() -> RoadPage.render("none", "", List.of(), List.of()))
                .hasMessageContaining("≥ 1 road");
    }
}
