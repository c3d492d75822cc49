package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.roughness.SampledWheel.Disc;
import org.ridewright.roughness.SampledWheel.Footprint;
import org.ridewright.roughness.SurveyedRoad.Passed;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;

class TrackSurveyTest {
    private static final double SPACING = 0.01;

    /** Heights whose slope is white, of a class's geometric mean. */
    private static double[] rough(RoughnessClass roadClass, int n, long seed) {
        double density = roadClass.geometricMean() * Math.pow(2 * Math.PI * RoughnessSpectrum.REFERENCE, 2);
        double step = Math.sqrt(density * SPACING / 2);
        Random random = new Random(seed);
        double[] y = new double[n];
        for (int i = 1; i < n; i++) {
            y[i] = y[i - 1] + step * random.nextGaussian();
        }
        return y;
    }

    private static SurveyedRoad road(double[] heights, SampledWheel... wheels) {
        TrackRoughness found = TrackSurvey.of(HeightSource.of(0, SPACING, heights), List.of(wheels));
        return new SurveyedRoad("road", "test", List.of(), List.of(new SurveyedTrack("track", found)));
    }

    @Test
    void aPathWorkedOutInWindowsIsThatOfTheWholeRoad() {
        double[] heights = rough(RoughnessClass.E, 30_000, 3);
        Disc disc = new Disc(0.9);
        HeightSpectrum inWindows =
                road(heights, disc).tracks().get(0).roughness().wheels().get(0).spectrum();
        int margin = disc.margin(SPACING);
        double[] padded = new double[heights.length + 2 * margin];
        HeightSource.of(0, SPACING, heights).read(-margin, padded);
        double[] path = disc.path(padded, margin, SPACING);
        HeightSpectrumAccumulator whole = new HeightSpectrumAccumulator(SPACING, heights.length);
        whole.accept(path, 0, path.length);
        HeightSpectrum expected = whole.result().orElseThrow();
        for (Band band : Band.overlapping(0.1, 20)) {
            assertThat(inWindows.height(band.from(), band.to()))
                    .isCloseTo(expected.height(band.from(), band.to()), within(1e-18));
        }
    }

    @Test
    void theLargerARigidWheelTheLessOfTheRoadReachesItsAxle() {
        SurveyedRoad road = road(rough(RoughnessClass.D, 60_000, 1), new Disc(0.4), new Disc(0.9), new Disc(1.5));
        assertThat(road.jolting(0)).isLessThan(1);
        assertThat(road.jolting(1)).isLessThan(0.95 * road.jolting(0));
        assertThat(road.jolting(2)).isLessThan(0.95 * road.jolting(1));
        for (int i = 0; i < road.passed(0).size(); i++) {
            if (road.passed(0).get(i).band().centre() > 3) {
                assertThat(road.passed(2).get(i).share())
                        .isLessThan(road.passed(0).get(i).share());
            }
        }
    }

    @Test
    void everyWheelFollowsWavesOfSeveralMetres() {
        SurveyedRoad road = road(rough(RoughnessClass.C, 60_000, 1), new Disc(0.4), new Disc(1.5), new Footprint(0.1));
        for (int w = 0; w < 3; w++) {
            assertThat(road.passed(w).get(0).share()).isCloseTo(1, within(0.02));
        }
    }

    /**
     * An octave's share is the root mean square of the footprint's gain over it. Between heights Δ apart the road runs straight: the gain is
     * {@code sin(πnL)/((L/Δ) tan(πnΔ))}, which is the sinc for n Δ ≪ 1, and a white slope between heights is
     * {@code (πnΔ/sin πnΔ)²} of one at them.
     */
    @Test
    void aFootprintPassesItsSinc() {
        SurveyedRoad road = road(rough(RoughnessClass.D, 200_000, 9), new Footprint(0.1));
        for (Passed each : road.passed(0)) {
            double sum = 0;
            double weights = 0;
            for (int i = 0; i < 400; i++) {
                double n = each.band().from() + (each.band().to() - each.band().from()) * (i + 0.5) / 400;
                double x = Math.PI * n * SPACING;
                double gain = Math.sin(Math.PI * n * 0.1) / (0.1 / SPACING * Math.tan(x));
                double weight = Math.pow(x / Math.sin(x), 2);
                sum += gain * gain * weight;
                weights += weight;
            }
            double expected = Math.sqrt(sum / weights);
            assertThat(each.share())
                    .as("at %s cycle/m", each.band().centre())
                    .isCloseTo(expected, within(0.03 * expected));
        }
    }

