package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Coherence;
import org.ridewright.road.MeasuredProfile;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessClass;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;

class RoadSurveyTest {
    private static final RoadSurvey SURVEY =
            new RoadSurvey(0.75, Optional.empty(), Optional.empty(), RoadSurvey.USUAL_WHEELS);

    private static Measure metres(double length) {
        return Measure.of(length, QuantityKind.LENGTH);
    }

    private static Road planks(Side side, int count) {
        Lie lie = new Lie(metres(5), side, Measure.of(0, QuantityKind.ANGLE), count, Optional.of(metres(2)));
        return new Road(
                "planks",
                List.of(new Obstacle.Plank(lie, metres(0.04), metres(0.15), new Obstacle.Shape.Rectangular())),
                Optional.empty());
    }

    @Test
    void anObstacleOnOneSideIsInOneTrackOnly() {
        SurveyedRoad road = SURVEY.of(planks(Side.LEFT, 1), "test").orElseThrow();
        assertThat(road.tracks())
                .extracting(SurveyedRoad.SurveyedTrack::name)
                .containsExactly("left track", "right track");
        assertThat(road.tracks().get(0).roughness().index().value()).isPositive();
        assertThat(road.tracks().get(1).roughness().index().value()).isZero();
    }

    @Test
    void tracksThatAreAlikeAreToldAsOne() {
        SurveyedRoad road = SURVEY.of(planks(Side.BOTH, 3), "test").orElseThrow();
        assertThat(road.tracks()).hasSize(1);
        assertThat(road.notes()).anyMatch(note -> note.contains("level but for its obstacles"));
        TrackRoughness found = road.tracks().get(0).roughness();
        assertThat(found.start()).isCloseTo(5 - 10, within(1e-9));
        assertThat(found.length()).isCloseTo(4.15 + 20, within(0.011));
    }

    @Test
    void aLevelRoadHasNothingToTell() {
        assertThat(SURVEY.of(new Road("flat", List.of(), Optional.empty()), "test"))
                .isEmpty();
    }

    @Test
    void noMoreIsLookedAtThanAskedFor() {
        SurveyedRoad road = new RoadSurvey(0, Optional.empty(), Optional.of(12.0), List.of())
                .of(planks(Side.BOTH, 40), "test")
                .orElseThrow();
        assertThat(road.tracks()).extracting(SurveyedRoad.SurveyedTrack::name).containsExactly("centre line");
        assertThat(road.tracks().get(0).roughness().length()).isCloseTo(12, within(1e-9));
    }

    private static Road random(RoughnessClass roughnessClass, long seed) {
        Surface surface = new Surface.Spectral(
                Surface.Stretch.ALL,
                RoughnessSpectrum.of(roughnessClass.geometricMean(), 2),
                new Coherence.Isotropic(),
                seed);
        return new Road("random", List.of(), List.of(surface), Road.RUN_UP, Optional.empty());
    }

    @ParameterizedTest
    @EnumSource(names = {"A", "C", "E", "H"})
    void aRandomRoadIsFoundToBeOfItsClassAndHasTheIndexOfItsSpectrum(RoughnessClass roughnessClass) {
        RoadSurvey survey = new RoadSurvey(0.75, Optional.of(0.05), Optional.of(4000.0), List.of());
        SurveyedRoad road = survey.of(random(roughnessClass, 17), "test").orElseThrow();
        assertThat(road.tracks()).hasSize(2);
        for (SurveyedRoad.SurveyedTrack track : road.tracks()) {
            StraightFit fit = track.roughness().fit().orElseThrow();
            assertThat(fit.roadClass()).isEqualTo(roughnessClass);
            assertThat(fit.atReference() / roughnessClass.geometricMean()).isCloseTo(1, within(4 * fit.logError()));
            assertThat(fit.waviness()).isCloseTo(2, within(4 * fit.wavinessError()));
            // 2.1726 m/km for class A: √(2/π) of the root of ∫ |H|² sinc² Gs dn, worked out apart from this project
            double expected = 2.1726e-3 * Math.sqrt(roughnessClass.geometricMean() / 16e-6);
            assertThat(track.roughness().index().value() / expected).isCloseTo(1, within(0.04));
        }
    }

    @Test
    void whereARandomRoadGrowsIsLeftOut() {
        TrackRoughness found = new RoadSurvey(0.75, Optional.of(0.05), Optional.of(200.0), List.of())
                .of(random(RoughnessClass.C, 1), "test")
                .orElseThrow()
                .tracks()
                .get(0)
                .roughness();
        assertThat(found.start()).isCloseTo(Road.START + 10, within(1e-9));
        assertThat(found.length()).isCloseTo(200, within(1e-9));
    }

    @Test
    void aMeasuredProfileIsLookedAtAtItsOwnSpacing() {
        double[] stations = new double[400];
        double[] heights = new double[400];
        for (int i = 0; i < stations.length; i++) {
            stations[i] = 0.25 * i;
            heights[i] = 0.01 * Math.sin(i);
        }
        Surface surface = new Surface.Measured(
                Surface.Stretch.ALL,
                new MeasuredProfile("lane.csv", stations, List.of(heights)),
                new Surface.Measured.AsMeasured(),
                false,
                Optional.empty());
        Road road = new Road("lane", List.of(), List.of(surface), metres(1e-6), Optional.empty());
        TrackRoughness found =
                SURVEY.of(road, "test").orElseThrow().tracks().get(0).roughness();
        assertThat(found.spacing()).isEqualTo(0.25);
        assertThat(found.wheels()).isEmpty();
        SurveyedRoad finer = new RoadSurvey(0.75, Optional.of(0.01), Optional.empty(), RoadSurvey.USUAL_WHEELS)
                .of(road, "test")
                .orElseThrow();
        assertThat(finer.notes()).anyMatch(note -> note.contains("measured 0.2500 m apart"));
    }

    @Test
    void numbersThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new RoadSurvey(-1, Optional.empty(), Optional.empty(), List.of()))
                .hasMessageContaining("≥ 0 m");
        assertThatThrownBy(() -> new RoadSurvey(1, Optional.of(0.0), Optional.empty(), List.of()))
                .hasMessageContaining("> 0 m");
        assertThatThrownBy(() -> new RoadSurvey(1, Optional.empty(), Optional.of(-3.0), List.of()))
                .hasMessageContaining("> 0 m");
    }
}
