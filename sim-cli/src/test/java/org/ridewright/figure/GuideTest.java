package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GuideTest {
    private static Figure figure(Guide... guides) {
        Panel panel = Panel.of(
                        "",
                        AxisSpec.of("n", "cycle/m").logarithmic().between(0.01, 10),
                        AxisSpec.of("G", "m³").logarithmic().between(1e-9, 1e-1),
                        Series.line(0, "road", new double[] {0.01, 10}, new double[] {1e-3, 1e-7}))
                .withGuides(List.of(guides));
        return Figure.stacked("a", "", "", 80, panel);
    }

    private static List<String> texts(Figure figure) {
        return FigurePainter.paint(figure).inks().stream()
                .filter(Ink.Lettered.class::isInstance)
                .map(ink -> ((Ink.Lettered) ink).text())
                .toList();
    }

    @Test
    void aPowerLawIsAStraightLineOnLogarithmicAxes() {
        Guide guide = new Guide(0.1, 1e-4, 1, 1e-6, "limit");
        Scale x = new Scale(0.01, 10, true);
        Scale y = new Scale(1e-9, 1e-1, true);
        // 1e-2 at the left end, 1e-8 at the right one
        assertThat(guide.share(x, y, 0)).isCloseTo(7 / 8.0, within(1e-12));
        assertThat(guide.share(x, y, 1)).isCloseTo(1 / 8.0, within(1e-12));
    }

    @Test
    void aGuideIsNamedWhereItLeavesThePlotAtTheRightAndNowhereElse() {
        assertThat(texts(figure(new Guide(0.1, 1e-4, 1, 1e-6, "limit")))).contains("limit");
        assertThat(texts(figure(new Guide(0.1, 1e-7, 1, 1e-9, "limit")))).doesNotContain("limit");
    }

    @Test
    void namesOfGuidesDoNotOverlap() {
        List<Ink.Lettered> names = FigurePainter.paint(
                        figure(new Guide(0.1, 1e-4, 1, 1e-6, "one"), new Guide(0.1, 1.1e-4, 1, 1.1e-6, "two")))
                .inks()
                .stream()
                .filter(ink -> ink instanceof Ink.Lettered text
                        && List.of("one", "two").contains(text.text()))
                .map(Ink.Lettered.class::cast)
                .toList();
        assertThat(names).hasSize(2);
        assertThat(Math.abs(names.get(0).y() - names.get(1).y())).isGreaterThan(8);
    }

    @Test
    void nothingOfAGuideLiesOutsideThePlot() {
        for (Guide guide : List.of(
                new Guide(0.1, 1e-4, 1, 1e-6, "a"),
                new Guide(0.1, 1e9, 1, 1e8, "b"),
                new Guide(0.1, 1e-9, 1, 1e-1, "c"),
                new Guide(0.1, 1e-12, 1, 1e-12, "d"))) {
            Figure figure = figure(guide);
            FigurePainter.paint(figure).inks().stream()
                    .filter(Ink.Stroked.class::isInstance)
                    .map(ink -> ((Ink.Stroked) ink).path().getBounds2D())
                    .forEach(box -> assertThat(box.getMinY() >= 0 && box.getMaxY() <= 80 * PrintStyle.POINTS_PER_MM)
                            .isTrue());
        }
    }

    @Test
    void anUprightLineIsRefused() {
        assertThatThrownBy(() -> new Guide(1, 0, 1, 1, "up")).hasMessageContaining("unlike x");
        assertThatThrownBy(() -> new Guide(1, Double.NaN, 2, 1, "none")).hasMessageContaining("unlike x");
    }
}
