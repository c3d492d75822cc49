package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.report.BounceLogResult.Motion;
import org.ridewright.ringdown.DampingKind;
import org.ridewright.ringdown.Estimate;
import org.ridewright.ringdown.RingDown;
import org.ridewright.ringdown.Together;

/** Findings of bounce tests in words and cells. */
public final class BounceLogWords {
    private static final double G = 9.80665;
    private static final double MM = 1000;

    private BounceLogWords() {}

    static String of(Motion motion, RingDown release, int number) {
        return String.format(
                        Locale.ROOT,
                        "Release %d, at %.2f s: %s cycles in %.2f s, %s Hz. ",
                        number,
                        release.at(),
                        cycles(release),
                        release.counted(),
                        plusMinus(release.frequency()))
                + decay(motion, release.kind(), release.dampingRatio(), release.friction(), release.frictionLength());
    }

    static String of(Motion motion, Together together) {
        return String.format(
                        Locale.ROOT,
                        "%d releases taken together: %s Hz%s. ",
                        together.releases(),
                        plusMinus(together.frequency()),
                        gradual(motion)
                                ? ", the faster the smaller the swing, for friction holds the spring after each turn; sliding, it would be "
                                        + plusMinus(together.naturalFrequency()) + " Hz"
                                : "")
                + decay(
                        motion,
                        together.kind(),
                        together.dampingRatio(),
                        together.friction(),
                        together.frictionLength());
    }

    private static boolean gradual(Motion motion) {
        return motion.ringDowns().releases().stream()
                .allMatch(release -> release.softness().isPresent());
    }

    private static String decay(Motion motion, DampingKind kind, Estimate ratio, Estimate friction, Estimate length) {
        String rubbing = "friction F/k = " + length(motion, length) + ", " + percent(friction) + " of the weight";
        String viscous = "damping ratio " + interval(ratio.notNegative(), 1);
        return switch (kind) {
            case DRY ->
                "The decay is straight, the same loss each cycle, as of dry friction: " + rubbing
                        + "; no viscous damping stands out (damping ratio at most " + Numbers.of(ratio.upper(), 2)
                        + ").";
            case VISCOUS ->
                "The decay is exponential, the same share each cycle, as of viscous damping: " + viscous
                        + "; no dry friction stands out (F/k at most " + most(motion, length) + ").";
            case MIXED -> "The decay is mixed: " + rubbing + ", and " + viscous + ".";
            case UNCLEAR ->
                "Whether the decay is straight or exponential, this record cannot tell: F/k at most "
                        + most(motion, length) + ", damping ratio at most " + Numbers.of(ratio.upper(), 2) + ".";
        };
    }

    /** How many cycles, in halves. */
    public static String cycles(RingDown release) {
        return Numbers.of(release.cycles(), release.halfCycles() % 2 == 0 && release.cycles() < 10 ? 1 : 2)
                .replaceAll("\\.0$", "");
    }

    /** A value ± half its 90 % interval, with as many digits as that deserves. */
    public static String plusMinus(Estimate x) {
        double half = (x.upper() - x.lower()) / 2;
        return fixed(x.value(), half) + " ± " + fixed(half, half);
    }

    /** F/k as a length, or as an angle. */
    public static String length(Motion motion, Estimate length) {
        Estimate x = length.notNegative();
        return motion.isAngle() ? interval(x.times(MM / motion.arm()), 1) + " mrad" : interval(x, MM) + " mm";
    }

    private static String most(Motion motion, Estimate length) {
        return motion.isAngle()
                ? Numbers.of(Math.max(0, MM * length.upper() / motion.arm()), 2) + " mrad"
                : Numbers.of(Math.max(0, MM * length.upper()), 2) + " mm";
    }

    /** F over m g, in per cent. */
    public static String percent(Estimate friction) {
        return interval(friction.notNegative(), 100 / G) + " %";
    }

    /** A value with its interval in brackets. */
    public static String interval(Estimate x, double factor) {
        double half = factor * (x.upper() - x.lower()) / 2;
        return fixed(factor * x.value(), half) + " (" + fixed(factor * x.lower(), half) + " to "
                + fixed(factor * x.upper(), half) + ")";
    }

    /** With the decimals that leave two digits of an uncertainty. */
    static String fixed(double value, double uncertainty) {
        int decimals = uncertainty > 0 && Double.isFinite(uncertainty)
                ? (int) Math.max(0, Math.min(6, 1 - Math.floor(Math.log10(uncertainty))))
                : 3;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return (text.matches("-0(\\.0*)?") ? text.substring(1) : text).replace('-', '−');
    }

    /** Heads of the table of releases. */
    public static List<String> heads() {
        return List.of(
                "Release",
                "At (s)",
                "Cycles",
                "In (s)",
                "Ride frequency (Hz)",
                "Decay",
                "Damping ratio",
                "Friction (% of weight)",
                "F/k");
    }

    /** Rows of the table of releases, the joint row last. */
    public static List<List<String>> rows(Motion motion) {
        List<List<String>> rows = new ArrayList<>();
        int number = 1;
        for (RingDown release : motion.ringDowns().releases()) {
            rows.add(List.of(
                    String.valueOf(number++),
                    String.format(Locale.ROOT, "%.2f", release.at()),
                    cycles(release),
                    String.format(Locale.ROOT, "%.2f", release.counted()),
                    plusMinus(release.frequency()),
                    release.kind().envelope(),
                    interval(release.dampingRatio().notNegative(), 1),
                    interval(release.friction().notNegative(), 100 / G),
                    length(motion, release.frictionLength())));
        }
        motion.ringDowns()
                .together()
                .ifPresent(all -> rows.add(List.of(
                        "together",
                        "",
                        "",
                        "",
                        plusMinus(all.frequency()),
                        all.kind().envelope(),
                        interval(all.dampingRatio().notNegative(), 1),
                        interval(all.friction().notNegative(), 100 / G),
                        length(motion, all.frictionLength()))));
        return rows;
    }
}
