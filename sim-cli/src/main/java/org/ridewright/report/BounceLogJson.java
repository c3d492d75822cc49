package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.ridewright.report.BounceLogResult.Motion;
import org.ridewright.ringdown.Estimate;
import org.ridewright.ringdown.RingDown;

/** Every number of a log's bounce tests for other programs: objects of {@code name}, {@code value} and {@code unit}, estimates with error and interval. */
public final class BounceLogJson {
    private BounceLogJson() {}

    /** The numbers. */
    public static String render(BounceLogResult result) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("log", result.name());
        root.put("direction", result.direction().word());
        JsonNumbers.value(
                root.putArray("sampling"),
                "sampling rate taken",
                result.recorded().timing().rate(),
                "Hz");
        root.put("intervals hold the truth in", Estimate.CONFIDENCE);
        ArrayNode motions = root.putArray("motions");
        for (Motion motion : result.motions()) {
            ObjectNode node = motions.addObject().put("motion", motion.name());
            ArrayNode releases = node.putArray("releases");
            motion.ringDowns().releases().forEach(release -> release(releases.addObject(), release));
            motion.ringDowns().together().ifPresent(all -> {
                ObjectNode joint = node.putObject("together").put("releases", all.releases());
                joint.put("decay", all.kind().name().toLowerCase(Locale.ROOT));
                ArrayNode values = joint.putArray("values");
                estimate(values, "ride frequency", all.frequency(), "Hz");
                estimate(values, "natural frequency", all.naturalFrequency(), "Hz");
                estimate(values, "damping ratio", all.dampingRatio(), "1");
                estimate(values, "friction over mass", all.friction(), "m/s²");
                estimate(values, "friction over rate, F/k", all.frictionLength(), "m");
            });
            ArrayNode leftOut = node.putArray("left out");
            motion.ringDowns().leftOut().forEach(leftOut::add);
        }
        ArrayNode remarks = root.putArray("remarks");
        result.remarks().forEach(remarks::add);
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void release(ObjectNode node, RingDown release) {
        node.put("decay", release.kind().name().toLowerCase(Locale.ROOT));
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "released at", release.at(), "s");
        JsonNumbers.value(values, "fitted up to", release.end(), "s");
        JsonNumbers.value(values, "cycles", release.cycles(), "1");
        JsonNumbers.value(values, "time of these cycles", release.counted(), "s");
        estimate(values, "ride frequency", release.frequency(), "Hz");
        estimate(values, "natural frequency", release.naturalFrequency(), "Hz");
        estimate(values, "damping ratio", release.dampingRatio(), "1");
        estimate(values, "friction over mass", release.friction(), "m/s²");
        estimate(values, "friction over rate, F/k", release.frictionLength(), "m");
        JsonNumbers.value(values, "acceleration just after the release", release.firstAcceleration(), "m/s²");
        JsonNumbers.value(values, "left by the fit, r.m.s.", release.noise(), "m/s²");
        JsonNumbers.value(values, "samples that counted", release.samples(), "1");
        JsonNumbers.value(values, "independent samples that they are worth", release.independent(), "1");
        release.softness().ifPresent(q -> estimate(values, "rate over locked friction's rate, k/k_p", q, "1"));
        release.second().ifPresent(second -> {
            ArrayNode other = node.putArray("second mode");
            estimate(other, "frequency", second.frequency(), "Hz");
            estimate(other, "damping ratio", second.dampingRatio(), "1");
            JsonNumbers.value(other, "size at first over that of the first mode", second.share(), "1");
        });
        ArrayNode alone = node.putArray("were it one kind alone");
        estimate(alone, "friction over mass, dry alone", release.dryOnly().value(), "m/s²");
        JsonNumbers.value(alone, "left by dry alone, r.m.s.", release.dryOnly().noise(), "m/s²");
        estimate(alone, "damping ratio, viscous alone", release.viscousOnly().value(), "1");
        JsonNumbers.value(
                alone, "left by viscous alone, r.m.s.", release.viscousOnly().noise(), "m/s²");
        ArrayNode halves = node.putArray("half cycles");
        for (RingDown.Amplitude half : release.amplitudes()) {
            ObjectNode one = halves.addObject();
            JsonNumbers.put(one, "time (s)", half.time());
            JsonNumbers.put(one, "recorded (m/s²)", half.recorded());
            JsonNumbers.put(one, "fitted (m/s²)", half.fitted());
        }
        ArrayNode remarks = node.putArray("remarks");
        release.remarks().forEach(remarks::add);
    }

    private static void estimate(ArrayNode values, String name, Estimate x, String unit) {
        ObjectNode node = JsonNumbers.value(values, name, x.value(), unit);
        JsonNumbers.put(node, "standard error", x.standardError());
        JsonNumbers.put(node, "lower", x.lower());
        JsonNumbers.put(node, "upper", x.upper());
    }
}
