package org.ridewright.standing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.suspension.Pieces;
import org.ridewright.vehicle.GappedStage;

/** Helpers and stops of a spring: the last pieces of its law, in the order of their names. */
final class Stages {
    private Stages() {}

    static List<StageTravel> of(VehicleModel model, Element element, double c) {
        List<String> names = model.stageNames(element.name());
        Pieces pieces = element.law().allStages();
        int first = pieces.count() - names.size();
        List<StageTravel> travels = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            double left = pieces.side(first + i) * (pieces.at(first + i) - c);
            travels.add(new StageTravel(kind(names.get(i)), left));
        }
        return travels;
    }

    private static GappedStage.Kind kind(String word) {
        for (GappedStage.Kind kind : GappedStage.Kind.values()) {
            if (kind.word().equals(word)) {
                return kind;
            }
        }
        throw new IllegalStateException("no stage is called " + word);
    }

    /** Compression at which the first bump stop begins to act (m). */
    static Optional<Double> bumpStop(VehicleModel model, Element element, double c) {
        return of(model, element, c).stream()
                .filter(s -> s.kind() == GappedStage.Kind.BUMP_STOP)
                .map(s -> c + s.left())
                .min(Double::compare);
    }
}
