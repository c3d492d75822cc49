package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.standing.BodyLevel;
import org.ridewright.standing.LeafLoad;
import org.ridewright.standing.SpringLoad;
import org.ridewright.standing.StageTravel;
import org.ridewright.standing.Standing;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.GappedStage;
import org.ridewright.vehicle.Vehicle;

/** Tables, sentences and cautions of how a vehicle stands, for page and terminal. */
public final class LoadsTables {
    private static final String NONE = "–";
    private static final double MILLI = 1000;
    private static final double MEGA = 1e6;
    private static final double GRAVITY = VehicleModel.GRAVITY;

    private LoadsTables() {}

    /** Heads of {@link #wheels}, with units. */
    public static List<String> wheelHeads() {
        return List.of("Load case", "Place", "Load (kN)", "Load (kg)", "Share (%)");
    }

    /** Each wheel, each axle and each hitch of each load case. */
    public static List<List<String>> wheels(Vehicle vehicle, List<Standing> all) {
        List<List<String>> rows = new ArrayList<>();
        for (Standing each : all) {
            double total = each.mass() * GRAVITY;
            each.wheels().forEach(w -> rows.add(load(each, w.name(), w.load(), total)));
            for (int a = 0; a < vehicle.axles().size(); a++) {
                if (each.wheels().size() > vehicle.axles().size()) {
                    rows.add(load(each, vehicle.axles().get(a).title(), each.axleLoad(a), total));
                }
            }
            each.hitches().forEach(h -> rows.add(load(each, h.name(), h.load(), total)));
            rows.add(load(each, "all", total, total));
        }
        return rows;
    }

    private static List<String> load(Standing standing, String place, double load, double total) {
        return List.of(
                standing.loadCase().name(),
                place,
                Numbers.fixed(load / MILLI, 2),
                Numbers.fixed(load / GRAVITY, 0),
                Numbers.fixed(100 * load / total, 1));
    }

    /** Heads of {@link #springs}, with units. */
    public static List<String> springHeads() {
        return List.of(
                "Load case",
                "Spring",
                "Force (kN)",
                "Friction ± (N)",
                "Rate (N/mm)",
                "From free (mm)",
                "By the load (mm)",
                "Helper",
                "To bump stop (mm)",
                "To droop stop (mm)");
    }

    /** Each spring of each load case. */
    public static List<List<String>> springs(List<Standing> all) {
        List<List<String>> rows = new ArrayList<>();
        for (Standing each : all) {
            for (SpringLoad spring : each.springs()) {
                rows.add(List.of(
                        each.loadCase().name(),
                        spring.name(),
                        Numbers.fixed(spring.force() / MILLI, 2),
                        spring.friction() == 0 ? "none" : Numbers.fixed(spring.friction(), 0),
                        Numbers.of(spring.rate() / MILLI),
                        Numbers.fixed(MILLI * spring.deflection(), 1),
                        Numbers.fixed(MILLI * spring.fromEmpty(), 1),
                        helper(spring),
                        left(spring, GappedStage.Kind.BUMP_STOP),
                        left(spring, GappedStage.Kind.DROOP_STOP)));
            }
        }
        return rows;
    }

    private static String helper(SpringLoad spring) {
        return nearest(spring, GappedStage.Kind.HELPER)
                .map(s -> s.acts() ? "bears" : Numbers.fixed(MILLI * s.left(), 1) + " mm off")
                .orElse(NONE);
    }

    private static String left(SpringLoad spring, GappedStage.Kind kind) {
        return nearest(spring, kind)
                .map(s -> s.acts() ? "on the stop" : Numbers.fixed(MILLI * s.left(), 1))
                .orElse(NONE);
    }

    static Optional<StageTravel> nearest(SpringLoad spring, GappedStage.Kind kind) {
        return spring.stages().stream().filter(s -> s.kind() == kind).min((a, b) -> Double.compare(a.left(), b.left()));
    }

    /** Heads of {@link #stresses}, with units. */
    public static List<String> stressHeads() {
        return List.of(
                "Load case",
                "Spring",
                "Stress (MPa)",
                "On the bump stop (MPa)",
                "Allowable (MPa)",
                "Of it (%)",
                "On the bump stop (%)");
    }

    /** Each spring that is described by its leaves. */
    public static List<List<String>> stresses(List<Standing> all) {
        List<List<String>> rows = new ArrayList<>();
        for (Standing each : all) {
            for (SpringLoad spring : each.springs()) {
                spring.leaves()
                        .ifPresent(leaves -> rows.add(List.of(
                                each.loadCase().name(),
                                spring.name(),
                                Numbers.fixed(leaves.stress() / MEGA, 0),
                                leaves.atBumpStop()
                                        .map(s -> Numbers.fixed(s / MEGA, 0))
                                        .orElse(NONE),
                                leaves.allowable()
                                        .map(s -> Numbers.fixed(s / MEGA, 0))
                                        .orElse("not given"),
                                leaves.share()
                                        .map(s -> Numbers.fixed(100 * s, 0))
                                        .orElse(NONE),
                                leaves.shareAtBumpStop()
                                        .map(s -> Numbers.fixed(100 * s, 0))
                                        .orElse(NONE))));
            }
        }
        return rows;
    }

