package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.bounce.BounceRemarks;
import org.ridewright.bounce.BounceResult;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.bounce.NaturalPartner;
import org.ridewright.bounce.TurningPoint;
import org.ridewright.modal.Condition;

/** Every number of simulated bounce tests for other programs, SI units; a value that does not exist is null. */
public final class BounceMetricsJson {
    private BounceMetricsJson() {}

    /** The numbers of all load cases, in their order. */
    public static String render(List<LoadCaseBounces> all) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", all.get(0).model().vehicle().name());
        ArrayNode loads = root.putArray("load cases");
        for (LoadCaseBounces bounces : all) {
            ObjectNode node = loads.addObject();
            node.put("load case", bounces.model().loadCase().name());
            ArrayNode tests = node.putArray("tests");
            bounces.results().forEach(result -> test(tests.addObject(), bounces, result));
            ArrayNode remarks = node.putArray("remarks");
            BounceRemarks.of(bounces).forEach(remarks::add);
        }
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void test(ObjectNode node, LoadCaseBounces bounces, BounceResult result) {
        node.put("test", result.test().kind().word());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "force", result.force(), "N");
        JsonNumbers.value(values, "depth", result.depth(), "m");
        JsonNumbers.value(
                values,
                "time since which friction holds every spring",
                result.lockedSince().orElse(Double.NaN),
                "s");
        JsonNumbers.value(values, "time with a wheel off the ground", result.wheelOff(), "s");
        JsonNumbers.value(values, "relative residual of energy", result.energyResidual(), "1");
        ArrayNode natural = node.putArray("natural");
        for (Condition condition : Condition.values()) {
            natural(natural.addObject(), bounces.partner(result.test().kind(), condition));
        }
        node.put("counted", result.test().kind().counted().title());
        ArrayNode counts = node.putArray("counts");
        result.counts().values().forEach(count -> count(counts.addObject(), count));
    }

    private static void natural(ObjectNode node, NaturalPartner partner) {
        node.put("condition", partner.condition().word());
        node.put("mode", partner.mode().name());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "natural frequency", partner.frequency(), "Hz");
        JsonNumbers.value(values, "share of the motion", partner.share(), "1");
        double damped = partner.mode().damped().map(d -> d.frequency()).orElse(Double.NaN);
        double ratio = partner.mode().damped().map(d -> d.ratio()).orElse(Double.NaN);
        JsonNumbers.value(values, "damped frequency", damped, "Hz");
        JsonNumbers.value(values, "damping ratio", ratio, "1");
    }

    private static void count(ObjectNode node, Count count) {
        String unit = count.motion().unit();
        node.put("motion", count.motion().title());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "cycles counted", count.cycles(), "1");
        JsonNumbers.value(values, "time counted", count.isHeld() ? Double.NaN : count.duration(), "s");
        JsonNumbers.value(values, "ride frequency", count.frequency().orElse(Double.NaN), "Hz");
        JsonNumbers.value(
                values, "frequency of the first cycle", count.firstFrequency().orElse(Double.NaN), "Hz");
        JsonNumbers.value(
                values, "frequency of the last cycle", count.lastFrequency().orElse(Double.NaN), "Hz");
        JsonNumbers.value(values, "least motion to either side that counts", count.visible(), unit);
        JsonNumbers.value(values, "offset of rest", count.offset(), unit);
        JsonNumbers.value(values, "motion left, to either side", count.left().halfWidth(), unit);
        JsonNumbers.value(
                values,
                "frequency of it",
                count.left().frequency() > 0 ? count.left().frequency() : Double.NaN,
                "Hz");
        count.decay().ifPresent(decay -> {
            node.put("decay", decay.shape().word());
            ArrayNode more = node.putArray("decay values");
            JsonNumbers.value(more, "loss by a straight line, per cycle", decay.straightLoss(), unit);
            JsonNumbers.value(more, "ratio of a swing to the one before, by an exponential", decay.ratio(), "1");
            JsonNumbers.value(more, "damping ratio by an exponential", decay.dampingRatio(), "1");
            JsonNumbers.value(more, "misfit of the straight line", decay.straightMisfit(), "1");
            JsonNumbers.value(more, "misfit of the exponential", decay.exponentialMisfit(), "1");
        });
        ArrayNode turns = node.putArray("turning points");
        for (TurningPoint turn : count.turningPoints()) {
            ObjectNode point = turns.addObject();
            JsonNumbers.put(point, "time (s)", turn.time());
            JsonNumbers.put(point, "value (" + unit + ")", turn.value());
        }
    }
}
