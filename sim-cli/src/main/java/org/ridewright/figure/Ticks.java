package org.ridewright.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The values an axis is numbered at.
 *
 * @param marks numbered values, increasing
 * @param fine values with a grid line but no number
 * @param exponent power of ten taken out of the numbers and to be named with the unit; 0 for none
 */
record Ticks(List<Mark> marks, List<Double> fine, int exponent) {

    /**
     * A numbered value.
     *
     * @param value in the unit of the axis
     * @param label as printed
     */
    record Mark(double value, String label) {}

    private static final int[] STEPS = {1, 2, 5};

    /** Wider decades are numbered at 1, 2 and 5 (pt). */
    private static final double ROOMY_DECADE = 66;

    /** So are narrower ones where fewer than two lie on the axis. */
    private static final double LEAST_ROOMY_DECADE = 44;

    /**
     * Names in place of numbers, one at 0, 1, 2 …
     *
     * @param names what stands there
     * @return the ticks
     */
    static Ticks named(List<String> names) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            marks.add(new Mark(i, names.get(i)));
        }
        return new Ticks(marks, List.of(), 0);
    }

    /**
     * Numbers for an upright axis, whose labels lie one above the other.
     *
     * @param scale of the axis
     * @param length of the axis (pt)
     * @return the ticks
     */
    static Ticks upright(Scale scale, double length) {
        double pitch = length < 90 ? 12 : 18;
        return scale.log() ? decades(scale, length) : linear(scale, pitch * scale.span() / length, length, 0);
    }

    /**
     * Numbers for a level axis, whose labels lie side by side.
     *
     * @param scale of the axis
     * @param length of the axis (pt)
     * @return the ticks
     */
    static Ticks level(Scale scale, double length) {
        return scale.log() ? decades(scale, length) : linear(scale, 26 * scale.span() / length, length, 11);
    }

    /**
     * Numbers for a level axis that counts things: whole ones, close together.
     *
     * @param scale of the axis, linear
     * @param length of the axis (pt)
     * @return the ticks
     */
    static Ticks counting(Scale scale, double length) {
        return linear(scale, Math.max(1, 11 * scale.span() / length), length, 4);
    }

    private static Ticks linear(Scale scale, double least, double length, double between) {
        int exponent = commonExponent(Math.max(Math.abs(scale.min()), Math.abs(scale.max())));
        int power = (int) Math.floor(Math.log10(least)) - 1;
        while (true) {
            for (int digit : STEPS) {
                BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
                if (step.doubleValue() < least) {
                    continue;
                }
                List<Mark> marks = multiples(scale, step, exponent);
                if (fits(marks, step.doubleValue() / scale.span() * length, between)) {
                    return new Ticks(marks, List.of(), exponent);
                }
            }
            power++;
        }
    }

    private static List<Mark> multiples(Scale scale, BigDecimal step, int exponent) {
        double size = step.doubleValue();
        double slack = 1e-9;
        long first = (long) Math.ceil(scale.min() / size - slack);
        long last = (long) Math.floor(scale.max() / size + slack);
        int decimals = Math.max(0, step.scale() + exponent);
        List<Mark> marks = new ArrayList<>();
        for (long k = first; k <= last; k++) {
            BigDecimal value = step.multiply(BigDecimal.valueOf(k));
            marks.add(new Mark(value.doubleValue(), number(value.scaleByPowerOfTen(-exponent), decimals)));
        }
        return marks;
    }

    private static boolean fits(List<Mark> marks, double pitch, double between) {
        if (marks.size() < 2 || between == 0) {
            return true;
        }
        double widest = 0;
        for (Mark mark : marks) {
            widest = Math.max(widest, Face.REGULAR.width(mark.label(), PrintStyle.TICK_LABEL));
        }
        return widest + between <= pitch;
    }

    private static Ticks decades(Scale scale, double length) {
        double logSpan = Math.log10(scale.max()) - Math.log10(scale.min());
        double perDecade = length / logSpan;
        int first = (int) Math.floor(Math.log10(scale.min()));
        int last = (int) Math.ceil(Math.log10(scale.max()));
        int every = (int) Math.max(1, Math.ceil(22 / perDecade));
        boolean roomy = perDecade > (logSpan < 2 ? LEAST_ROOMY_DECADE : ROOMY_DECADE);
        boolean plain = first >= -3 && last <= 4;
        List<Mark> marks = new ArrayList<>();
        List<Double> fine = new ArrayList<>();
        for (int power = first; power <= last; power++) {
            for (int digit = 1; digit <= 9; digit++) {
                BigDecimal value = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
                double at = value.doubleValue();
                if (!scale.holds(at)) {
                    continue;
                }
                boolean numbered =
                        digit == 1 ? Math.floorMod(power, every) == 0 : roomy && plain && (digit == 2 || digit == 5);
                if (numbered) {
                    marks.add(new Mark(at, plain ? number(value, Math.max(0, -power)) : raised(digit, power)));
                } else if (perDecade > 30) {
                    fine.add(at);
                }
            }
        }
        return new Ticks(marks, fine, 0);
    }

    private static String raised(int digit, int power) {
        return (digit == 1 ? "10^{" : digit + "·10^{") + signed(Integer.toString(power)) + "}";
    }

    /** Exponent, a multiple of three, that leaves numbers people read at a glance. */
    private static int commonExponent(double largest) {
        if (largest == 0 || (largest >= 1e-3 && largest < 1e6)) {
            return 0;
        }
        return 3 * (int) Math.floor(Math.log10(largest) / 3);
    }

    /** A number with a true minus and, from 10 000 on, thin spaces between groups of three digits. */
    static String number(BigDecimal value, int decimals) {
        String plain = value.setScale(decimals, RoundingMode.HALF_EVEN).abs().toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder grouped = new StringBuilder(plain);
        if (point > 4) {
            for (int i = point - 3; i > 0; i -= 3) {
                grouped.insert(i, '\u2009');
            }
        }
        return (value.signum() < 0 ? "−" : "") + grouped;
    }

    /** An integer's digits with a true minus. */
    static String signed(String digits) {
        return digits.replace('-', '−');
    }
}
