package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.DailyExposure;
import org.ridewright.comfort.ExposureThreshold;
import org.ridewright.comfort.Level;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.Weighting;
import org.ridewright.measurement.ColumnCheck;
import org.ridewright.measurement.Dropout;
import org.ridewright.measurement.LogSpectra;
import org.ridewright.measurement.Piece;
import org.ridewright.measurement.Timing;
import org.ridewright.signal.ThirdOctaveSpectrum;

/** Every number of a log for other programs, in the form of {@link MetricsJson}: objects of {@code name}, {@code value} and {@code unit}. */
public final class LogMetricsJson {
    private static final String ACCELERATION = "m/s²";
    private static final String DOSE = "m/s^1.75";

    private LogMetricsJson() {}

    /** The numbers. */
    public static String render(LogResult result) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("log", result.name());
        root.put("recorded", result.place());
        log(root, result);
        ArrayNode directions = root.putArray("directions");
        for (LogResult.Direction direction : result.directions()) {
            ObjectNode node =
                    directions.addObject().put("direction", direction.name()).put("weighting", direction.weighting());
            node.put("multiplying factor", direction.factor());
            metrics(node.putArray("values"), direction.metrics());
        }
        ArrayNode totals = root.putArray("totals");
        JsonNumbers.value(
                totals,
                "vibration total value a_v of the directions recorded",
                result.vibration().total(),
                ACCELERATION);
        if (result.isBackrestStoodFor()) {
            JsonNumbers.value(
                    totals,
                    "the same with 1.4 on x and y for the backrest not recorded",
                    result.vibration().comfortTotal(),
                    ACCELERATION);
        }
        for (Map.Entry<Axis, AxisVibration> entry : result.vibration().axes().entrySet()) {
            bands(root.putObject("bands " + entry.getKey().name().toLowerCase(Locale.ROOT)), entry.getValue());
        }
        JsonNumbers.value(
                root.putArray("BS 6841"),
                "vertical r.m.s. weighted by Wb",
                result.vibration().vertical().british().rms(),
                ACCELERATION);
        exposure(root, result);
        octaves(root, result);
        ArrayNode remarks = root.putArray("remarks");
        result.remarks().forEach(remarks::add);
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    private static void log(ObjectNode root, LogResult result) {
        Timing timing = result.ride().timing();
        ArrayNode values = root.putArray("sampling");
        JsonNumbers.value(values, "rows", result.ride().recording().size(), "1");
        JsonNumbers.value(values, "sampling rate taken", timing.rate(), "Hz");
        JsonNumbers.value(values, "median interval", timing.interval(), "s");
        JsonNumbers.value(values, "jitter of the intervals, r.m.s.", timing.jitter(), "1");
        JsonNumbers.value(values, "stretches resampled", timing.resampled(), "1");
        JsonNumbers.value(values, "rows without a value", timing.missing(), "1");
        JsonNumbers.value(values, "rows of a repeated instant", timing.repeated(), "1");
        JsonNumbers.value(values, "rows out of order", timing.outOfOrder(), "1");
        JsonNumbers.value(values, "single missing rows spanned", timing.bridged(), "1");
        JsonNumbers.value(
                values, "start-up left out of each stretch", result.ride().startUp(), "s");
        JsonNumbers.value(values, "time counted", result.ride().length(), "s");
        JsonNumbers.value(values, "trusted up to", 0.4 * timing.rate(), "Hz");
        ArrayNode dropouts = root.putArray("dropouts");
        for (Dropout dropout : timing.dropouts()) {
            ObjectNode node = dropouts.addObject().put("before line", dropout.line());
            JsonNumbers.put(node, "at", dropout.at());
            JsonNumbers.put(node, "length", dropout.length());
        }
        ArrayNode pieces = root.putArray("pieces counted");
        for (Piece piece : result.ride().pieces()) {
            pieces.addObject()
                    .put("from", piece.window().from())
                    .put("to", piece.window().to());
        }
        ArrayNode columns = root.putArray("columns");
        for (ColumnCheck check : result.ride().checks()) {
            ObjectNode node = columns.addObject()
                    .put("axis", check.axis().word())
                    .put("column", check.column().name())
                    .put("unit", check.column().unit())
                    .put("unit found", check.column().unitFound());
            ArrayNode found = node.putArray("values");
            JsonNumbers.value(found, "mean", result.ride().mounting().mean().get(check.axis()), ACCELERATION);
            JsonNumbers.value(found, "resolution", check.resolution(), ACCELERATION);
            JsonNumbers.value(found, "places clipped", check.clipped().size(), "1");
        }
        ObjectNode mounting = root.putObject("mounting");
        mounting.put("gravity in the values", result.ride().mounting().gravityFound());
        mounting.put("forward known", result.ride().mounting().forwardKnown());
        JsonNumbers.put(
                mounting,
                "tilt of the logger's z axis (degrees)",
                result.ride().mounting().tilt());
        ArrayNode rows = mounting.putArray("rows of the rotation (forward, left, up)");
        for (double[] row : result.ride().mounting().rotation()) {
            ArrayNode cells = rows.addArray();
            for (double cell : row) {
                cells.add(cell);
            }
        }
    }