    @Test
    void theExcerptShowsWhereWheelsAndRoadDifferMost() {
        double[] heights = new double[5000];
        Arrays.fill(heights, 1500, 1502, 0.01);
        Arrays.fill(heights, 3000, 3010, -0.05);
        Excerpt excerpt = road(heights, new Disc(0.6))
                .tracks()
                .get(0)
                .roughness()
                .excerpt()
                .orElseThrow();
        assertThat(excerpt.start()).isLessThan(30).isGreaterThan(28);
        assertThat(Arrays.stream(excerpt.road()).min().orElseThrow()).isEqualTo(-0.05);
        assertThat(excerpt.paths()).hasSize(1);
        assertThat(excerpt.paths().get(0)).hasSameSizeAs(excerpt.road());
    }

    @Test
    void theOutlineHoldsEveryHeight() {
        double[] heights = rough(RoughnessClass.C, 12_345, 2);
        Outline outline = road(heights).tracks().get(0).roughness().outline();
        assertThat(outline.low().length).isLessThanOrEqualTo(1500);
        for (int i = 0; i < heights.length; i++) {
            int column = (int) ((i + 0.5) * SPACING / outline.width());
            assertThat(heights[i]).isBetween(outline.low()[column], outline.high()[column]);
        }
    }

    @Test
    void heightsFarApartSayNothingOfWheels() {
        TrackRoughness found = TrackSurvey.of(HeightSource.of(0, 0.25, new double[4000]), RoadSurvey.USUAL_WHEELS);
        assertThat(found.wheels()).isEmpty();
        assertThat(found.excerpt()).isEmpty();
    }

    @Test
    void aSingleHeightIsARoadOfNothing() {
        TrackRoughness found = TrackSurvey.of(HeightSource.of(0, 0.01, new double[1]), RoadSurvey.USUAL_WHEELS);
        assertThat(found.spectrum()).isEmpty();
        assertThat(found.index().isKnown()).isFalse();
    }

    @Test
    void aHeightThatIsNoneIsRefusedWithItsStation() {
        double[] heights = new double[2000];
        heights[700] = Double.NaN;
        assertThatThrownBy(() -> TrackSurvey.of(HeightSource.of(100, 0.01, heights), RoadSurvey.USUAL_WHEELS))
                .hasMessageContaining("NaN m at station 107");
    }

    /** Ten kilometres that are held nowhere: heights are worked out as they are asked for. */
    @Test
    void aLongRoadNeedsNoMoreMemoryThanAShortOne() {
        long kilometre = kept(100_000);
        long ten = kept(1_000_000);
        assertThat(ten).isLessThan(kilometre + 8L * 1000 * 10);
    }

    /** Bytes of all arrays that a survey keeps, by its own sizes. */
    private static long kept(long size) {
        HeightSource endless = new HeightSource() {
            @Override
            public double spacing() {
                return SPACING;
            }

            @Override
            public double start() {
                return 0;
            }

            @Override
            public long size() {
                return size;
            }

            @Override
            public void read(long first, double[] into) {
                assertThat(into.length).isLessThan(10_000);
                for (int i = 0; i < into.length; i++) {
                    into[i] = 0.01 * Math.sin(0.7 * (first + i) * SPACING);
                }
            }
        };
        TrackRoughness found = TrackSurvey.of(endless, List.of(new Disc(0.9)));
        return 16L * found.outline().low().length
                + 8L * found.spectrum().orElseThrow().lines()
                + 8L * found.index().sections().size();
    }
}
