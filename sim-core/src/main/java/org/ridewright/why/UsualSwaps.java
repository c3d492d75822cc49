package org.ridewright.why;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ridewright.quantity.NamedValue;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.standing.Standing;
import org.ridewright.standing.StandingVehicle;
import org.ridewright.standing.WheelLoad;
import org.ridewright.vehicle.Connection;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.LoadCase.Aboard;
import org.ridewright.vehicle.Tyre;
import org.ridewright.vehicle.Vehicle;

/**
 * The ingredients of a vehicle with the alternatives of those who state none. The alternatives are choices of this program: large enough to
 * be felt, and within what vehicles have. Rates of tyres are common practice, with tolerances to match: an iron tyre 3 MN/m, a pneumatic one so
 * that it sinks 25 mm under its load.
 *
 * @param swaps of ingredients that the vehicle has
 * @param skipped those that it has not
 */
public record UsualSwaps(List<Swap> swaps, List<Skipped> skipped) {
    /** Names of all ingredients, in the order of swaps. */
    public static final List<String> NAMES =
            List.of("friction", "wheel size", "tyres", "frame twist", "cushions", "place of the load", "dampers");

    private static final String OILED = "× " + Friction.OILED;
    private static final String SMALLER = "× 0.7";
    /** The same mass at 0.7 of the radius. */
    private static final String SMALLER_INERTIA = "× 0.49";

    /** How far a pneumatic tyre sinks under the load that stands on it (m); common practice. */
    private static final double SINKS = 0.025;

    private static final String STIFFER = "× 10";
    private static final String GOOD = "in good condition";
    private static final String HARD = "gone hard";
    private static final String WORN = "× 0.3";
    /** A load this close to the middle is there already (m). */
    private static final double THERE = 0.02;

    public UsualSwaps {
        swaps = List.copyOf(swaps);
        skipped = List.copyOf(skipped);
    }

    /**
     * Of a vehicle.
     *
     * @param written values of its file
     * @param load name of the load case that is ridden
     */
    public static UsualSwaps of(Vehicle vehicle, List<NamedValue> written, String load) {
        return new Finder(vehicle, written, load).all();
    }

    /**
     * The same with a user's own: one of the same name takes the place of the usual one, others are added; what is not wanted is left out.
     *
     * @throws UnfitValueException if what is to be left out is no ingredient
     */
    public UsualSwaps with(List<Swap> own, List<String> without) {
        Map<String, Swap> all = new LinkedHashMap<>();
        swaps.forEach(s -> all.put(s.name(), s));
        own.forEach(s -> all.put(s.name(), s));
        List<Skipped> left = new ArrayList<>(skipped);
        left.removeIf(s -> all.containsKey(s.name()));
        for (String name : without) {
            if (all.remove(name) == null
                    && skipped.stream().noneMatch(s -> s.name().equals(name))) {
                throw new UnfitValueException("there is no ingredient '" + name + "' to leave out; there are "
                        + String.join(", ", all.keySet()));
            }
            left.removeIf(s -> s.name().equals(name));
            left.add(new Skipped(name, "left out as asked"));
        }
        return new UsualSwaps(List.copyOf(all.values()), left);
    }

    private static final class Finder {
        private final Vehicle vehicle;
        private final List<NamedValue> written;
        private final String load;
        private final WheelDefaults defaults;
        private final List<Swap> swaps = new ArrayList<>();
        private final List<Skipped> skipped = new ArrayList<>();

        Finder(Vehicle vehicle, List<NamedValue> written, String load) {
            this.vehicle = vehicle;
            this.written = written;
            this.load = load;
            defaults = new WheelDefaults(vehicle, written);
        }

