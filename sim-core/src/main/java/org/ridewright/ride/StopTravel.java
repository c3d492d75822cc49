package org.ridewright.ride;

import java.util.List;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.suspension.Pieces;
import org.ridewright.vehicle.GappedStage;

/** How near a spring comes to its bump stop. */
public final class StopTravel {
    private StopTravel() {}

    /**
     * Travel that is left at a spring's greatest compression until its first bump stop begins to act.
     *
     * @param model whose spring it is
     * @param spring with its compression measured
     * @return (m); negative: by so much the stop was compressed; not a number without a bump stop
     */
    public static double left(VehicleModel model, ElementResult spring) {
        Element element = model.equations().elements().stream()
                .filter(e -> e.name().equals(spring.element()))
                .findFirst()
                .orElseThrow();
        // helpers and stops are the last pieces of a law
        List<String> names = model.stageNames(element.name());
        Pieces pieces = element.law().allStages();
        int first = pieces.count() - names.size();
        double stop = Double.NaN;
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).equals(GappedStage.Kind.BUMP_STOP.word())) {
                double at = pieces.at(first + i);
                stop = Double.isNaN(stop) ? at : Math.min(stop, at);
            }
        }
        return stop - spring.atRest() - spring.compression();
    }
}
