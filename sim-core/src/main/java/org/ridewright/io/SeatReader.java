package org.ridewright.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.Seat;
import org.ridewright.vehicle.Seat.SeatStage;
import org.ridewright.vehicle.SeatedPerson;

/** Reads {@code seats}. */
record SeatReader(Layout layout) {
    private static final String[] CUSHION_KEYS = {"rate", "damping", "damping ratio", "mass"};
    private static final String[] STAGE_KEYS = {"rate", "damping", "damping ratio", "mass", "share of person"};
    private static final double USUAL_SHARE_ON_SEAT = 0.75;

    List<Seat> read(Part vehicle) {
        List<Part> seats = vehicle.parts(
                "seats", "a seat", "name", "at", "feet", "backrest", "cushion", "stages", "share on seat", "occupant");
        return seats.stream().map(part -> seat(part, seats.size() == 1)).toList();
    }

    private Seat seat(Part seat, boolean only) {
        List<SeatStage> stages = stages(seat);
        Optional<SeatedPerson> occupant = OccupantReader.read(seat);
        PlaceReader places = new PlaceReader(layout);
        return new Seat(
                seat.name(only, "seat"),
                places.read(seat, "at"),
                places.readIfAny(seat, "feet"),
                places.readIfAny(seat, "backrest"),
                stages,
                seat.measureOr("share on seat", usualShare(stages.isEmpty() && occupant.isEmpty())),
                occupant);
    }

    /** Share of a person's mass that is on a seat of which the file does not say. */
    static Measure usualShare(boolean rigid) {
        return rigid
                ? Measure.estimated(1, QuantityKind.RATIO, "all of a person carried rigidly")
                : Measure.estimated(
                        USUAL_SHARE_ON_SEAT, QuantityKind.RATIO, "three quarters of a seated person (from memory)");
    }

    private static List<SeatStage> stages(Part seat) {
        Optional<String> key = seat.atMostOneOf("cushion", "stages");
        if (key.isEmpty()) {
            return List.of();
        }
        if (key.get().equals("cushion")) {
            if (seat.node("cushion").orElseThrow() instanceof Node.Scalar) {
                return List.of(seat.word("cushion", Cushions.NAMED).apply(rest(0)));
            }
            seat.reading().alias(Node.itemPath(seat.path("stages"), 0), seat.path("cushion"));
            return List.of(stage(seat.partOrMissing("cushion", "a cushion", CUSHION_KEYS), rest(0)));
        }
        List<SeatStage> stages = new ArrayList<>();
        List<Part> parts = seat.parts("stages", "a stage of the seat", STAGE_KEYS);
        double below = 0;
        for (int i = 0; i < parts.size(); i++) {
            boolean last = i == parts.size() - 1;
            Measure otherwise = last ? rest(below) : Measure.of(0, QuantityKind.RATIO);
            SeatStage stage = stage(parts.get(i), otherwise);
            below += stage.shareOfPerson().value();
            stages.add(stage);
        }
        return stages;
    }

    private static Measure rest(double below) {
        return Measure.computed(1 - below, QuantityKind.RATIO, "the rest of the seated person");
    }

    private static SeatStage stage(Part part, Measure shareOfPerson) {
        return new SeatStage(
                part.measure("rate", QuantityKind.RATE),
                new DampingReader("damping", "damping ratio").read(part),
                part.measureOrZero("mass", QuantityKind.MASS),
                part.measureOr("share of person", shareOfPerson));
    }
}
