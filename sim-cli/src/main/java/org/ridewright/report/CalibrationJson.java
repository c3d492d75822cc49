package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.ridewright.calibration.CalibratedVehicle;
import org.ridewright.calibration.Calibration;
import org.ridewright.calibration.Residual;
import org.ridewright.calibration.RideOverlay;

/** Every number of a calibration for other programs, SI units unless said otherwise; a value that does not exist is null. */
public final class CalibrationJson {
    private CalibrationJson() {}

    /** The numbers. */
    public static String render(String measurements, CalibratedVehicle calibrated) {
        Calibration fit = calibrated.fit();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("vehicle", calibrated.after().name());
        root.put("measurements", measurements);
        ObjectNode search = root.putObject("fit");
        JsonNumbers.put(search, "least sum of squares", fit.objective());
        search.put("data fitted", fit.dataFitted());
        JsonNumbers.put(search, "chance of a greater sum", fit.posterior().chanceOfMisfit());
        JsonNumbers.put(
                search, "factor on variances for misfit", fit.posterior().birge());
        search.put("starts", fit.tried());
        search.put("starts that ended there", fit.agreeing());
        search.put("by evolution", fit.byEvolution());
        search.put("at rest", fit.atRest());
        ArrayNode unknowns = root.putArray("unknowns");
        for (int j = 0; j < fit.unknowns().size(); j++) {
            unknown(unknowns.addObject(), calibrated, j);
        }
        ArrayNode correlation = root.putArray("correlation");
        for (int i = 0; i < fit.unknowns().size(); i++) {
            ArrayNode row = correlation.addArray();
            for (int j = 0; j < fit.unknowns().size(); j++) {
                row.add(fit.posterior().correlation(i, j));
            }
        }
        ArrayNode data = root.putArray("data");
        fit.residuals().stream().filter(r -> r.datum().group().isBlank()).forEach(r -> datum(data.addObject(), r));
        ArrayNode rides = root.putArray("rides");
        calibrated.rides().forEach(ride -> ride(rides.addObject(), ride));
        ArrayNode added = root.putArray("added loads");
        calibrated.addedLoads().forEach(check -> {
            ObjectNode node = added.addObject();
            node.put("counts", check.label());
            ArrayNode values = node.putArray("values");
            JsonNumbers.value(values, "added load", check.load(), "kg");
            JsonNumbers.value(
                    values, "rate by added load", check.result().rate().value(), "N/m");
            JsonNumbers.value(values, "lower end of 90 %", check.result().rate().low(), "N/m");
            JsonNumbers.value(values, "upper end of 90 %", check.result().rate().high(), "N/m");
            JsonNumbers.value(values, "rate calibrated", check.rate(), "N/m");
            JsonNumbers.value(
                    values, "mass by added load", check.result().mass().value(), "kg");
            JsonNumbers.value(values, "mass calibrated", check.mass(), "kg");
        });
        words(root.putArray("cannot be told apart"), CalibrationWords.unclear(calibrated));
        ArrayNode leftOut = root.putArray("left out");
        calibrated
                .leftOut()
                .forEach(l -> leftOut.addObject().put("fact", l.label()).put("reason", l.reason()));
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void words(ArrayNode node, List<String> words) {
        words.forEach(node::add);
    }

    private static void unknown(ObjectNode node, CalibratedVehicle calibrated, int j) {
        Calibration fit = calibrated.fit();
        node.put("path", fit.unknowns().get(j).path());
        node.put("of the vehicle", j < calibrated.ofVehicle());
        node.put("unit", fit.unknowns().get(j).spread().kind().siUnit());
        node.put("prior", fit.unknowns().get(j).prior());
        JsonNumbers.put(node, "before", fit.unknowns().get(j).spread().central());
        JsonNumbers.put(node, "value", fit.value(j));
        JsonNumbers.put(node, "standard error", fit.standardError(j));
        JsonNumbers.put(node, "lower end of 90 %", fit.lower(j));
        JsonNumbers.put(node, "upper end of 90 %", fit.upper(j));
        JsonNumbers.put(node, "narrower by", fit.shrinkage(j));
        JsonNumbers.put(
                node, "moved (standard deviations before)", fit.posterior().z(j));
    }

    private static void datum(ObjectNode node, Residual r) {
        node.put("datum", r.datum().label());
        node.put("unit", r.datum().unit());
        node.put("kept back", r.datum().keptBack());
        JsonNumbers.put(node, "measured", r.datum().observed());
        JsonNumbers.put(node, "standard uncertainty", r.datum().uncertainty());
        JsonNumbers.put(node, "predicted before", r.before());
        JsonNumbers.put(node, "predicted", r.predicted());
        JsonNumbers.put(node, "lower end of 90 %", r.lower());
        JsonNumbers.put(node, "upper end of 90 %", r.upper());
        JsonNumbers.put(node, "normalised residual", r.normalised());
    }

    private static void ride(ObjectNode node, RideOverlay ride) {
        node.put("ride", ride.label());
        node.put("kept back", ride.keptBack());
        ArrayNode values = node.putArray("values");
        JsonNumbers.value(values, "explained before", ride.explainedBefore(), "1");
        JsonNumbers.value(values, "explained", ride.explainedAfter(), "1");
        JsonNumbers.value(values, "speed", ride.speed(), "m/s");
        JsonNumbers.value(values, "standard error of the speed", ride.speedError(), "m/s");
        JsonNumbers.value(values, "r.m.s. of what is left", ride.scatter(), "m/s²");
        JsonNumbers.value(values, "likeness of neighbouring samples", ride.likeness(), "1");
        JsonNumbers.value(values, "independent samples that it is worth", ride.worth(), "1");
    }
}
