package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Colours over a plane, areas and named axes. */
class FieldTest {
    private static final double[] PLACES = {0, 1, 2, 3, 4};

    private static Field slope(double perX, double perY) {
        double[][] z = new double[5][5];
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                z[i][j] = perX * i + perY * j;
            }
        }
        return new Field("Height", "m", PLACES, PLACES, z);
    }

    private static List<Ink.Filled> filled(Field field) {
        AxisSpec axis = AxisSpec.of("x", "m").between(0, 4);
        Series mark = new Series("base", new double[] {1}, new double[] {1}, LineStyle.SOLID, Tone.RUST, Trace.MARKS);
        Panel panel = Panel.of("", axis, axis, mark).withField(field);
        Sheet sheet = FigurePainter.paint(Figure.stacked("field", "", "", 90, panel));
        return sheet.inks().stream()
                .filter(Ink.Filled.class::isInstance)
                .map(Ink.Filled.class::cast)
                .toList();
    }

    @Test
    void levelsAreRoundAndHoldEveryValue() {
        double[] levels = slope(0.37, 0.11).levels();

        assertThat(levels[0]).isZero();
        assertThat(levels[levels.length - 1]).isGreaterThanOrEqualTo(4 * 0.48);
        assertThat(levels).hasSizeBetween(5, 10);
        assertThat(levels[1]).isIn(0.2, 0.5);
    }

    /** Of a slope along x from 0 to 4, the part above 2 is the right half of the plot. */
    @Test
    void whatIsAboveALevelIsFilledToWhereTheLevelIsCrossed() {
        Field field = slope(1, 0);
        List<Ink.Filled> inks = filled(field);
        Path2D plot = inks.get(0).path();
        int level = IntStream.range(0, field.levels().length)
                .filter(l -> field.levels()[l] == 2)
                .findFirst()
                .orElseThrow();
        Path2D above = inks.get(1 + level).path();

        assertThat(above.getBounds2D().getMinX()).isCloseTo(plot.getBounds2D().getCenterX(), within(1e-6));
        assertThat(above.getBounds2D().getMaxX()).isCloseTo(plot.getBounds2D().getMaxX(), within(1e-6));
    }

    @Test
    void aFieldOfOneHeightCanBeDrawn() {
        assertThat(filled(slope(0, 0))).isNotEmpty();
    }

    @Test
    void aCellWithoutAValueStaysEmpty() {
        double[][] z = new double[5][5];
        z[0][0] = Double.NaN;
        z[4][4] = 1;
        Field field = new Field("Height", "m", PLACES, PLACES, z);
        List<Ink.Filled> inks = filled(field);
        var plot = inks.get(0).path().getBounds2D();

        // the lowest band holds all that has a value
        assertThat(inks.get(1).path().contains(plot.getMinX() + 3, plot.getMaxY() - 3))
                .isFalse();
        assertThat(inks.get(1).path().contains(plot.getMaxX() - 3, plot.getMaxY() - 3))
                .isTrue();
    }

    @Test
    void aGridNeedsTwoPlacesEachWay() {
        assertThatThrownBy(() -> new Field("z", "", new double[] {0}, PLACES, new double[1][5]))
                .hasMessageContaining("≥ 2 × 2");
    }

    @Test
    void namesStandAtTheirBars() {
        Series bars = new Series(
                "size", new double[] {3, 1}, new double[] {1, 0}, LineStyle.SOLID, Tone.NAVY, Trace.BARS_ACROSS);
        Panel panel =
                Panel.of("", AxisSpec.of("Size", "m"), AxisSpec.named("", List.of("small one", "great one")), bars);
        Sheet sheet = FigurePainter.paint(Figure.stacked("bars", "", "", 60, panel));
        List<Ink.Filled> filled = sheet.inks().stream()
                .filter(Ink.Filled.class::isInstance)
                .map(Ink.Filled.class::cast)
                .toList();
        Ink.Lettered great = sheet.inks().stream()
                .filter(Ink.Lettered.class::isInstance)
                .map(Ink.Lettered.class::cast)
                .filter(t -> t.text().equals("great one"))
                .findFirst()
                .orElseThrow();

        double wide = filled.get(0).path().getBounds2D().getWidth();
        assertThat(wide / filled.get(1).path().getBounds2D().getWidth()).isCloseTo(3, within(1e-9));
        assertThat(great.y())
                .isBetween(
                        filled.get(0).path().getBounds2D().getMinY(),
                        filled.get(0).path().getBounds2D().getMaxY());
    }
}
