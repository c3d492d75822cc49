package org.ridewright.ride;

import java.util.List;
import java.util.Locale;

/**
 * One spring of a generated vehicle, in figures, so that it can be written whole or as a part of the same strength.
 *
 * @param rate (N/m); of a gas spring at its load
 * @param load that it carries standing (N)
 * @param gas whether an enclosed gas takes the place of the steel
 * @param rubbing which friction
 * @param share friction over load
 * @param constant friction (N)
 * @param lockedMultiple locked rate over rate
 * @param helperGap of a helper, from about where it stands (m), or NaN for none
 * @param stopGap of a bump stop, likewise
 */
record SpringPlan(
        double rate,
        double load,
        boolean gas,
        Rubs rubbing,
        double share,
        double constant,
        double lockedMultiple,
        double helperGap,
        double stopGap) {
    private static final double GAUGE = 300_000;
    private static final double AMBIENT = 101_325;

    /** Kinds of friction. */
    enum Rubs {
        NOT,
        ONE_SLIDER,
        TWO_SLIDERS,
        ENVELOPE
    }

    static SpringPlan of(Knobs knobs, double load) {
        double deflection = knobs.between(0.08, 0.16);
        boolean gas = knobs.chance(0.15);
        return new SpringPlan(
                load / deflection,
                load,
                gas,
                knobs.oneOf(List.of(Rubs.values())),
                knobs.between(0.05, 0.12),
                knobs.between(0, 0.03) * load,
                knobs.between(2, 5),
                knobs.chance(0.4) ? knobs.between(0.03, -0.03) : Double.NaN,
                knobs.chance(0.4) ? knobs.between(0.05, 0.02) : Double.NaN);
    }

    SpringPlan without(boolean friction, boolean gaps) {
        return new SpringPlan(
                rate,
                load,
                gas,
                friction ? rubbing : Rubs.NOT,
                share,
                constant,
                lockedMultiple,
                gaps ? helperGap : Double.NaN,
                gaps ? stopGap : Double.NaN);
    }

    SpringPlan steel() {
        return new SpringPlan(rate, load, false, rubbing, share, constant, lockedMultiple, helperGap, stopGap);
    }

    SpringPlan withHelper(double gap) {
        return new SpringPlan(rate, load, gas, rubbing, share, constant, lockedMultiple, gap, stopGap);
    }

    SpringPlan rubbing(Rubs kind, double multiple) {
        return new SpringPlan(rate, load, gas, kind, share, constant, multiple, helperGap, stopGap);
    }

    /** Height of the enclosed gas at its load, at which its rate for slow changes is the stated one (m). */
    private double column() {
        return load / GAUGE * (GAUGE + AMBIENT) / rate;
    }

    /** Compression about which it works (m). */
    private double standing() {
        return gas ? column() * (Math.pow((GAUGE + AMBIENT) / AMBIENT, 1 / 1.3) - 1) : load / rate;
    }

    /** Entries of a spring {@code factor} times as strong. */
    String yaml(double factor) {
        StringBuilder text = new StringBuilder();
        if (gas) {
            double area = factor * load / GAUGE;
            double volume = area * column();
            text.append(f(
                    "gas: {piston area: %.12g cm2, volume: %.12g l, load: %.12g N, exponent: 1.3}",
                    1e4 * area, 1e3 * volume, factor * load));
        } else {
            text.append(f("kind: half-elliptic leaf, rate: %.12g N/m", factor * rate));
        }
        if (rubbing != Rubs.NOT) {
            text.append(f(", friction: {share of load: %.12g, constant: %.12g N", share, factor * constant));
            switch (rubbing) {
                case ENVELOPE -> text.append(", envelope length: 3 mm}");
                case TWO_SLIDERS ->
                    text.append(f(
                            ", locked rate: %.12g N/m, sliders: [{of limit: 60 %%, of locked rate: 70 %%}, {of limit: 40 %%, of locked rate: 30 %%}]}",
                            factor * lockedMultiple * rate));
                default -> text.append(f(", locked rate: %.12g N/m}", factor * lockedMultiple * rate));
            }
        }
        if (!Double.isNaN(helperGap)) {
            text.append(f(
                    ", helper: {gap: %.12g mm, rate: %.12g N/m}", 1e3 * (standing() + helperGap), 0.7 * factor * rate));
        }
        if (!Double.isNaN(stopGap)) {
            text.append(f(
                    ", bump stop: {clearance: %.12g mm, rate: %.12g N/m}",
                    1e3 * (standing() + stopGap), 6 * factor * rate));
        }
        return text.toString();
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
