package org.ridewright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ThinningTest {

    @Property(tries = 60)
    void aThinnedTraceKeepsTheExtremesOfEveryStretch(
            @ForAll @Size(min = 2, max = 400) List<@DoubleRange(min = -9, max = 9) Double> values,
            @ForAll @DoubleRange(min = 0.5, max = 20) double column) {
        double[] y = values.stream().mapToDouble(Double::doubleValue).toArray();
        double[] position = SampleFigures.grid(0, y.length - 1, y.length);
        int[] kept = Thinning.keepExtremes(position, y, column);

        assertThat(kept[0]).isZero();
        assertThat(kept[kept.length - 1]).isEqualTo(y.length - 1);
        assertThat(kept).isSorted().doesNotHaveDuplicates();
        // between neighbours kept nothing goes beyond what is kept within a column on either side
        for (int i = 0; i < y.length; i++) {
            double here = i;
            double[] near = Arrays.stream(kept)
                    .filter(k -> Math.abs(position[k] - here) <= column)
                    .mapToDouble(k -> y[k])
                    .toArray();
            assertThat(y[i])
                    .isBetween(
                            Arrays.stream(near).min().orElseThrow(),
                            Arrays.stream(near).max().orElseThrow());
        }
    }

    @Test
    void aGapStaysAGap() {
        double[] y = {1, Double.NaN, Double.NaN, 2, 3};
        int[] kept = Thinning.keepExtremes(new double[] {0, 0.1, 0.2, 0.3, 0.4}, y, 10);
        assertThat(kept).containsExactly(0, 1, 3, 4);
    }

    @Property(tries = 60)
    void noPointLeftOutOfAPathIsFartherFromItThanTheTolerance(
            @ForAll @Size(min = 2, max = 120) List<@DoubleRange(min = -9, max = 9) Double> values,
            @ForAll @DoubleRange(min = 0.01, max = 2) double tolerance) {
        double[] ys = values.stream().mapToDouble(Double::doubleValue).toArray();
        double[] xs = SampleFigures.map(SampleFigures.grid(0, 6, ys.length), v -> 5 * Math.cos(v));
        List<double[]> corners = corners(Thinning.path(xs, ys, ys.length, tolerance));
        for (int i = 0; i < xs.length; i++) {
            double nearest = Double.MAX_VALUE;
            for (int k = 1; k < corners.size(); k++) {
                double[] a = corners.get(k - 1);
                double[] b = corners.get(k);
                nearest = Math.min(nearest, Line2D.ptSegDist(a[0], a[1], b[0], b[1], xs[i], ys[i]));
            }
            assertThat(nearest).isLessThanOrEqualTo(tolerance + 1e-12);
        }
    }

    @Test
    void aDenseDashedTraceIsOneLineThatReachesItsPeak() {
        double[] t = SampleFigures.grid(0, 10, 50_000);
        double[] y = SampleFigures.map(t, x -> Math.sin(9 * x));
        y[31_417] = 7;
        Panel panel = Panel.of(
                "", AxisSpec.of("Time", "s"), AxisSpec.of("Travel", "mm").between(-1, 8), Series.line(1, "peak", t, y));
        Figure figure = Figure.stacked("peak", "", "", 80, panel);
        List<Ink.Stroked> curves = FigurePainter.paint(figure).inks().stream()
                .filter(Ink.Stroked.class::isInstance)
                .map(Ink.Stroked.class::cast)
                .filter(line -> line.colour().equals(Tone.RUST.colour()))
                .toList();
        assertThat(curves).hasSize(1);
        assertThat(curves.get(0).stroke().getDashArray()).containsExactly(LineStyle.DASH.dashes());
        List<double[]> corners = corners(curves.get(0).path());
        assertThat(corners).hasSizeLessThan(5000);
        double top = corners.stream().mapToDouble(c -> c[1]).min().orElseThrow();
        var plot = curves.get(0).clip();
        assertThat((plot.getMaxY() - top) / plot.getHeight()).isCloseTo(8.0 / 9, within(1e-3));
    }

    private static List<double[]> corners(Path2D path) {
        List<double[]> corners = new ArrayList<>();
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            double[] c = new double[6];
            it.currentSegment(c);
            corners.add(new double[] {c[0], c[1]});
        }
        return corners;
    }
}
