package org.ridewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * Writes values for reports: four significant figures without trailing zeros or, where a tolerance is known, the
 * tolerance to at most two figures and the value to the same decimal. What is written can be read again.
 */
final class MeasureFormat {
    private static final int FIGURES = 4;
    private static final int TOLERANCE_FIGURES = 2;

    /** A unit in which magnitudes from {@code from} on, in SI units, are written. */
    private record Scale(double from, String unit, double inSi) {}

    private MeasureFormat() {}

    static String write(Measure measure) {
        double rounded = round(BigDecimal.valueOf(measure.value()), FIGURES).doubleValue();
        Scale scale = scaleFor(measure.kind(), rounded == 0 ? measure.tolerance() : Math.abs(rounded));
        BigDecimal value = BigDecimal.valueOf(measure.value() / scale.inSi());
        String unit = scale.unit().isEmpty() ? "" : " " + scale.unit();
        if (measure.tolerance() == 0) {
            return plain(round(value, FIGURES).stripTrailingZeros()) + unit;
        }
        BigDecimal tolerance = round(BigDecimal.valueOf(measure.tolerance() / scale.inSi()), TOLERANCE_FIGURES);
        BigDecimal matched = value.setScale(tolerance.scale(), RoundingMode.HALF_EVEN);
        int decimals = decimalsNeeded(tolerance, matched);
        return plain(matched.setScale(decimals)) + " ± " + plain(tolerance.setScale(decimals)) + unit;
    }

    /** Rounded to {@code figures} significant figures, padded with zeros where it has fewer. */
    private static BigDecimal round(BigDecimal number, int figures) {
        BigDecimal rounded = number.round(new MathContext(figures, RoundingMode.HALF_EVEN));
        int missing = figures - rounded.precision();
        return rounded.signum() == 0 || missing <= 0 ? rounded : rounded.setScale(rounded.scale() + missing);
    }

    /** Zeros after the point go where both numbers end in them; zeros before it stay. */
    private static int decimalsNeeded(BigDecimal tolerance, BigDecimal value) {
        int needed = Math.max(
                tolerance.stripTrailingZeros().scale(),
                value.stripTrailingZeros().scale());
        return Math.max(needed, Math.min(tolerance.scale(), 0));
    }

    private static String plain(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        int exponent = number.precision() - number.scale() - 1;
        if (exponent >= -6 && exponent < 9) {
            return number.toPlainString();
        }
        return number.scaleByPowerOfTen(-exponent).toPlainString() + "e" + exponent;
    }

    private static Scale scaleFor(QuantityKind kind, double magnitude) {
        List<Scale> scales = scales(kind);
        Scale chosen = scales.get(0);
        for (Scale scale : scales) {
            // zero is written in the common unit, which stands first
            if (magnitude > 0 && magnitude >= scale.from()) {
                chosen = scale;
            }
        }
        return chosen;
    }

    /** Ascending; the first serves all smaller magnitudes. */
    private static List<Scale> scales(QuantityKind kind) {
        return switch (kind) {
            case LENGTH -> List.of(new Scale(0, "mm", 1e-3), new Scale(1, "m", 1));
            case AREA -> List.of(new Scale(0, "cm²", 1e-4), new Scale(0.1, "m²", 1));
            case VOLUME -> List.of(new Scale(0, "cm³", 1e-6), new Scale(1e-3, "l", 1e-3), new Scale(1, "m³", 1));
            case MASS -> List.of(new Scale(0, "kg", 1));
            case TIME -> List.of(new Scale(0, "ms", 1e-3), new Scale(0.1, "s", 1));
            case SPEED -> List.of(new Scale(0, "m/s", 1));
            case ACCELERATION -> List.of(new Scale(0, "m/s²", 1));
            case FREQUENCY -> List.of(new Scale(0, "Hz", 1));
            case WAVENUMBER -> List.of(new Scale(0, "cycle/m", 1));
            case ANGLE -> List.of(new Scale(0, "deg", Math.PI / 180));
            case FORCE -> List.of(new Scale(0, "N", 1), new Scale(10e3, "kN", 1e3));
            case TORQUE -> List.of(new Scale(0, "N·m", 1), new Scale(10e3, "kN·m", 1e3));
            case PRESSURE -> List.of(new Scale(0, "kPa", 1e3), new Scale(1e6, "MPa", 1e6), new Scale(1e9, "GPa", 1e9));
            case RATE -> List.of(new Scale(0, "N/mm", 1e3));
            case ROLL_RATE -> List.of(new Scale(0, "N·m/deg", 180 / Math.PI));
            case DAMPING -> List.of(new Scale(0, "N·s/m", 1), new Scale(10e3, "kN·s/m", 1e3));
            case ROLL_DAMPING -> List.of(new Scale(0, "N·m·s/rad", 1));
            case INERTIA -> List.of(new Scale(0, "kg·m²", 1));
            case RATIO -> List.of(new Scale(0, "", 1));
        };
    }
}
