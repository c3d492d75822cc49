package org.ridewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.calibration.Datum;
import org.ridewright.calibration.Residual;
import org.ridewright.figure.Figure;
import org.ridewright.figure.FigureWriter;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;

class CalibrationFiguresTest {
    private static final String FAR_OFF = "farther off than 8, drawn at the edge";

    private static Residual residual(String label, double before) {
        return new Residual(Datum.of(label, "kg", 100, 1), before, 100.5, 0.5, 99, 102, 0.3);
    }

    private static Panel panel(List<Residual> data) {
        return CalibrationFigures.data(data).panels().get(0);
    }

    private static Series series(Panel panel, String name) {
        return panel.series().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aValueBeyondTheEdgeHasAMarkOfItsOwnAndNoneOfThoseThatAreWhereTheyStand() {
        Panel panel = panel(List.of(residual("weights: front", 130), residual("weights: rear", 103)));
        assertThat(series(panel, FAR_OFF).x()).containsExactly(8);
        assertThat(series(panel, "by the file as it was").y()).containsExactly(Double.NaN, 0);
        assertThat(series(panel, FAR_OFF).tone())
                .isNotEqualTo(series(panel, "by the file as it was").tone());
        assertThat(CalibrationFigures.data(List.of(residual("a", 130))).caption())
                .contains("the table has the values");
    }

    @Test
    void whereNothingIsFarOffNothingIsSaidOfAnEdge() {
        Figure figure = CalibrationFigures.data(List.of(residual("weights: front", 104)));
        assertThat(figure.panels().get(0).series()).extracting(Series::name).doesNotContain(FAR_OFF);
        assertThat(figure.caption()).doesNotContain("edge");
    }

    @Test
    void fewDataStandByNameFromTheTopDown() {
        Panel panel = panel(List.of(residual("weights: front", 103), residual("weights: rear", 102)));
        assertThat(panel.y().names()).containsExactly("weights: rear  2", "weights: front  1");
        assertThat(series(panel, "by the file as it was").x()).containsExactly(3, 2);
        assertThat(series(panel, "by the file as it was").y()).containsExactly(1, 0);
    }

    @Test
    void manyDataAreNumberedFromOneInWholeNumbers() {
        Panel panel = panel(Collections.nCopies(21, residual("weights: front", 103)));
        assertThat(panel.x().names()).hasSize(21).startsWith("1", "2").endsWith("21");
    }

    @Test
    void longNamesAndManyDataCanBeDrawn() {
        FigureWriter writer = new FigureWriter();
        String name = "height, front left, two aboard, settled from above, against empty";
        for (int count : new int[] {1, 20, 21, 200}) {
            List<Residual> data = Collections.nCopies(count, residual(name, 130));
            assertThat(writer.svg(CalibrationFigures.data(data))).contains("farther off than 8 uncertainties");
        }
    }
}
