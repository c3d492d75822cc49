package org.ridewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.ride.RideResult;

class RemarkGroupTest {
    private static final List<RideResult> RIDES = Rides.GATE.results();

    @Test
    void aRemarkThatDiffersInItsNumbersAloneIsSaidOnceWithTheirRange() {
        List<RemarkGroup> groups = RemarkGroup.of(List.of(
                remarked(0, "The rider on 'seat 2' was off the seat for 0.120 s."),
                remarked(1, "The rider on 'seat 2' was off the seat for 0.040 s.", "It sways."),
                remarked(2, "The rider on 'seat 2' was off the seat for 0.350 s.")));
        assertThat(groups)
                .extracting(RemarkGroup::text)
                .containsExactly("The rider on 'seat 2' was off the seat for 0.040 to 0.350 s.", "It sways.");
        assertThat(groups.get(0).rides()).containsExactly("every ride test");
    }

    @Test
    void theRidesThatARemarkConcernsAreNamedVehicleByVehicle() {
        RemarkGroup group = RemarkGroup.of(List.of(
                        remarked(0, "It sways."), remarked(1, "It sways."), remarked(4), remarked(5, "It sways.")))
                .get(0);
        assertThat(group.rides())
                .containsExactly(
                        "Mineral-water dray, empty: gateway at 5 km/h; gateway at 12 km/h",
                        "Small saloon, driver: gateway at 12 km/h");
    }

    @Test
    void aNumberAtTheEndOfASentenceIsANumberToo() {
        assertThat(RemarkGroup.of(List.of(
                        remarked(0, "It reads 0.17 in place of 0.04."),
                        remarked(1, "It reads 0.17 in place of 0.02."))))
                .extracting(RemarkGroup::text)
                .containsExactly("It reads 0.17 in place of 0.02 to 0.04.");
    }

    @Test
    void remarksOnDifferentPlacesStayApart() {
        assertThat(RemarkGroup.of(List.of(
                        remarked(0, "'tip 1' was on its bump stop for 0.010 s."),
                        remarked(1, "'tip 2' was on its bump stop for 0.010 s."))))
                .hasSize(2);
    }

    @Test
    void thePageSaysARemarkOnce() {
        List<RideResult> rides = List.of(remarked(0, "It sways."), remarked(1, "It sways."), remarked(2));
        String page = HtmlReport.render(Rides.GATE.scenario(), rides, List.of());
        assertThat(page.split("It sways\\.", -1)).hasSize(2);
        assertThat(page).contains("gateway at 5 km/h; gateway at 12 km/h");
    }

    private static RideResult remarked(int ride, String... remarks) {
        return Rides.withRemarks(RIDES.get(ride), List.of(remarks));
    }
}
