package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ridewright.fieldwork.Heights;
import org.ridewright.fieldwork.Heights.Mark;
import org.ridewright.fieldwork.Heights.Settled;
import org.ridewright.fieldwork.Heights.Step;
import org.ridewright.fieldwork.Side;
import org.ridewright.fieldwork.UsualTolerance;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.Vehicle;

/**
 * Reads {@code heights}.
 *
 * @param loadings reads what was aboard
 * @param vehicle that was measured, if it is known
 * @param unread whether a vehicle was named that could not be read: its axles are not known, and no fault of this list
 */
record HeightsReader(LoadingReader loadings, Optional<Vehicle> vehicle, boolean unread) {
    static final List<String> KEYS = List.of("at", "steps");

    private static final String FOUR_CORNERS = "four corners";
    private static final String MARKS =
            "marks such as [{axle: front, side: left}], or " + FOUR_CORNERS + " of a vehicle with two axles";
    private static final String[] STEP = Stream.concat(
                    LoadingReader.KEYS.stream(), Stream.of(Settled.values()).map(Settled::key))
            .toArray(String[]::new);

    Heights read(Part part) {
        List<Mark> marks = marks(part);
        if (!part.has("steps")) {
            part.missing("steps", "a list such as [{with: empty, heights: [812 mm, 815 mm]}]");
        }
        List<Step> steps =
                part.parts("steps", "a step", STEP).stream().map(this::step).toList();
        return new Heights(FactReader.heading(part), marks, steps);
    }

    private List<Mark> marks(Part part) {
        if (!part.has("at")) {
            part.missing("at", MARKS);
        }
        Optional<Node> node = part.node("at");
        if (node.isPresent() && node.get() instanceof Node.Scalar scalar && Hints.same(scalar.text(), FOUR_CORNERS)) {
            return fourCorners(part, scalar);
        }
        return part.parts("at", "a mark", "name", "axle", "side", "place").stream()
                .map(this::mark)
                .toList();
    }

    private List<Mark> fourCorners(Part part, Node.Scalar written) {
        if (unread) {
            return corners(List.of("first", "second"));
        }
        List<Axle> axles = vehicle.map(Vehicle::axles).orElse(List.of());
        if (axles.size() != 2) {
            part.reading()
                    .problem(
                            written,
                            written.text(),
                            vehicle.isEmpty()
                                    ? "needs the vehicle"
                                    : "needs two axles, of which there are " + axles.size(),
                            "marks such as [{axle: front, side: left}]",
                            vehicle.isEmpty() ? "name the vehicle at the top of the file" : "list the corners");
            return List.of();
        }
        return corners(axles.stream().map(Axle::name).toList());
    }

    private static List<Mark> corners(List<String> axles) {
        List<Mark> corners = new ArrayList<>();
        for (String axle : axles) {
            corners.add(new Mark.Corner(axle, Side.LEFT));
            corners.add(new Mark.Corner(axle, Side.RIGHT));
        }
        return corners;
    }

    private Mark mark(Part part) {
        if (part.oneOf("axle", "place").orElse("axle").equals("place")) {
            part.node("side")
                    .ifPresent(
                            node -> part.conflict("side", "stands beside 'place'", "remove 'side', or name an axle"));
            return new Mark.At(part.text("name", "a name"), loadings.planPlace(part, "place"));
        }
        String axle = part.has("axle") ? FactReader.axle(part, "axle") : "";
        return new Mark.Corner(axle, part.word("side", FactReader.SIDES));
    }

    private Step step(Part part) {
        List<Heights.Reading> readings = new ArrayList<>();
        for (Settled settled : Settled.values()) {
            if (part.has(settled.key())) {
                List<Measure> heights = part.measures(settled.key(), QuantityKind.LENGTH).stream()
                        .map(UsualTolerance::ofTape)
                        .toList();
                readings.add(new Heights.Reading(settled, heights));
            }
        }
        if (readings.isEmpty()) {
            part.missing(Settled.NOT_KNOWN.key(), "a height at each mark, in their order");
        }
        return new Step(loadings.read(part), readings);
    }
}