    /** Heads of {@link #attitudes}, with units. */
    public static List<String> attitudeHeads(Vehicle vehicle) {
        List<String> heads = new ArrayList<>(List.of("Load case", "Nose down (°)", "Left side up (°)"));
        for (Axle axle : vehicle.axles()) {
            boolean sides = vehicle.layout().rolls();
            heads.add("Body above " + axle.title() + (sides ? ", left (mm)" : " (mm)"));
            if (sides) {
                heads.add("Body above " + axle.title() + ", right (mm)");
            }
        }
        return heads;
    }

    /** How the body lies in each load case, against the vehicle with nobody and nothing aboard. */
    public static List<List<String>> attitudes(Vehicle vehicle, List<Standing> all) {
        List<List<String>> rows = new ArrayList<>();
        for (Standing each : all) {
            List<String> row = new ArrayList<>(List.of(
                    each.loadCase().name(),
                    vehicle.layout().pitches() ? Numbers.fixed(Math.toDegrees(each.pitch()), 2) : NONE,
                    vehicle.layout().rolls() ? Numbers.fixed(Math.toDegrees(each.roll()), 2) : NONE));
            for (BodyLevel level : each.levels()) {
                row.add(Numbers.fixed(MILLI * level.left(), 1));
                if (vehicle.layout().rolls()) {
                    row.add(Numbers.fixed(MILLI * level.right(), 1));
                }
            }
            rows.add(row);
        }
        return rows;
    }

    /** What to heed. */
    public static List<String> cautions(List<Standing> all) {
        List<String> cautions = new ArrayList<>();
        for (Standing each : all) {
            String load = "With load case '" + each.loadCase().name() + "' ";
            each.wheels().stream()
                    .filter(w -> w.load() <= 0)
                    .forEach(w -> cautions.add(load + "the " + w.name()
                            + " carries nothing: the vehicle does not stand on all its wheels."));
            each.hitches().stream()
                    .filter(h -> h.load() < 0)
                    .forEach(h -> cautions.add(load + "'" + h.name() + "' is pulled up with "
                            + Numbers.of(-h.load() / GRAVITY, 2)
                            + " kg: the vehicle is heavy at its tail, and tips over when it is let go."));
            for (SpringLoad spring : each.springs()) {
                if (nearest(spring, GappedStage.Kind.BUMP_STOP)
                        .filter(StageTravel::acts)
                        .isPresent()) {
                    cautions.add(load + "'" + spring.name()
                            + "' stands on its bump stop: the load is more than it can carry with travel left.");
                }
                if (spring.force() < 0) {
                    cautions.add(load + "'" + spring.name() + "' would have to pull: check where the load lies.");
                }
                spring.leaves()
                        .flatMap(LeafLoad::share)
                        .filter(s -> s > 1)
                        .ifPresent(s -> cautions.add(load + "'" + spring.name()
                                + "' is bent to "
                                + Numbers.fixed(100 * s, 0)
                                + " % of its allowable stress standing still, without any road: it is overloaded."));
            }
        }
        for (SpringLoad spring : all.get(0).springs()) {
            spring.leaves()
                    .flatMap(LeafLoad::shareAtBumpStop)
                    .filter(share -> share > 1)
                    .ifPresent(share -> cautions.add("A jolt that drives '" + spring.name()
                            + "' onto its bump stop bends it to "
                            + Numbers.fixed(100 * share, 0)
                            + " % of its allowable stress."));
        }
        return cautions;
    }

    /** A sentence for each load case. */
    static List<String> answers(Vehicle vehicle, List<Standing> all) {
        List<String> answers = new ArrayList<>();
        for (Standing each : all) {
            List<String> parts = new ArrayList<>();
            for (int a = 0; a < vehicle.axles().size(); a++) {
                parts.add(vehicle.axles().get(a).title() + " " + Numbers.fixed(each.axleLoad(a) / GRAVITY, 0) + " kg");
            }
            each.hitches().forEach(h -> parts.add(h.name() + " " + Numbers.fixed(h.load() / GRAVITY, 0) + " kg"));
            Optional<Double> least = each.springs().stream()
                    .flatMap(s -> nearest(s, GappedStage.Kind.BUMP_STOP).stream())
                    .map(StageTravel::left)
                    .min(Double::compare);
            answers.add("%s: %s, %s kg together%s."
                    .formatted(
                            RideFigures.upperFirst(each.loadCase().name()),
                            String.join(", ", parts),
                            Numbers.fixed(each.mass(), 0),
                            least.map(l -> "; " + Numbers.fixed(MILLI * Math.max(0, l), 0)
                                            + " mm left to the nearest bump stop")
                                    .orElse("")));
        }
        return answers;
    }
}
