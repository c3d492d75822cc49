package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.TurningPoint;
import org.ridewright.friction.BestBand;
import org.ridewright.friction.BodyAlone;
import org.ridewright.friction.ForcedPoint;
import org.ridewright.friction.ForcedResponse;
import org.ridewright.friction.FrictionLab;
import org.ridewright.friction.LoopPoint;
import org.ridewright.friction.RingDowns;
import org.ridewright.friction.RingDowns.Rung;
import org.ridewright.friction.SpringLoops;
import org.ridewright.friction.TradeLine;

/** Every number of the friction laboratory for other programs, SI units; a value that does not exist is null. */
public final class FrictionMetricsJson {
    private static final String NOTE =
            "A value that does not exist is null. The area of a loop is 0 where it is less than 1e-9 of the loop's height times its width, which is the solver's round-off.";

    private FrictionMetricsJson() {}

    /** The numbers. */
    public static String render(FrictionLab lab) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", lab.model().vehicle().name());
        root.put("load case", lab.model().loadCase().name());
        root.put("note", NOTE);
        ArrayNode answer = root.putArray("answer");
        FrictionWords.summary(lab).forEach(answer::add);
        ArrayNode sections = root.putArray("sections");
        for (Section section : FrictionWords.sections(lab)) {
            ArrayNode paragraphs =
                    sections.addObject().put("heading", section.heading()).putArray("paragraphs");
            section.paragraphs().forEach(paragraphs::add);
        }
        ArrayNode loops = root.putArray("loops");
        lab.loops().forEach(each -> loop(loops.addObject(), each));
        ArrayNode ringDowns = root.putArray("ring-downs");
        lab.ringDowns().forEach(each -> ringDown(ringDowns.addObject(), each));
        forced(root.putObject("sinusoidal road"), lab.forced());
        alone(root.putObject("body alone on its springs"), lab.alone());
        trade(root.putObject("trade-off"), lab);
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void loop(ObjectNode node, SpringLoops loops) {
        node.put("spring", loops.spring()).put("load case", loops.loadCase());
        JsonNumbers.put(node, "load (N)", loops.load());
        JsonNumbers.put(node, "limit of friction (N)", loops.limit());
        ArrayNode points = node.putArray("points");
        for (LoopPoint p : loops.points()) {
            ObjectNode point = points.addObject();
            JsonNumbers.put(point, "amplitude (m)", p.amplitude());
            JsonNumbers.put(point, "area, simulated (J)", p.area());
            JsonNumbers.put(point, "area, harmonic balance (J)", p.balancedArea());
            JsonNumbers.put(point, "rate in step, simulated (N/m)", p.firstHarmonicRate());
            JsonNumbers.put(point, "rate in step, harmonic balance (N/m)", p.balancedRate());
            JsonNumbers.put(point, "secant rate, simulated (N/m)", p.secantRate());
            JsonNumbers.put(
                    point,
                    "damper of equal loss at 2 Hz, simulated (N s/m)",
                    p.damper(2 * Math.PI * LoopFigures.DAMPER_FREQUENCY));
        }
    }

    private static void ringDown(ObjectNode node, RingDowns each) {
        node.put("pressed", each.kind().word());
        JsonNumbers.put(node, "depth (m)", each.depth());
        ArrayNode rungs = node.putArray("let go");
        for (Rung rung : RingDownFigures.rungs(each)) {
            Count count = rung.result().count();
            ObjectNode one = rungs.addObject().put("springs", rung.word());
            boolean damper = !each.rungs().contains(rung);
            JsonNumbers.put(
                    one,
                    damper ? "damping over limit of friction (s/m)" : "friction over that as written",
                    rung.scale());
            swings(one, count);
        }
    }

    private static void swings(ObjectNode node, Count count) {
        String unit = " (" + count.motion().unit() + ")";
        boolean on = RingDownWords.swingsOn(count);
        JsonNumbers.put(node, "cycles", count.slidingCycles());
        JsonNumbers.put(node, "cycles with held springs, as far as the run goes", count.cyclesSeen());
        JsonNumbers.put(
                node,
                "swinging left on held springs, to either side" + unit,
                on ? count.left().halfWidth() : Double.NaN);
        JsonNumbers.put(
                node,
                "frequency on held springs (Hz)",
                on && count.left().frequency() > 0 ? count.left().frequency() : Double.NaN);
        JsonNumbers.put(
                node,
                "ride frequency (Hz)",
                count.isOnHeldSprings() ? Double.NaN : count.frequency().orElse(Double.NaN));
        turns(node, "turning points" + unit, count.slidingTurns());
        turns(node, "turning points with held springs, as far as the run goes" + unit, count.seen());
        if (RingDownWords.hasShape(count)) {
            node.put("swings shrink", count.decay().orElseThrow().shape().word());
        } else {
            node.putNull("swings shrink")
                    .put(
                            "why not",
                            count.isOnHeldSprings()
                                    ? "all swings that are seen are on springs that friction holds, which this model hardly damps"
                                    : "fewer than four swings, which lie on a straight line as well as on an exponential");
        }
    }

