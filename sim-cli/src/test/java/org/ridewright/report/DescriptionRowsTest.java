package org.ridewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ridewright.quantity.Measures;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.report.DescriptionRows.Entry;
import org.ridewright.road.Obstacle;
import org.ridewright.vehicle.Vehicle;

class DescriptionRowsTest {
    private static final List<Entry> DRAY = DescriptionRows.of(vehicle("Mineral-water dray"), "");

    private static Vehicle vehicle(String name) {
        return Rides.GATE.results().stream()
                .map(r -> r.model().vehicle())
                .filter(v -> v.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aPlaceAheadOfTheFrontAxleIsSaidToBeAheadOfIt() {
        assertThat(DRAY)
                .filteredOn(e -> e.path().endsWith("driver's place › place › ahead of front axle"))
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.text()).isEqualTo("4 in ± 1/2 in (measured)");
                    assertThat(e.measure().value()).isPositive();
                });
        assertThat(DRAY).extracting(Entry::text).noneMatch(text -> text.startsWith("minus"));
    }

    @Test
    void whatTheFileDoesNotGiveIsNoInput() {
        assertThat(DRAY).extracting(Entry::text).doesNotContain("none given", "0.0 m");
    }

    @Test
    void wordsOfTheProgramAloneAreNotShown() {
        Obstacle rail = Rides.GATE.scenario().roads().get(0).obstacles().get(0);
        assertThat(DescriptionRows.of(rail.lie(), "kerb"))
                .extracting(Entry::path)
                .contains("kerb › at", "kerb › side");
        assertThat(DescriptionRows.of(Rides.GATE.scenario().roads(), "roads"))
                .extracting(Entry::path)
                .noneMatch(path -> path.contains("lie"));
        assertThat(DRAY).extracting(Entry::path).noneMatch(path -> path.contains("attachment"));
    }

    @Test
    void aNilThatTheFileGivesIsShown() {
        assertThat(DescriptionRows.of(Optional.of(Measures.parse("0 mm", QuantityKind.LENGTH)), "offset"))
                .extracting(Entry::text)
                .containsExactly("0 mm");
    }
}
