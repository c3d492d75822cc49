package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.modal.Condition;
import org.ridewright.modal.ModalAnalysis;
import org.ridewright.modal.Mode;
import org.ridewright.modal.PlaceResponse;
import org.ridewright.modal.ResponseCurve;
import org.ridewright.modal.Swing;
import org.ridewright.modal.SwingCurve;

/** Every number of a vehicle's modes for other programs, SI units; a value that does not exist is null. */
public final class ModesMetricsJson {
    private ModesMetricsJson() {}

    /** The numbers of all load cases, in their order. */
    public static String render(List<ModalAnalysis> all) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", all.get(0).model().vehicle().name());
        JsonNumbers.put(root, "speed (m/s)", all.get(0).settings().speed());
        ArrayNode cases = root.putArray("load cases");
        all.forEach(each -> analysis(cases.addObject(), each));
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void analysis(ObjectNode node, ModalAnalysis analysis) {
        VehicleModel model = analysis.model();
        node.put("load case", model.loadCase().name());
        node.put("dry friction", analysis.rubs());
        ArrayNode coordinates = node.putArray("coordinates");
        for (int i = 0; i < model.coordinates().size(); i++) {
            coordinates
                    .addObject()
                    .put("name", model.coordinates().names().get(i))
                    .put("unit", model.coordinates().units().get(i));
        }
        for (Condition condition : Condition.values()) {
            ArrayNode modes = node.putArray("modes, springs " + condition.word());
            analysis.modes(condition).modes().forEach(m -> mode(modes.addObject(), analysis, m));
        }
        ArrayNode swings = node.putArray("frequency and damping against amplitude");
        for (SwingCurve curve : analysis.swings()) {
            ObjectNode each = swings.addObject().put("mode", curve.mode());
            ArrayNode points = each.putArray("points");
            for (Swing swing : curve.swings()) {
                ObjectNode point = points.addObject();
                JsonNumbers.put(point, "amplitude of the spring that travels most (m)", swing.travel());
                JsonNumbers.put(point, "frequency (Hz)", swing.frequency());
                JsonNumbers.put(point, "damping ratio of dampers and tyres", swing.viscous());
                JsonNumbers.put(point, "damping ratio of friction", swing.friction());
            }
        }
        responses(node, analysis);
    }

    private static void mode(ObjectNode node, ModalAnalysis analysis, Mode mode) {
        node.put("mode", mode.name());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "natural frequency", mode.frequency(), "Hz");
        JsonNumbers.value(
                values,
                "damped frequency",
                mode.damped().map(Mode.DampedSwing::frequency).orElse(Double.NaN),
                "Hz");
        JsonNumbers.value(
                values,
                "damping ratio",
                mode.damped().map(Mode.DampedSwing::ratio).orElse(Double.NaN),
                "1");
        double behind = mode.centreBehindMass().orElse(Double.NaN);
        JsonNumbers.value(values, "centre of oscillation behind the centre of mass", behind, "m");
        JsonNumbers.value(
                values,
                "centre of oscillation behind the front axle",
                behind + analysis.model().centreOfMass().behindFrontAxle().value(),
                "m");
        ArrayNode shape = node.putArray("shape, normalised to unit modal mass, in the order of the coordinates");
        for (double each : mode.shape()) {
            shape.add(each);
        }
        ArrayNode shares = node.putArray("shares of kinetic energy");
        mode.participations().forEach(p -> {
            ObjectNode share = shares.addObject().put("motion", p.name());
            JsonNumbers.put(share, "share", p.share());
        });
    }

    private static void responses(ObjectNode node, ModalAnalysis analysis) {
        ArrayNode frequencies = node.putArray("frequencies of the responses (Hz)");
        for (double f : ModalAnalysis.frequencies()) {
            frequencies.add(f);
        }
        ArrayNode places = node.putArray("vertical motion over that of the road");
        for (PlaceResponse place : analysis.responses()) {
            ObjectNode each = places.addObject().put("place", place.place());
            ArrayNode curves = each.putArray("curves");
            for (ResponseCurve curve : place.curves()) {
                ObjectNode line = curves.addObject();
                line.put("road", ModesFigures.words(analysis, curve.input()));
                line.put("springs", curve.condition().map(Condition::word).orElse("by harmonic balance"));
                JsonNumbers.put(line, "amplitude of the road (m)", curve.amplitude());
                ArrayNode real = line.putArray("real");
                ArrayNode imaginary = line.putArray("imaginary");
                for (int i = 0; i < curve.values().length; i++) {
                    boolean told = i < curve.leaves() && !curve.values()[i].isNaN();
                    if (told) {
                        real.add(curve.values()[i].getReal());
                        imaginary.add(curve.values()[i].getImaginary());
                    } else {
                        real.addNull();
                        imaginary.addNull();
                    }
                }
            }
        }
    }
}