    private static void turns(ObjectNode node, String name, List<TurningPoint> turns) {
        ArrayNode values = node.putArray(name);
        turns.forEach(t -> values.add(t.value()));
    }

    private static void forced(ObjectNode node, ForcedResponse forced) {
        array(node, "frequencies (Hz)", forced.fine());
        array(node, "amplitude below which no spring slides (m)", forced.threshold());
        array(node, "body over road, friction left out", forced.sliding());
        array(node, "body over road, locked", forced.locked());
        ArrayNode curves = node.putArray("amplitudes");
        for (ForcedResponse.Curve curve : forced.curves()) {
            ObjectNode one = curves.addObject();
            JsonNumbers.put(one, "amplitude (m)", curve.amplitude());
            array(one, "body over road, harmonic balance", curve.balanced());
            ArrayNode points = one.putArray("simulated");
            for (ForcedPoint p : curve.simulated()) {
                ObjectNode point = points.addObject();
                JsonNumbers.put(point, "frequency (Hz)", p.frequency());
                JsonNumbers.put(point, "body over road, first harmonic", p.harmonic());
                JsonNumbers.put(point, "body over road, half of greatest less least", p.amplitude());
                JsonNumbers.put(point, "share of time locked", p.locked());
                point.put("steady", p.settled()).put("lifts off or meets a stop", p.liftsOff());
                if (p.hasFailed()) {
                    point.put("left out", p.failed());
                }
            }
        }
    }

    private static void alone(ObjectNode node, BodyAlone alone) {
        JsonNumbers.put(node, "mass (kg)", alone.mass());
        JsonNumbers.put(node, "rate (N/m)", alone.rate());
        JsonNumbers.put(node, "limit of friction (N)", alone.limit());
        JsonNumbers.put(node, "natural frequency (Hz)", alone.frequency());
        ArrayNode curves = node.putArray("amplitudes");
        for (BodyAlone.Curve curve : alone.curves()) {
            ObjectNode one = curves.addObject();
            JsonNumbers.put(one, "amplitude (m)", curve.amplitude());
            points(one.putArray("rigid friction, simulated"), alone, curve, curve.rigid());
            points(one.putArray("locked rate as written, simulated"), alone, curve, curve.given());
        }
    }

    private static void points(ArrayNode node, BodyAlone alone, BodyAlone.Curve curve, List<ForcedPoint> points) {
        for (ForcedPoint p : points) {
            ObjectNode point = node.addObject();
            JsonNumbers.put(point, "frequency (Hz)", p.frequency());
            JsonNumbers.put(point, "travel of the springs over the road", p.amplitude());
            JsonNumbers.put(point, "by Den Hartog's closed form", alone.closed(curve, p));
        }
    }

    private static void trade(ObjectNode node, FrictionLab lab) {
        node.put("draws", lab.tradeOff().draws());
        node.put("felt at", lab.tradeOff().place());
        JsonNumbers.put(
                node,
                "probability of one further draw from low to high",
                TradeLine.Spread.coverage(lab.tradeOff().draws()));
        node.put("values drawn within tolerances", lab.tradeOff().uncertain());
        ArrayNode factors = node.putArray("friction over that as written");
        lab.tradeOff().factors().forEach(factors::add);
        ArrayNode lines = node.putArray("lines");
        for (TradeLine line : lab.tradeOff().lines()) {
            ObjectNode one = lines.addObject();
            one.put("criterion", line.criterion().title())
                    .put(
                            "unit",
                            line.criterion().unit().isEmpty()
                                    ? "1"
                                    : line.criterion().unit())
                    .put("road", line.road());
            JsonNumbers.put(one, "speed (m/s)", line.speed());
            ArrayNode draws = one.putArray("by draw and friction");
            for (double[] row : line.values()) {
                ArrayNode values = draws.addArray();
                for (double value : row) {
                    values.add(value);
                }
            }
            if (line.criterion().lessIsBetter()) {
                BestBand band = BestBand.of(line);
                one.put("verdict", TradeWords.verdict(band));
                spread(one.putObject("least at"), band.best());
                spread(one.putObject("as good from"), band.from());
                spread(one.putObject("to"), band.to());
                one.put("draws in which that as written is as good", band.draws(1));
            }
        }
    }

    private static void spread(ObjectNode node, TradeLine.Spread spread) {
        JsonNumbers.put(node, "low", spread.low());
        JsonNumbers.put(node, "median", spread.median());
        JsonNumbers.put(node, "high", spread.high());
    }

    private static void array(ObjectNode node, String name, double[] values) {
        ArrayNode array = node.putArray(name);
        for (double value : values) {
            if (Double.isFinite(value)) {
                array.add(value);
            } else {
                array.addNull();
            }
        }
    }
}
