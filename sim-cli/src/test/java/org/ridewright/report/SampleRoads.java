package org.ridewright.report;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.roughness.HeightSource;
import org.ridewright.roughness.RoadSurvey;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.roughness.SurveyedRoad.SurveyedTrack;
import org.ridewright.roughness.TrackSurvey;

/** Roads of white slope, with and without stones, for the tests of figures and pages. */
final class SampleRoads {
    private SampleRoads() {}

    static SurveyedRoad gravel(double metres, double spacing) {
        return road("gravel lane", metres, spacing, RoughnessClass.D.geometricMean(), x -> 0);
    }

    static SurveyedRoad setts() {
        return road("setts at the mill <old>", 300, 0.01, RoughnessClass.B.geometricMean(), x -> {
            double along = (x % 0.16 - 0.08) / 0.08;
            return Math.abs(along) > 0.9 ? -0.02 : -0.008 * along * along;
        });
    }

    static SurveyedRoad road(
            String name, double metres, double spacing, double atReference, DoubleUnaryOperator pattern) {
        return new SurveyedRoad(
                name,
                "made for a test",
                List.of(),
                List.of(
                        track("left track", 1, metres, spacing, atReference, pattern),
                        track("right track", 2, metres, spacing, atReference, pattern)));
    }

    private static SurveyedTrack track(
            String name, long seed, double metres, double spacing, double atReference, DoubleUnaryOperator pattern) {
        double deviation =
                Math.sqrt(atReference * Math.pow(2 * Math.PI * RoughnessSpectrum.REFERENCE, 2) / (2 * spacing));
        Random random = new Random(seed);
        double[] heights = new double[(int) Math.round(metres / spacing) + 1];
        double height = 0;
        for (int i = 0; i < heights.length; i++) {
            heights[i] = height + pattern.applyAsDouble(i * spacing);
            height = 0.9995 * height + spacing * deviation * random.nextGaussian();
        }
        return new SurveyedTrack(name, TrackSurvey.of(HeightSource.of(0, spacing, heights), RoadSurvey.USUAL_WHEELS));
    }
}