    private static void metrics(ArrayNode values, VibrationMetrics m) {
        JsonNumbers.value(values, "weighted r.m.s.", m.rms(), ACCELERATION);
        JsonNumbers.value(values, "MTVV", m.mtvv(), ACCELERATION);
        JsonNumbers.value(values, "VDV", m.vdv(), DOSE);
        JsonNumbers.value(values, "estimated VDV", m.estimatedVdv(), DOSE);
        JsonNumbers.value(values, "weighted peak", m.peak(), ACCELERATION);
        JsonNumbers.value(values, "unweighted peak", m.unweightedPeak(), ACCELERATION);
        JsonNumbers.value(values, "crest factor", m.crestFactor(), "1");
        JsonNumbers.value(values, "MTVV over r.m.s.", m.mtvvRatio(), "1");
        JsonNumbers.value(values, "VDV over r.m.s. and fourth root of time", m.vdvRatio(), "1");
    }

    private static void bands(ObjectNode node, AxisVibration v) {
        level(node.putArray("heave below 3 Hz"), v.bands().heave());
        level(node.putArray("jolt 3 to 10 Hz"), v.bands().jolt());
        level(node.putArray("buzz above 10 Hz"), v.bands().buzz());
        level(node.putArray("whole"), v.bands().whole());
        ArrayNode jerk = node.putArray("jerk below 10 Hz");
        JsonNumbers.value(jerk, "r.m.s.", v.jerk().felt().rms(), "m/s³");
        JsonNumbers.value(jerk, "peak", v.jerk().felt().peak(), "m/s³");
    }

    private static void level(ArrayNode values, Level level) {
        JsonNumbers.value(values, "r.m.s.", level.rms(), ACCELERATION);
        JsonNumbers.value(values, "peak", level.peak(), ACCELERATION);
    }

    private static void exposure(ObjectNode root, LogResult result) {
        if (!result.isExposureKnown()) {
            return;
        }
        ObjectNode node = root.putObject("daily exposure");
        node.put("caution", DailyExposure.CAUTION);
        ArrayNode times = node.putArray("time to reach");
        for (ExposureThreshold threshold : ExposureThreshold.values()) {
            JsonNumbers.value(
                    times, threshold.label() + ", A(8)", DailyExposure.timeToA8(result.exposed(), threshold), "s");
            JsonNumbers.value(
                    times, threshold.label() + ", VDV", DailyExposure.timeToVdv(result.exposed(), threshold), "s");
        }
        if (result.riding().isPresent()) {
            DailyExposure day =
                    DailyExposure.of(result.exposed(), result.riding().getAsDouble());
            ArrayNode values = node.putArray("of the time stated");
            JsonNumbers.value(values, "riding a day", result.riding().getAsDouble(), "s");
            JsonNumbers.value(values, "A(8) of the worst axis", day.worstByA8().a8(), ACCELERATION);
            JsonNumbers.value(values, "VDV of the worst axis", day.worstByVdv().vdv(), DOSE);
        }
        result.sickness().ifPresent(s -> {
            ArrayNode values = root.putArray("motion sickness");
            JsonNumbers.value(values, "exposure, as long as measured", s.exposure(), "s");
            JsonNumbers.value(values, "MSDV, vertical", s.dose(), "m/s^1.5");
            JsonNumbers.value(values, "expected to vomit", s.percentage(), "%");
        });
    }

    private static void octaves(ObjectNode root, LogResult result) {
        Optional<ThirdOctaveSpectrum> octaves = result.spectra().flatMap(LogSpectra::vertical);
        if (octaves.isEmpty()) {
            return;
        }
        Weighting weighting = result.vibration().position().weighting(Axis.Z);
        ArrayNode bands = root.putArray("one-third octaves, vertical");
        for (int i = 0; i < octaves.get().bands().size(); i++) {
            double nominal = octaves.get().bands().get(i).nominal();
            bands.addObject()
                    .put("nominal (Hz)", nominal)
                    .put("r.m.s. (m/s²)", octaves.get().rms(i))
                    .put("factor " + weighting.symbol(), weighting.factor(nominal))
                    .put("resolved", octaves.get().isResolved(i));
        }
    }
}
