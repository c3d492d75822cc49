package org.ridewright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Level;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.ride.Missed;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.RideResult.Peak;
import org.ridewright.ride.RideResult.SeatResult;
import org.ridewright.ride.Scenario;
import org.ridewright.uncertainty.UncertainRide;
import org.ridewright.uncertainty.UncertainRides;
import org.ridewright.vehicle.Axle;

/**
 * Every number of a run for other programs: each value an object of {@code name}, {@code value}, {@code unit}, and {@code at} (s) where it
 * belongs to an instant. A value that does not exist is null.
 */
public final class MetricsJson {
    private static final String ACCELERATION = "m/s²";
    private static final String DOSE = "m/s^1.75";

    private MetricsJson() {}

    /** The numbers of all ride tests, in their order. */
    public static String render(Scenario scenario, List<RideResult> results) {
        return render(scenario, results, Optional.empty());
    }

    /** The same, each number with the interval that the inputs' tolerances give it. */
    public static String render(Scenario scenario, UncertainRides.Outcome outcome) {
        List<RideResult> results =
                outcome.rides().stream().map(UncertainRide::ride).toList();
        return render(scenario, results, Optional.of(outcome));
    }

    private static String render(
            Scenario scenario, List<RideResult> results, Optional<UncertainRides.Outcome> uncertain) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("scenario", scenario.name());
        root.put("start", scenario.start().word());
        root.put("braked", scenario.braked());
        JsonNumbers.value(
                root.putArray("settings"),
                "sampling rate of the traces",
                scenario.samplingRate().value(),
                "Hz");
        ArrayNode rides = root.putArray("ride tests");
        for (int i = 0; i < results.size(); i++) {
            ObjectNode node = rides.addObject();
            ride(node, results.get(i));
            if (uncertain.isPresent()) {
                RideNumbers.annotate(node, uncertain.get().rides().get(i).numbers());
            }
        }
        uncertain.ifPresent(outcome -> {
            ObjectNode how = root.putObject("uncertainty");
            how.put("interval", "5 % to 95 % of the draws");
            how.put(
                    "draws",
                    outcome.rides().isEmpty() ? 0 : outcome.rides().get(0).draws());
            how.put("values drawn", outcome.uncertainValues());
            how.put("draws replaced", outcome.replaced());
        });
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("numbers could not be written as JSON", e);
        }
    }

    static void ride(ObjectNode node, RideResult result) {
        RideName name = RideName.of(result);
        node.put("vehicle", name.vehicle());
        node.put("vehicle file", result.vehicleFile());
        node.put("load case", name.load());
        node.put("road", name.road());
        node.put("speed as written", name.speed());
        ArrayNode test = node.putArray("test");
        JsonNumbers.value(test, "speed", result.speed(), "m/s");
        JsonNumbers.value(test, "duration", result.duration(), "s");
        JsonNumbers.value(test, "window from", result.window().from(), "s");
        JsonNumbers.value(test, "window to", result.window().to(), "s");
        for (RideResult.AxleTimes axle : result.axles()) {
            JsonNumbers.value(test, Axle.title(axle.axle()) + " meets the obstacle", axle.meets(), "s");
            JsonNumbers.value(test, Axle.title(axle.axle()) + " leaves the obstacle", axle.leaves(), "s");
        }
        atRest(node.putObject("at rest"), result);
        ArrayNode seats = node.putArray("seats");
        result.seats().forEach(seat -> seat(seats.addObject(), seat));
        ArrayNode points = node.putArray("points");
        for (RideResult.PointResult point : result.points()) {
            ObjectNode place = points.addObject().put("point", point.point());
            ArrayNode values = place.putArray("values");
            peak(values, "greatest vertical acceleration", point.greatest(), ACCELERATION);
            peak(values, "least vertical acceleration", point.least(), ACCELERATION);
            peak(values, "extreme longitudinal acceleration", point.forward(), ACCELERATION);
            peak(values, "extreme lateral acceleration", point.leftward(), ACCELERATION);
        }
        springs(node.putArray("springs and dampers"), result);
        wheels(node.putArray("wheels"), result);
        peak(node.putArray("draught"), "greatest draught", result.draught(), "N");
        result.speedGained().ifPresent(gained -> peak(node.putArray("surge"), "extreme speed gained", gained, "m/s"));
        missed(node.putArray("without and with surge and sway"), result);
        energy(node.putArray("energy"), result);
        solver(node.putArray("solver"), result);
        ArrayNode remarks = node.putArray("remarks");
        result.remarks().forEach(remarks::add);
    }

    private static void atRest(ObjectNode node, RideResult result) {
        VehicleModel model = result.model();
        ArrayNode masses = node.putArray("masses");
        JsonNumbers.value(masses, "sprung mass with load", model.sprungMass(), "kg");
        JsonNumbers.value(masses, "total mass", model.totalMass(), "kg");
        JsonNumbers.value(
                masses,
                "centre of mass behind front axle",
                -model.centreOfMass().x(),
                "m");
        JsonNumbers.value(
                masses, "centre of mass left of centre", model.centreOfMass().y(), "m");
        JsonNumbers.value(
                masses, "centre of mass above ground", model.centreOfMass().z(), "m");
        JsonNumbers.value(masses, "height of the pitch axis", model.pitchAxisHeight(), "m");
        ArrayNode coordinates = node.putArray("coordinates from the free state");
        double[] q = model.rest().q();
        for (int i = 0; i < q.length; i++) {
            JsonNumbers.value(
                    coordinates,
                    model.coordinates().names().get(i),
                    q[i],
                    model.coordinates().units().get(i));
        }
    }

    private static void seat(ObjectNode node, SeatResult seat) {
        node.put("seat", seat.seat());
        node.put("person", seat.person());
        ArrayNode values = node.putArray("values");
        peak(values, "greatest vertical acceleration, unweighted", seat.greatest(), ACCELERATION);
        peak(values, "least vertical acceleration, unweighted", seat.least(), ACCELERATION);
        JsonNumbers.value(values, "total of the weighted r.m.s. at the seat", seat.total(Position.SEAT), ACCELERATION);
        JsonNumbers.value(values, "total of the weighted r.m.s. at the feet", seat.total(Position.FEET), ACCELERATION);
        JsonNumbers.value(values, "time off the seat", seat.timeOff(), "s");
        seat.effectiveness().ifPresent(e -> {
            JsonNumbers.value(values, "SEAT by r.m.s.", e.byRms(), "%");
            JsonNumbers.value(values, "SEAT by VDV", e.byVdv(), "%");
        });
        seat.sickness().ifPresent(s -> {
            JsonNumbers.value(values, "motion sickness dose MSDVz", s.dose(), "m/s^1.5");
            JsonNumbers.value(values, "percentage by the formula of ISO 2631-1, annex D", s.percentage(), "%");
        });
        seat.felt().ifPresent(person -> {
            JsonNumbers.value(values, "overall vibration total", person.overallTotal(), ACCELERATION);
            JsonNumbers.value(values, "VDV of all axes after BS 6841", person.britishDose(), DOSE);
            for (Position position : person.points().keySet()) {
                String place = position.name().toLowerCase(Locale.ROOT);
                axes(node.putObject("at the " + place), person.metrics(position));
                person.axis(position, Axis.Z)
                        .filter(z -> !Double.isNaN(z.bands().heave().rms()))
                        .ifPresent(z -> kinds(node.putArray("kinds of vertical motion at the " + place), z));
            }
            axes(node.putObject("at the seat after BS 6841"), person.british(Position.SEAT));
        });
    }

    private static void kinds(ArrayNode values, AxisVibration z) {
        level(values, "heave, below 3 Hz", z.bands().heave());
        level(values, "jolt, 3 to 10 Hz", z.bands().jolt());
        level(values, "buzz, above 10 Hz", z.bands().buzz());
        JsonNumbers.value(values, "jerk below 10 Hz, r.m.s.", z.jerk().felt().rms(), "m/s³");
        JsonNumbers.value(values, "jerk below 10 Hz, peak", z.jerk().felt().peak(), "m/s³");
    }

    private static void level(ArrayNode values, String name, Level level) {
        JsonNumbers.value(values, name + ", r.m.s.", level.rms(), ACCELERATION);
        JsonNumbers.value(values, name + ", peak", level.peak(), ACCELERATION);
    }

    private static void axes(ObjectNode node, Map<Axis, VibrationMetrics> byAxis) {
        for (Axis axis : Axis.values()) {
            VibrationMetrics m = byAxis.get(axis);
            if (m == null) {
                continue;
            }
            ArrayNode values = node.putArray(axis.name().toLowerCase(Locale.ROOT));
            JsonNumbers.value(values, "window from", m.window().from(), "s");
            JsonNumbers.value(values, "window to", m.window().to(), "s");
            JsonNumbers.value(values, "weighted r.m.s.", m.rms(), axis.unit());
            JsonNumbers.value(values, "MTVV", m.mtvv(), axis.unit());
            String dose = axis.unit().startsWith("rad") ? "rad/s^1.75" : DOSE;
            JsonNumbers.value(values, "VDV", m.vdv(), dose);
            JsonNumbers.value(values, "estimated VDV", m.estimatedVdv(), dose);
            JsonNumbers.value(values, "weighted peak", m.peak(), axis.unit());
            JsonNumbers.value(values, "unweighted peak", m.unweightedPeak(), axis.unit());
            JsonNumbers.value(values, "crest factor", m.crestFactor(), "1");
            JsonNumbers.value(values, "MTVV over r.m.s.", m.mtvvRatio(), "1");
            JsonNumbers.value(values, "VDV over r.m.s. and fourth root of time", m.vdvRatio(), "1");
        }
    }

    private static void springs(ArrayNode array, RideResult result) {
        for (ElementResult spring : result.springs()) {
            Units units = Units.of(spring);
            ObjectNode node = array.addObject().put("element", spring.element()).put("kind", spring.kind());
            ArrayNode values = node.putArray("values");
            JsonNumbers.value(values, "compression at rest", spring.atRest(), units.travel());
            JsonNumbers.value(values, "force at rest", spring.forceAtRest(), units.force());
            JsonNumbers.value(values, "greatest compression from rest", spring.compression(), units.travel());
            JsonNumbers.value(values, "greatest extension from rest", spring.extension(), units.travel());
            JsonNumbers.value(values, "greatest force", spring.greatestForce(), units.force());
            JsonNumbers.value(values, "least force", spring.leastForce(), units.force());
            JsonNumbers.value(values, "energy dissipated", spring.dissipated(), "J");
            JsonNumbers.value(values, "share of time locked", spring.lockedShare(), "1");
        }
    }

    private static void wheels(ArrayNode array, RideResult result) {
        for (RideResult.WheelResult wheel : result.wheels()) {
            ArrayNode values = array.addObject().put("wheel", wheel.wheel()).putArray("values");
            JsonNumbers.value(values, "load at rest", wheel.loadAtRest(), "N");
            peak(values, "least load", wheel.least(), "N");
            peak(values, "greatest load", wheel.greatest(), "N");
            JsonNumbers.value(values, "time off the ground", wheel.timeOff(), "s");
        }
    }

    private static void missed(ArrayNode array, RideResult result) {
        String[] axes = {"longitudinal", "lateral", "vertical"};
        for (Missed missed : result.missed()) {
            ArrayNode values = array.addObject().put("place", missed.place()).putArray("values");
            for (int i = 0; i < axes.length; i++) {
                String name = axes[i] + " acceleration, unweighted r.m.s., ";
                JsonNumbers.value(
                        values, name + "without", missed.without().get(i).rms(), ACCELERATION);
                JsonNumbers.value(values, name + "with", missed.with().get(i).rms(), ACCELERATION);
            }
        }
    }

    private static void energy(ArrayNode values, RideResult result) {
        JsonNumbers.value(values, "work of road and hitch", result.energy().work(), "J");
        JsonNumbers.value(values, "change of stored energy", result.energy().stored(), "J");
        JsonNumbers.value(values, "energy dissipated", result.energy().dissipated(), "J");
        JsonNumbers.value(values, "residual", result.energy().residual(), "J");
        JsonNumbers.value(values, "relative residual", result.energy().relativeResidual(), "1");
    }

    private static void solver(ArrayNode values, RideResult result) {
        count(values, "steps", result.statistics().steps());
        count(values, "switches of regime", result.statistics().switches());
        count(values, "switches by friction", result.statistics().frictionSwitches());
        count(values, "switches by contact", result.statistics().contactSwitches());
        JsonNumbers.value(values, "mean order", result.statistics().meanOrder(), "1");
        JsonNumbers.value(values, "smallest step", result.statistics().smallestStep(), "s");
    }

    private static void count(ArrayNode values, String name, long count) {
        values.addObject().put("name", name).put("value", count).put("unit", "1");
    }

    private static void peak(ArrayNode values, String name, Peak peak, String unit) {
        ObjectNode node = JsonNumbers.value(values, name, peak.value(), unit);
        JsonNumbers.put(node, "at", peak.at());
    }
}
