package org.ridewright.io;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.OccupantStage;
import org.ridewright.comfort.SeatedOccupant;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.SeatedPerson;
import org.ridewright.vehicle.SeatedPerson.BodyPart;

/** Reads {@code occupant} of a seat: rigid, or a published model by its name. */
final class OccupantReader {
    static final Words<Optional<SeatedPerson>> MODELS = models();

    private OccupantReader() {}

    static Optional<SeatedPerson> read(Part seat) {
        return seat.wordIfAny("occupant", MODELS).orElse(Optional.empty());
    }

    private static Words<Optional<SeatedPerson>> models() {
        Map<String, Optional<SeatedPerson>> models = new LinkedHashMap<>();
        models.put("rigid", Optional.empty());
        for (SeatedOccupant model : SeatedOccupant.published()) {
            models.put(model.name(), Optional.of(person(model)));
        }
        return new Words<>("how the occupant is modelled", models);
    }

    private static SeatedPerson person(SeatedOccupant model) {
        List<BodyPart> parts = new ArrayList<>();
        add(model, model.stages(), Optional.empty(), parts);
        return new SeatedPerson(
                model.name(), figure(model, model.fixedMass() / model.massOnSeat(), QuantityKind.RATIO), parts);
    }

    private static void add(
            SeatedOccupant model, List<OccupantStage> stages, Optional<String> on, List<BodyPart> parts) {
        for (OccupantStage stage : stages) {
            double w = Math.sqrt(stage.stiffness() / stage.mass());
            parts.add(new BodyPart(
                    stage.name(),
                    figure(model, stage.mass() / model.massOnSeat(), QuantityKind.RATIO),
                    figure(model, w / (2 * Math.PI), QuantityKind.FREQUENCY),
                    figure(model, stage.damping() / (2 * stage.mass() * w), QuantityKind.RATIO),
                    on));
            add(model, stage.carried(), Optional.of(stage.name()), parts);
        }
    }

    private static Measure figure(SeatedOccupant model, double value, QuantityKind kind) {
        String standing =
                switch (model.provenance()) {
                    case PARTLY_SEEN -> "frequency and damping as a handbook quotes them, masses from memory";
                    case FROM_MEMORY -> "from memory";
                    case STATED -> "stated";
                };
        return Measure.estimated(value, kind, model.name() + ", " + model.source() + " (" + standing + ")");
    }
}
