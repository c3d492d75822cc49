package org.ridewright.validation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Rows of the table of {@code m ẍ + k x + F sgn ẋ = F₀ cos ωt}, and what the solver makes of them at three locked rates.
 *
 * <p>A slider of locked rate k_p stands for rigid friction. About each turn it takes the time {@code ~(m/k_p)^½} to swing from +F
 * to −F, and the impulse that is missing by then changes the amplitude by a series in {@code h = k_p^(−½)}: {@code X(h) = X₀ + a h
 * + b h² + …}. Halving h twice, from the rate that a description gets which asks for rigid friction, shows the order ({@code (X(h)
 * − X₀)/(X(h/2) − X₀) = 2}) and leaves after both eliminations
 *
 * <pre>
 *   X₀ = (X(h) − 6 X(h/2) + 8 X(h/4))/3
 * </pre>
 *
 * <p>Source: J. P. Den Hartog, Phil. Mag. ser. 7 vol. 9 (May 1930) p. 801, of which the first page was seen, with problem and boundary
 * conditions; the formula is from memory, derived again from those conditions.
 *
 * @param closed Den Hartog's amplitude by his formula, NaN where the mass stops
 * @param simulated amplitude of the table's simulation
 * @param atRigid X(h), at the rate of a description that asks for rigid friction
 * @param atFourTimes X(h/2)
 * @param atSixteenTimes X(h/4)
 */
record DenHartog(
        double r,
        double friction,
        double closed,
        double simulated,
        double atRigid,
        double atFourTimes,
        double atSixteenTimes) {
    static final Source PAPER =
            Source.closedForm("Den Hartog 1930 (problem seen on its first page; formula from memory, derived again)");
    static final Source FORMULA = Source.closedForm("expansion in k_p^(−½)");
    private static final List<DenHartog> ALL = ReferenceTable.read("friction_oscillator_forced.csv").rows().stream()
            .map(DenHartog::solved)
            .toList();

    private static DenHartog solved(ReferenceTable.Row row) {
        double r = row.number("r");
        double f = row.number("F_over_F0");
        double rate = FrictionOscillator.rigidMultiple();
        boolean stops = row.given("X_closed").isEmpty();
        return new DenHartog(
                r,
                f,
                stops ? Double.NaN : HalfCycle.rigidAmplitude(r, f),
                row.number("X_sim"),
                new FrictionOscillator(r, f, rate).steadyAmplitude(),
                new FrictionOscillator(r, f, 4 * rate).steadyAmplitude(),
                new FrictionOscillator(r, f, 16 * rate).steadyAmplitude());
    }

    /** Every row of the table. */
    static List<DenHartog> all() {
        return ALL;
    }

    /** The rows in which the mass never stops. */
    static List<DenHartog> withoutStops() {
        return ALL.stream().filter(row -> !row.stops()).toList();
    }

    /** The rows with stops. */
    static List<DenHartog> withStops() {
        return ALL.stream().filter(DenHartog::stops).toList();
    }

    boolean stops() {
        return Double.isNaN(closed);
    }

    /** Extrapolated to rigid friction. */
    double rigid() {
        return (atRigid - 6 * atFourTimes + 8 * atSixteenTimes) / 3;
    }

    /** Power of k_p with which the error falls from four to sixteen times the rate. */
    double order() {
        return Math.log(Math.abs((atFourTimes - closed) / (atSixteenTimes - closed))) / Math.log(4);
    }

    /** The amplitude that a slider of this finite rate must give, without the solver. */
    double exactAtRigidRate() {
        return new HalfCycle(r, friction, FrictionOscillator.rigidMultiple()).amplitude();
    }

    String name() {
        return String.format(Locale.ROOT, "r = %s, F/F₀ = %s", trimmed(r), trimmed(friction));
    }

    static String trimmed(double x) {
        return x == Math.rint(x) ? String.valueOf((long) x) : String.valueOf(x);
    }

    /** Rows by r, each with its share in per cent: "r = 0.7: F/F₀ 0.5 −0.15 %, …". */
    static String listed(List<DenHartog> rows, ToDoubleFunction<DenHartog> share) {
        Map<Double, List<DenHartog>> byRatio =
                rows.stream().collect(Collectors.groupingBy(DenHartog::r, TreeMap::new, Collectors.toList()));
        return byRatio.entrySet().stream()
                .map(some -> "r = " + trimmed(some.getKey()) + ": F/F₀ "
                        + some.getValue().stream()
                                .map(row -> String.format(
                                        Locale.ROOT,
                                        "%s %+.2f %%",
                                        trimmed(row.friction()),
                                        100 * share.applyAsDouble(row)))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }
}
