package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.standing.BodyLevel;
import org.ridewright.standing.SpringLoad;
import org.ridewright.standing.Standing;
import org.ridewright.vehicle.Vehicle;

/** Every number of how a vehicle stands for other programs, SI units; a value that does not exist is null. */
public final class LoadsMetricsJson {
    private LoadsMetricsJson() {}

    /** The numbers of all load cases, in their order. */
    public static String render(Vehicle vehicle, List<Standing> all) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", vehicle.name());
        ArrayNode cases = root.putArray("load cases");
        all.forEach(each -> standing(cases.addObject(), vehicle, each));
        ArrayNode cautions = root.putArray("cautions");
        LoadsTables.cautions(all).forEach(cautions::add);
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void standing(ObjectNode node, Vehicle vehicle, Standing each) {
        node.put("load case", each.loadCase().name());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "mass of vehicle and load", each.mass(), "kg");
        each.wheels().forEach(w -> JsonNumbers.value(values, "load on " + w.name(), w.load(), "N"));
        for (int a = 0; a < vehicle.axles().size(); a++) {
            JsonNumbers.value(values, "load on " + vehicle.axles().get(a).title(), each.axleLoad(a), "N");
        }
        each.hitches().forEach(h -> JsonNumbers.value(values, "load on " + h.name(), h.load(), "N"));
        JsonNumbers.value(values, "pitch from nothing aboard, nose down", each.pitch(), "rad");
        JsonNumbers.value(values, "roll from nothing aboard, left side up", each.roll(), "rad");
        JsonNumbers.value(values, "pitch from free springs, nose down", each.pitchFromFree(), "rad");
        JsonNumbers.value(values, "roll from free springs, left side up", each.rollFromFree(), "rad");
        for (BodyLevel level : each.levels()) {
            JsonNumbers.value(
                    values, "rise of the body from nothing aboard, left, axle " + level.axle(), level.left(), "m");
            JsonNumbers.value(
                    values, "rise of the body from nothing aboard, right, axle " + level.axle(), level.right(), "m");
        }
        ArrayNode springs = node.putArray("springs");
        each.springs().forEach(s -> spring(springs.addObject(), s));
    }

    private static void spring(ObjectNode node, SpringLoad spring) {
        node.put("spring", spring.name());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "force", spring.force(), "N");
        JsonNumbers.value(values, "limit of friction", spring.friction(), "N");
        JsonNumbers.value(values, "rate while sliding", spring.rate(), "N/m");
        JsonNumbers.value(values, "deflection from free", spring.deflection(), "m");
        JsonNumbers.value(values, "deflection from nothing aboard", spring.fromEmpty(), "m");
        spring.stages()
                .forEach(s ->
                        JsonNumbers.value(values, "travel left to " + s.kind().word(), s.left(), "m"));
        spring.leaves().ifPresent(leaves -> {
            JsonNumbers.value(values, "stress", leaves.stress(), "Pa");
            JsonNumbers.value(
                    values, "stress on the bump stop", leaves.atBumpStop().orElse(Double.NaN), "Pa");
            JsonNumbers.value(values, "allowable stress", leaves.allowable().orElse(Double.NaN), "Pa");
        });
    }
}
