package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.GappedStage.Kind;

/** Reads helpers, bump stops and droop stops of a spring, one or a list of each. */
final class StageReader {
    private StageReader() {}

    static List<GappedStage> read(Part spring) {
        List<GappedStage> stages = new ArrayList<>();
        Stream.of(Kind.values()).forEach(kind -> stages.addAll(stages(spring, kind)));
        return stages;
    }

    /** Name of the key for the travel until the stage acts. */
    private static String travelKey(Kind kind) {
        return kind == Kind.HELPER ? "gap" : "clearance";
    }

    private static List<GappedStage> stages(Part spring, Kind kind) {
        return spring.itemsOrOne(kind.word(), "a " + kind.word() + " after each dash").stream()
                .map(node ->
                        Part.of(spring.reading(), node, "a " + kind.word(), travelKey(kind), "rate", "measured with"))
                .map(part -> new GappedStage(
                        kind,
                        part.measure("rate", QuantityKind.RATE),
                        part.measure(travelKey(kind), QuantityKind.LENGTH),
                        part.textIfAny("measured with", "the name of a load case")))
                .toList();
    }
}
