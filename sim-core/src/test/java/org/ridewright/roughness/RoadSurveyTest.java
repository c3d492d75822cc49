package org.ridewright.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.road.Obstacle;
import org.ridewright.road.Obstacle.Lie;
import org.ridewright.road.Obstacle.Side;
import org.ridewright.road.Road;

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