        UsualSwaps all() {
            add(
                    NAMES.get(0),
                    Friction.OILED + " of the springs' friction (as if cleaned and oiled)",
                    friction(),
                    "none of its springs has dry friction");
            List<Change> smaller = new ArrayList<>(scaled("axles\\[\\d+]\\.wheels?\\.diameter", SMALLER));
            smaller.addAll(scaled("axles\\[\\d+]\\.wheels?\\.spin inertia", SMALLER_INERTIA));
            add(NAMES.get(1), "wheels smaller by 30 % and as heavy as before", smaller, "no diameter is written");
            tyres();
            twist();
            cushions();
            place();
            dampers();
            return new UsualSwaps(swaps, skipped);
        }

        private void add(String name, String alternative, List<Change> changes, String reason) {
            if (changes.isEmpty()) {
                skipped.add(new Skipped(name, reason));
            } else {
                swaps.add(defaults.held(new Swap(name, alternative, changes)));
            }
        }

        /** The written numbers other than 0 whose path matches, each multiplied. */
        private List<Change> scaled(String pattern, String factor) {
            Pattern paths = Pattern.compile(pattern);
            return written.stream()
                    .filter(v -> paths.matcher(v.path()).matches())
                    .filter(v -> v.measure().filter(m -> m.value() != 0).isPresent())
                    .map(v -> new Change(v.path(), factor))
                    .toList();
        }

        private List<Change> friction() {
            StringBuilder springs =
                    new StringBuilder("axles\\[\\d+]\\.springs\\[\\d+]|connections\\[\\d+]\\.tips\\[\\d+]");
            for (int c = 0; c < vehicle.connections().size(); c++) {
                if (!(vehicle.connections().get(c) instanceof Connection.UndercarriageTwist)) {
                    springs.append("|connections\\[").append(c).append(']');
                }
            }
            return scaled("(" + springs + ")\\.friction\\.(share of load|half loop height|constant)", OILED);
        }

        private boolean isWritten(String start) {
            return written.stream()
                    .anyMatch(v -> v.path().equals(start)
                            || v.path().startsWith(start + ".")
                            || v.path().startsWith(start + "["));
        }

        private void tyres() {
            List<Standing> standings = StandingVehicle.of(vehicle);
            Standing standing = standings.get(
                    vehicle.loadCases().indexOf(vehicle.loadCase(load).orElseThrow()));
            boolean hard = vehicle.axles().stream().anyMatch(a -> a.wheel().tyre() != Tyre.PNEUMATIC);
            List<Change> changes = new ArrayList<>();
            for (int a = 0; a < vehicle.axles().size(); a++) {
                if (!hard) {
                    changes.addAll(tyre(a, "iron", "disc", "3 MN/m ± 50 %", "0.15 ± 50 %"));
                } else if (vehicle.axles().get(a).wheel().tyre() != Tyre.PNEUMATIC) {
                    changes.addAll(tyre(
                            a,
                            "pneumatic",
                            "disc and footprint",
                            Math.round(meanLoad(standing, a) / SINKS / 1e3) + " kN/m ± 25 %",
                            "0.05 ± 50 %"));
                }
            }
            add(
                    NAMES.get(2),
                    hard
                            ? "pneumatic tyres (25 mm of deflection) on wheels of the same size"
                            : "iron tyres (3 kN/mm) on wheels of the same size",
                    changes,
                    "no tyre is written");
        }

        /** On a wheel of an axle as the vehicle stands (N). */
        private static double meanLoad(Standing standing, int axle) {
            return standing.wheels().stream()
                    .filter(w -> w.axle() == axle)
                    .mapToDouble(WheelLoad::load)
                    .average()
                    .orElseThrow();
        }

        private List<Change> tyre(int axle, String kind, String path, String rate, String ratio) {
            String wheel = defaults.wheels(axle);
            List<Change> changes = new ArrayList<>(List.of(
                    new Change(wheel + ".tyre", kind),
                    new Change(wheel + ".path", path),
                    new Change(wheel + ".contact rate", rate),
                    new Change(wheel + ".contact damping ratio", ratio)));
            for (String key : List.of("footprint", "contact damping", "restitution")) {
                if (defaults.says(axle, key)) {
                    changes.add(new Change(wheel + "." + key, ""));
                }
            }
            return changes;
        }

