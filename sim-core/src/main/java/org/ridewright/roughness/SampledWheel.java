package org.ridewright.roughness;

import java.math.BigDecimal;

/**
 * A wheel that makes a path of its own from a profile given at equal spacing, straight from height to height.
 *
 * <pre>
 *   disc       u(X) = max over |b| ≤ R of  r(X + b) + √(R² − b²) − R
 *   footprint  u(X) = mean of r over [X − a, X + a]
 * </pre>
 *
 * <p>Both are exact for that profile. {@link org.ridewright.wheel.WheelPath} gives the same path of any profile as pieces of polynomials,
 * for riding; this one is for spectra, which need a million heights and no pieces.
 */
public sealed interface SampledWheel {
    /** Length of road needed on each side of the wheel's centre (m). */
    double reach();

    /** What it is called in figures, such as "rigid, 0.9 m". */
    String label();

    /**
     * Heights of the wheel's centre above its height on the level.
     *
     * @param road heights at equal spacing (m), {@code margin} of them on each side of those asked for; not modified
     * @param margin at least {@code ⌈reach()/spacing⌉ + 1}
     * @param spacing (m), > 0
     * @return heights of the path (m), {@code road.length − 2 margin} of them
     * @throws IllegalArgumentException if there is too little road
     */
    double[] path(double[] road, int margin, double spacing);

    /** Heights needed on each side. */
    default int margin(double spacing) {
        return (int) Math.ceil(reach() / spacing) + 1;
    }

    /** A rigid wheel of that diameter (m), > 0. */
    record Disc(double diameter) implements SampledWheel {
        public Disc {
            requirePositive("diameter of a wheel", diameter);
        }

        @Override
        public double reach() {
            return diameter / 2;
        }

        @Override
        public String label() {
            return "rigid, " + metres(diameter);
        }

        @Override
        public double[] path(double[] road, int margin, double spacing) {
            requireRoad(road, margin, margin(spacing));
            return DiscOverPolyline.path(road, margin, spacing, diameter / 2);
        }
    }

    /** A footprint of that length (m), > 0. */
    record Footprint(double length) implements SampledWheel {
        public Footprint {
            requirePositive("length of a footprint", length);
        }

        @Override
        public double reach() {
            return length / 2;
        }

        @Override
        public String label() {
            return "footprint of " + metres(length);
        }

        @Override
        public double[] path(double[] road, int margin, double spacing) {
            requireRoad(road, margin, margin(spacing));
            return FootprintOverPolyline.path(road, margin, spacing, length / 2);
        }
    }

    /** A pneumatic wheel: the path of a disc of that diameter, averaged over a footprint of that length (m), both > 0. */
    record Pneumatic(double diameter, double footprint) implements SampledWheel {
        public Pneumatic {
            requirePositive("diameter of a wheel", diameter);
            requirePositive("length of a footprint", footprint);
        }

        @Override
        public double reach() {
            return (diameter + footprint) / 2;
        }

        @Override
        public String label() {
            return "pneumatic, " + metres(diameter);
        }

        @Override
        public int margin(double spacing) {
            return new Disc(diameter).margin(spacing) + new Footprint(footprint).margin(spacing);
        }

        @Override
        public double[] path(double[] road, int margin, double spacing) {
            requireRoad(road, margin, margin(spacing));
            int inner = new Footprint(footprint).margin(spacing);
            double[] rolled = DiscOverPolyline.path(road, margin - inner, spacing, diameter / 2);
            return FootprintOverPolyline.path(rolled, inner, spacing, footprint / 2);
        }
    }

    private static String metres(double length) {
        return BigDecimal.valueOf(length).stripTrailingZeros().toPlainString() + " m";
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be > 0 m, got " + value + " m");
        }
    }

    private static void requireRoad(double[] road, int margin, int needed) {
        if (margin < needed || road.length < 2 * margin) {
            throw new IllegalArgumentException("a wheel needs ≥ " + needed + " heights on each side, got " + margin
                    + " of " + road.length + " in all");
        }
    }
}
