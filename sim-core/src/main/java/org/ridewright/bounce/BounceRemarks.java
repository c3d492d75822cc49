package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ridewright.modal.Condition;

/** What a reader of bounce tests is to keep in mind, in plain words. */
public final class BounceRemarks {
    /** A mode that makes up less of the motion than this does not rule it. */
    private static final double RULES = 0.75;
    /** A damping ratio from which the natural frequency without damping misleads. */
    private static final double STRONG = 0.15;
    /** A motion that ends within this share of where it began has come back. */
    private static final double CREPT = 0.5;
    /** Frequencies closer than this are told as equal. */
    private static final double CLOSE = 0.01;

    private BounceRemarks() {}

    /** Remarks on the tests under one load, each beginning with the kind of test that it is about. */
    public static List<String> of(LoadCaseBounces bounces) {
        List<String> remarks = new ArrayList<>();
        for (BounceResult result : bounces.results()) {
            String kind = result.test().kind().word() + ": ";
            add(remarks, kind, held(result));
            add(remarks, kind, stillMoving(result));
            add(remarks, kind, outside(bounces, result));
            add(remarks, kind, lifted(result));
        }
        String neverSliding = bounces.results().stream()
                .filter(result ->
                        !result.count().isHeld() && result.lockedSince().orElse(1) <= 0)
                .map(result -> result.test().kind().word())
                .collect(Collectors.joining(", "));
        if (!neverSliding.isEmpty()) {
            remarks.add(neverSliding
                    + ": no spring slides after the letting go. What is counted is the swing on springs that friction holds, and on the tyres; it tells "
                    + "nothing of how the springs do on a road that makes them slide. Press harder");
        }
        String counted = tremors(bounces, false);
        if (!counted.isEmpty()) {
            remarks.add(
                    "the springs hardly slide: what is counted is the tremor of the body while friction holds them ("
                            + counted + "). Press harder to count the springs");
        }
        String left = tremors(bounces, true);
        if (!left.isEmpty()) {
            remarks.add(
                    "once friction holds the springs the body goes on trembling, with next to nothing to damp it in this description ("
                            + left
                            + "); that is not counted. Real springs begin to slide leaf by leaf and still it: several sliders, or an envelope, in the "
                            + "vehicle file do so");
        }
        return List.copyOf(remarks);
    }

    /** Of those that are left out of the count, or of those that make it up. */
    private static String tremors(LoadCaseBounces bounces, boolean leftOut) {
        return bounces.results().stream()
                .filter(result -> result.count().left().visible())
                .filter(result ->
                        result.count().left().held() && !result.count().isHeld())
                .filter(result -> leavesOut(result.count()) == leftOut)
                .map(BounceRemarks::tremor)
                .collect(Collectors.joining(", "));
    }

    private static boolean leavesOut(Count count) {
        return count.visible() >= Tremor.ALIKE * count.left().halfWidth();
    }

    private static void add(List<String> remarks, String kind, String remark) {
        if (!remark.isEmpty()) {
            remarks.add(kind + remark);
        }
    }

    private static String held(BounceResult result) {
        Count count = result.count();
        if (!count.isHeld()) {
            return "";
        }
        double start = Math.abs(count.turningPoints().get(0).value());
        if (start < count.visible()) {
            return String.format(
                    Locale.ROOT,
                    "%.0f N move the body by no more than %s, less than is seen: press harder",
                    result.force(),
                    size(count, start));
        }
        if (Math.abs(count.offset()) < CREPT * start) {
            return "the body comes back without swinging past its place of rest: damping or friction is too strong for a cycle to count";
        }
        return String.format(
                Locale.ROOT,
                "let go after %s, the body does not come back far enough to be seen; friction holds it. There is no cycle to count: press harder",
                depth(result));
    }

    private static String stillMoving(BounceResult result) {
        Tremor left = result.count().left();
        boolean moving = left.visible() && !left.held();
        return moving
                ? String.format(
                        Locale.ROOT,
                        "after %.0f s it still moves by %s to either side: so little damps it in this description. A real vehicle has more "
                                + "damping than that",
                        result.duration(),
                        size(result.count(), left.halfWidth()))
                : "";
    }

    private static String tremor(BounceResult result) {
        Count count = result.count();
        return String.format(
                Locale.ROOT,
                "%s ± %s at %.1f Hz",
                result.test().kind().word(),
                size(count, count.left().halfWidth()),
                count.left().frequency());
    }

    private static String outside(LoadCaseBounces bounces, BounceResult result) {
        OptionalDouble ride = result.count().frequency();
        if (ride.isEmpty()) {
            return "";
        }
        BounceKind kind = result.test().kind();
        NaturalPartner sliding = bounces.partner(kind, Condition.SLIDING);
        NaturalPartner locked = bounces.partner(kind, Condition.LOCKED);
        double low = (1 - CLOSE) * Math.min(sliding.frequency(), locked.frequency());
        double high = (1 + CLOSE) * Math.max(sliding.frequency(), locked.frequency());
        double f = ride.getAsDouble();
        if (f >= low && f <= high) {
            return "";
        }
        double zeta = sliding.mode().damped().map(d -> d.ratio()).orElse(1.0);
        String why = "so few cycles are counted that how it is let go and how it stops tell in it";
        if (zeta > STRONG && f < low) {
            why = String.format(Locale.ROOT, "dampers slow it (damping ratio %.2f while the springs slide)", zeta);
        } else if (Math.min(sliding.share(), locked.share()) < RULES) {
            why = "more than one motion takes part in it";
        }
        return String.format(
                Locale.ROOT,
                "the ride frequency, %.2f Hz, lies outside the natural ones of the motion it shows most, %.2f Hz sliding and %.2f Hz locked: %s",
                f,
                sliding.frequency(),
                locked.frequency(),
                why);
    }

    private static String lifted(BounceResult result) {
        return result.wheelOff() > 0
                ? String.format(
                        Locale.ROOT,
                        "after letting go a wheel is off the ground for %.2f s; the count then holds a part of free fall",
                        result.wheelOff())
                : "";
    }

    private static String depth(BounceResult result) {
        return String.format(Locale.ROOT, "%.1f mm with %.0f N", 1000 * result.depth(), result.force());
    }

    private static String size(Count count, double value) {
        return count.motion().turns()
                ? String.format(Locale.ROOT, "%.2f°", Math.toDegrees(value))
                : String.format(Locale.ROOT, "%.1f mm", 1000 * value);
    }
}
