package org.ridewright.road;

import java.util.List;

/** A smooth length of road: height, slope and second derivative at any station on it. */
public sealed interface Section permits Section.Straight, Section.Arc, Section.Wave, PolynomialSection, SectionSum {
    /** Height above the datum at station x (m). */
    double height(double x);

    /** Rise per length at station x; infinite where the road stands upright. */
    double slope(double x);

    /** Second derivative of the height at station x (1/m); infinite where the road stands upright. */
    double secondDerivative(double x);

    /** Integral of the height from station a to b (m²). */
    double area(double a, double b);

    /** A bound that the second derivative does not exceed between a and b (1/m), ≥ 0; not always the closest. */
    double hollowest(double a, double b);

    /** The same section, {@code rise} (m) higher. */
    Section raised(double rise);

    /** A level length at the given height (m). */
    static Section level(double height) {
        return new Straight(0, height, 0);
    }

    /**
     * The sum of sections that lie on top of one another.
     *
     * @param sections at least one
     * @param at station where they begin (m)
     */
    static Section sum(List<Section> sections, double at) {
        return SectionSum.of(sections, at);
    }

    /** A straight slope (rise per length) through height {@code z} (m) at station {@code x0} (m). */
    record Straight(double x0, double z, double slope) implements Section {
        @Override
        public double height(double x) {
            return slope == 0 ? z : z + slope * (x - x0);
        }

        @Override
        public double slope(double x) {
            return slope;
        }

        @Override
        public double secondDerivative(double x) {
            return 0;
        }

        @Override
        public double area(double a, double b) {
            return (b - a) * height(a + (b - a) / 2);
        }

        @Override
        public double hollowest(double a, double b) {
            return 0;
        }

        @Override
        public Section raised(double rise) {
            return new Straight(x0, z + rise, slope);
        }
    }

    /** The upper side of a circle: centre {@code xc, zc} (m), radius (m) > 0. */
    record Arc(double xc, double zc, double radius) implements Section {
        @Override
        public double height(double x) {
            return zc + rise(x);
        }

        @Override
        public double slope(double x) {
            return (xc - x) / rise(x);
        }

        @Override
        public double secondDerivative(double x) {
            double y = rise(x);
            return -radius * radius / (y * y * y);
        }

        @Override
        public double area(double a, double b) {
            return zc * (b - a) + areaFromCrown(b) - areaFromCrown(a);
        }

        @Override
        public double hollowest(double a, double b) {
            return 0;
        }

        @Override
        public Section raised(double rise) {
            return new Arc(xc, zc + rise, radius);
        }

        private double rise(double x) {
            double s = Math.abs(x - xc);
            return Math.sqrt(Math.max(0, (radius - s) * (radius + s)));
        }

        private double areaFromCrown(double x) {
            double s = Math.max(-radius, Math.min(radius, x - xc));
            return (s * rise(x) + radius * radius * Math.asin(s / radius)) / 2;
        }
    }

    /** {@code base + h/2 (1 − cos 2π(x − x0)/L)}: height h and length L in m. */
    record Wave(double x0, double base, double h, double length) implements Section {
        @Override
        public double height(double x) {
            double s = Math.sin(Math.PI * (x - x0) / length);
            return base + h * s * s;
        }

        @Override
        public double slope(double x) {
            double k = 2 * Math.PI / length;
            return h / 2 * k * Math.sin(k * (x - x0));
        }

        @Override
        public double secondDerivative(double x) {
            double k = 2 * Math.PI / length;
            return h / 2 * k * k * Math.cos(k * (x - x0));
        }

        @Override
        public double area(double a, double b) {
            double k = 2 * Math.PI / length;
            return (base + h / 2) * (b - a) - h / 2 * (Math.sin(k * (b - x0)) - Math.sin(k * (a - x0))) / k;
        }

        @Override
        public double hollowest(double a, double b) {
            double k = 2 * Math.PI / length;
            return Math.abs(h) / 2 * k * k;
        }

        @Override
        public Section raised(double rise) {
            return new Wave(x0, base + rise, h, length);
        }
    }
}
