package org.ridewright.calibration;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Handling;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.dynamics.WheelPlace;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.RideRunner;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Road;
import org.ridewright.signal.Channel;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.LoadCase;
import org.ridewright.vehicle.Place;
import org.ridewright.vehicle.Vehicle;
import org.ridewright.wheel.Ground;

/**
 * A vehicle whose true values are drawn from the tolerances of its file and known to nobody but the test, and what a yard with scales, tape and
 * stopwatch would write down of it. Counts are whole half cycles of the simulated test, timed with a person's error.
 */
final class HiddenVehicle {
    private static final double LOGGED = 100;

    private final Vehicle truth;
    private final Map<String, Double> values = new HashMap<>();
    private final Random chance;
    private final StringBuilder facts = new StringBuilder();

    HiddenVehicle(Path file, long seed) {
        chance = new Random(seed);
        VehicleDocument document = VehicleDocument.read(file);
        JointSpread spread = document.spread();
        Vehicle drawn = null;
        while (drawn == null) {
            double[] w = chance.doubles(spread.size())
                    .map(u -> chance.nextGaussian())
                    .toArray();
            try {
                drawn = document.with(spread.texts(w));
                for (int i = 0; i < spread.size(); i++) {
                    values.put(spread.paths().get(i), spread.values(w).get(i));
                }
            } catch (UnfitValueException impossible) {
                // tolerances reach to vehicles that cannot be; those stand in no yard
            }
        }
        truth = drawn;
    }

    Vehicle truth() {
        return truth;
    }

    /** True value of the file's value at a path (SI). */
    double value(String path) {
        return values.get(path);
    }

    String facts() {
        return facts.toString();
    }

    private VehicleModel model(String loadCase, boolean braked) {
        LoadCase load = truth.loadCase(loadCase).orElseThrow();
        return VehicleModel.assemble(truth, load, Ground.UNYIELDING, braked);
    }

    /** Scales that read to half a kilogram with an error of 1 kg. */
    HiddenVehicle weigh(String loadCase) {
        VehicleModel model = model(loadCase, false);
        List<String> scales = new ArrayList<>();
        for (Axle axle : truth.axles()) {
            double force = 0;
            for (WheelPlace wheel : model.wheels()) {
                force += truth.axles().get(wheel.axle()).name().equals(axle.name())
                        ? model.rest().force()[wheel.element()]
                        : 0;
            }
            double shown = Math.rint(2 * (force / VehicleModel.GRAVITY + chance.nextGaussian())) / 2;
            scales.add(text("{axle: %s, shows: %.1f kg ± 1 kg}", axle.name(), shown));
        }
        facts.append(text("  - weights: {with: %s, scales: [%s]}%n", loadCase, String.join(", ", scales)));
        return this;
    }

    /** Heights at four corners to 2 mm; the body hangs somewhere within its friction, nobody knows where. */
    HiddenVehicle tape(String... loadCases) {
        facts.append("  - heights:\n      at: four corners\n      steps:\n");
        for (String loadCase : loadCases) {
            VehicleModel high = model(loadCase, false).settled(1);
            VehicleModel low = model(loadCase, false).settled(-1);
            List<String> heights = new ArrayList<>();
            double hangs = chance.nextDouble();
            for (Axle axle : truth.axles()) {
                for (int side : new int[] {1, -1}) {
                    double y = side
                            * axle.springs()
                                    .get(0)
                                    .attachment()
                                    .apart()
                                    .orElseThrow()
                                    .value()
                            / 2;
                    double height = hangs * rise(high, axle.x(), y) + (1 - hangs) * rise(low, axle.x(), y);
                    heights.add(text("%.0f mm ± 2 mm", 1000 * (0.9 + height) + 2 * chance.nextGaussian()));
                }
            }
            facts.append(text("        - {with: %s, heights: [%s]}%n", loadCase, String.join(", ", heights)));
        }
        return this;
    }

    private static double rise(VehicleModel model, double x, double y) {
        double[] row = model.motionAt(Place.of(-x, y, 0)).rise();
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * model.rest().q()[i];
        }
        return sum;
    }

    /** Pushed down, let go, counted to the half cycle; a tenth of a second of stopwatch, a tenth of a cycle of eye. */
    HiddenVehicle bounce(BounceKind kind, String word, String loadCase, boolean keepBack) {
        Count count = new BounceTest(kind, Handling.person())
                .run(model(loadCase, true))
                .count();
        if (count.halfCycles() < 2) {
            return this;
        }
        double cycles = count.halfCycles() / 2.0;
        double time = count.duration() + 0.1 * chance.nextGaussian();
        double counted = cycles + 0.1 * chance.nextGaussian();
        facts.append(text(
                "  - bounce: {with: %s, test: %s, cycles: %.1f ± 0.1, in: %.2f s ± 0.1 s, cycles to rest: %.1f ± 0.7%s}%n",
                loadCase,
                word,
                counted,
                time,
                Math.max(counted, cycles + 0.5 * chance.nextGaussian()),
                keepBack ? ", keep back: yes" : ""));
        return this;
    }

    /**
     * A ride over the road of a file, logged by a phone on a seat from two seconds before: sensor noise, a constant from its tilt, and a horse that steps
     * 2.2 times a second where wanted. The true speed is one hundredth above what the notebook says.
     */
    HiddenVehicle ride(
            Path folder,
            Road road,
            Path roadFile,
            String loadCase,
            String seat,
            double speed,
            boolean horse,
            boolean keepBack)
            throws IOException {
        Scenario scenario = new Scenario(
                "hidden ride",
                "",
                List.of(new Scenario.Entrant(
                        truth,
                        "",
                        List.of(loadCase),
                        List.of(SpeedPlan.steady(Measure.of(1.01 * speed, QuantityKind.SPEED))))),
                List.of(road),
                Optional.empty(),
                Optional.empty(),
                Measure.of(LOGGED, QuantityKind.FREQUENCY),
                Scenario.Start.UNSTRESSED,
                false,
                List.of(),
                Optional.empty());
        Channel ridden = RideRunner.run(scenario, result -> {})
                .get(0)
                .trace(seat + " seat vertical acceleration")
                .orElseThrow();
        int ahead = (int) (2 * LOGGED);
        StringBuilder csv = new StringBuilder("time (s),x (m/s²),y (m/s²),z (m/s²)\n");
        for (int i = 0; i < ahead + ridden.size(); i++) {
            double t = i / LOGGED;
            double steps =
                    horse ? 0.5 * Math.sin(2 * Math.PI * 2.2 * t + 1) + 0.2 * Math.sin(2 * Math.PI * 4.4 * t) : 0;
            double z = VehicleModel.GRAVITY + steps + (i < ahead ? 0 : ridden.sample(i - ahead));
            csv.append(text(
                    "%.4f,%.3f,%.3f,%.3f%n",
                    t, 0.1 * chance.nextGaussian(), 0.1 * chance.nextGaussian(), z + 0.1 * chance.nextGaussian()));
        }
        Path log = folder.resolve("ride-" + facts.length() + ".csv");
        Files.writeString(log, csv);
        facts.append(text(
                "  - ride: {with: %s, scenario: %s, road: %s, speed: %.4f m/s ± 2 %%, logs: [{file: %s, seat: %s, unit: m/s²}]%s%s}%n",
                loadCase,
                roadFile.toAbsolutePath(),
                road.name(),
                speed,
                log.toAbsolutePath(),
                seat,
                horse ? ", horse: {step frequency: 2.2 Hz ± 0.03 Hz}" : "",
                keepBack ? ", keep back: yes" : ""));
        return this;
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