        private void twist() {
            List<Change> changes = new ArrayList<>(scaled("body\\.rear body\\.twist rate", STIFFER));
            for (int c = 0; c < vehicle.connections().size(); c++) {
                if (vehicle.connections().get(c) instanceof Connection.UndercarriageTwist) {
                    changes.addAll(scaled("connections\\[" + c + "]\\.rate", STIFFER));
                }
            }
            add(
                    NAMES.get(3),
                    "a frame ten times as stiff in twist",
                    changes,
                    "nothing in the file twists between its axles");
        }

        private void cushions() {
            String name = NAMES.get(4);
            boolean somebody = aboard().stream().anyMatch(Aboard.Person.class::isInstance);
            if (!somebody) {
                skipped.add(new Skipped(name, "nobody sits on it"));
                return;
            }
            List<Integer> sprung = IntStream.range(0, vehicle.seats().size())
                    .filter(s -> !vehicle.seats().get(s).stages().isEmpty())
                    .boxed()
                    .toList();
            if (sprung.isEmpty()) {
                add(
                        name,
                        "cushions in good condition (30 kN/m) in place of none",
                        IntStream.range(0, vehicle.seats().size())
                                .mapToObj(s -> new Change("seats[" + s + "].cushion", GOOD))
                                .toList(),
                        "it has no seats");
                return;
            }
            boolean hard = sprung.stream()
                    .allMatch(s -> written.stream()
                            .anyMatch(v -> v.path().equals("seats[" + s + "].cushion")
                                    && v.written().strip().equals(HARD)));
            boolean staged = false;
            List<Change> changes = new ArrayList<>();
            for (int s : sprung) {
                if (isWritten("seats[" + s + "].stages")) {
                    staged = true;
                    changes.add(new Change("seats[" + s + "].stages", ""));
                }
                changes.add(new Change("seats[" + s + "].cushion", hard ? GOOD : HARD));
            }
            add(
                    name,
                    (hard ? "cushions in good condition (30 kN/m)" : "cushions gone hard (200 kN/m)")
                            + (staged ? " in place of sprung seats" : ""),
                    changes,
                    "");
        }

        private List<Aboard> aboard() {
            return vehicle.loadCase(load).orElseThrow().aboard();
        }

        private void place() {
            double middle = vehicle.axles()
                            .get(vehicle.axles().size() - 1)
                            .behindFrontAxle()
                            .value()
                    / 2;
            int at = vehicle.loadCases().indexOf(vehicle.loadCase(load).orElseThrow());
            List<Change> changes = new ArrayList<>();
            boolean cargo = false;
            for (int a = 0; a < aboard().size(); a++) {
                if (aboard().get(a) instanceof Aboard.Cargo thing) {
                    cargo = true;
                    String path = "load cases[" + at + "].aboard[" + a + "].at.";
                    if (Math.abs(thing.place().behindFrontAxle().value() - middle) > THERE) {
                        changes.add(new Change(path + "ahead of front axle", ""));
                        changes.add(new Change(path + "behind front axle", Math.round(1e4 * middle) / 1e4 + " m"));
                    }
                }
            }
            Optional<String> reason = !cargo
                    ? Optional.of("nothing but people is aboard")
                    : middle == 0
                            ? Optional.of("it has one axle only")
                            : changes.isEmpty()
                                    ? Optional.of("it lies midway between the axles already")
                                    : Optional.empty();
            add(
                    NAMES.get(5),
                    "the load midway between the first axle and the last",
                    reason.isPresent() ? List.of() : changes,
                    reason.orElse(""));
        }

        private void dampers() {
            add(
                    NAMES.get(6),
                    "dampers worn to 0.3 of their damping",
                    scaled("axles\\[\\d+]\\.dampers\\[\\d+]\\.(damping|bump|rebound|table\\[\\d+]\\[1])", WORN),
                    "it has no dampers; to try some: --swap \"dampers (1.5 kN s/m at each spring): axles[*].springs[*].damping = 1.5 kN s/m\"");
        }
    }
}
