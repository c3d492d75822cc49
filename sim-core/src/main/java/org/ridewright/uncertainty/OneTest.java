package org.ridewright.uncertainty;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.ride.Scenario;
import org.ridewright.vehicle.LoadCase;

/** Which vehicle, load case, road and speed of a scenario, by their places in it. */
record OneTest(int entrant, String loadCase, int road, int speed) {
    /** All ride tests of a scenario, in the order in which it runs them. */
    static List<OneTest> of(Scenario scenario) {
        List<OneTest> tests = new ArrayList<>();
        for (int e = 0; e < scenario.entrants().size(); e++) {
            Scenario.Entrant entrant = scenario.entrants().get(e);
            List<String> loads = entrant.loadCases().isEmpty()
                    ? entrant.vehicle().loadCases().stream().map(LoadCase::name).toList()
                    : entrant.loadCases();
            for (String load : loads) {
                for (int r = 0; r < scenario.roads().size(); r++) {
                    for (int s = 0; s < entrant.speeds().size(); s++) {
                        tests.add(new OneTest(e, load, r, s));
                    }
                }
            }
        }
        return tests;
    }

    /** A scenario of just this ride test. */
    Scenario in(Scenario whole) {
        Scenario.Entrant own = whole.entrants().get(entrant);
        return new Scenario(
                whole.name(),
                whole.about(),
                List.of(new Scenario.Entrant(
                        own.vehicle(),
                        own.file(),
                        List.of(loadCase),
                        List.of(own.speeds().get(speed)))),
                List.of(whole.roads().get(road)),
                whole.duration(),
                whole.distance(),
                whole.samplingRate(),
                whole.start(),
                whole.braked(),
                whole.points(),
                whole.ridingADay());
    }
}
