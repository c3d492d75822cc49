package org.ridewright.quantity;

import java.util.Objects;

/**
 * A physical value with what is known of it.
 *
 * @param kind what it measures
 * @param value in the SI unit of {@code kind}
 * @param tolerance half-width in the same unit, ≥ 0; 0 where none is stated
 * @param provenance how it was come by
 * @param written the words of the file, or of the rule that gave it; for reports
 */
public record Measure(QuantityKind kind, double value, double tolerance, Provenance provenance, String written) {
    public Measure {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(provenance, "provenance");
        Objects.requireNonNull(written, "written");
        if (!Double.isFinite(value) || !(tolerance >= 0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException(
                    kind.label() + " must be finite with a tolerance ≥ 0, got " + value + " ± " + tolerance);
        }
    }

    /** A value in SI units without tolerance, as a test or program gives it. */
    public static Measure of(double value, QuantityKind kind) {
        return new Measure(kind, value, 0, Provenance.NOT_STATED, value + " " + kind.siUnit());
    }

    /** A value that a stated rule gave in place of a measurement; {@code rule} says which. */
    public static Measure estimated(double value, QuantityKind kind, String rule) {
        return new Measure(kind, value, 0, Provenance.ESTIMATED, rule);
    }

    /** A value worked out from others that were given; {@code rule} says how. */
    public static Measure computed(double value, QuantityKind kind, String rule) {
        return new Measure(kind, value, 0, Provenance.COMPUTED, rule);
    }
}
