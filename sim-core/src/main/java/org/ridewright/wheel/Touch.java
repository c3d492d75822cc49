package org.ridewright.wheel;

import org.ridewright.math.SmoothFunction;
import org.ridewright.road.Section;

/** The path of a disc's centre while it touches one feature of the road, as a function of the centre's station X (m). */
sealed interface Touch extends SmoothFunction permits Touch.OnStraight, Touch.OnRound, TouchOnCurve {
    /** Station of the centre where this touch begins (m); −∞ on the level before the first obstacle. */
    double from();

    /** Station of the centre where it ends (m). */
    double to();

    /** Touching a straight section: the path is the same line, higher by {@code R/cos α − R}. */
    record OnStraight(double from, double to, double x0, double z0, double incline) implements Touch {
        /** Of a disc of radius R on the section from station a to b. */
        static OnStraight of(Section.Straight section, double a, double b, double R) {
            double m = section.slope();
            double hypot = Math.sqrt(1 + m * m);
            double shift = -R * m / hypot;
            double lift = R / hypot - R;
            double x0 = m == 0 ? 0 : section.x0() + shift;
            return new OnStraight(a + shift, b + shift, x0, section.height(section.x0()) + lift, m);
        }

        @Override
        public double value(double X) {
            return incline == 0 ? z0 : z0 + incline * (X - x0);
        }

        @Override
        public double slope(double X) {
            return incline;
        }

        @Override
        public double curvature(double X) {
            return 0;
        }
    }

    /**
     * Touching a corner, or the upper side of a circle of radius ρ: the centre moves on a circle of radius R + ρ about the corner
     * (ρ = 0) or the circle's centre.
     */
    record OnRound(double from, double to, double xc, double zc, double reach, double R) implements Touch {
        /** Of a disc of radius R turning on a corner from slope angle α₁ to α₂ &lt; α₁. */
        static OnRound corner(double x, double z, double alpha1, double alpha2, double R) {
            return new OnRound(x - R * Math.sin(alpha1), x - R * Math.sin(alpha2), x, z, R, R);
        }

        /** Of a disc of radius R rolling on the arc from station a to b. */
        static OnRound arc(Section.Arc arc, double a, double b, double R) {
            double reach = R + arc.radius();
            double scale = reach / arc.radius();
            double from = arc.xc() + (a - arc.xc()) * scale;
            return new OnRound(from, arc.xc() + (b - arc.xc()) * scale, arc.xc(), arc.zc(), reach, R);
        }

        @Override
        public double value(double X) {
            return zc - R + rise(X);
        }

        @Override
        public double slope(double X) {
            return (xc - X) / rise(X);
        }

        @Override
        public double curvature(double X) {
            double y = rise(X);
            return -reach * reach / (y * y * y);
        }

        private double rise(double X) {
            double s = Math.abs(X - xc);
            return Math.sqrt(Math.max(0, (reach - s) * (reach + s)));
        }
    }
}
