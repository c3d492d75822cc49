package org.ridewright.ride;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.quantity.Measure;

/**
 * Station of the front axle against time, for a plan of speeds.
 *
 * <p>A change from v₀ to v₁ over the distance L takes T = 2L/(v₀ + v₁); with τ from 0 to 1 over that time
 *
 * <pre>
 *   v = v₀ + (v₁ − v₀)(3τ² − 2τ³)        X = X₀ + T (v₀ τ + (v₁ − v₀)(τ³ − τ⁴/2))
 * </pre>
 *
 * so that speed and its rate of change are continuous. Before time 0 the first speed holds, after the last change the last.
 */
final class Travel {
    private static final int MOST_STEPS = 100;

    private final List<Phase> phases = new ArrayList<>();

    /** From time t and station x on: a change of speed over the time T, or where both speeds are equal steady travel. */
    private record Phase(double t, double x, double from, double to, double T) {
        boolean steady() {
            return from == to;
        }

        double station(double time) {
            if (steady()) {
                return x + from * (time - t);
            }
            double s = (time - t) / T;
            return x + T * (from * s + (to - from) * s * s * s * (1 - s / 2));
        }

        double speed(double time) {
            double s = (time - t) / T;
            return steady() ? from : from + (to - from) * s * s * (3 - 2 * s);
        }

        double acceleration(double time) {
            double s = (time - t) / T;
            return steady() ? 0 : (to - from) * 6 * s * (1 - s) / T;
        }

        double time(double station) {
            if (steady()) {
                return t + (station - x) / from;
            }
            double lo = t;
            double hi = t + T;
            double time = t + (station - x) * 2 / (from + to);
            for (int i = 0; i < MOST_STEPS; i++) {
                double miss = station(time) - station;
                if (miss > 0) {
                    hi = time;
                } else {
                    lo = time;
                }
                double next = time - miss / speed(time);
                next = next > lo && next < hi ? next : lo + (hi - lo) / 2;
                if (Math.abs(next - time) <= Math.ulp(time)) {
                    return next;
                }
                time = next;
            }
            return time;
        }
    }

    /** @param plan with legs in order and apart by the change of speed at least */
    Travel(SpeedPlan plan) {
        double v = plan.legs().get(0).speed().value();
        phases.add(new Phase(0, 0, v, v, 0));
        for (SpeedPlan.Leg leg : plan.legs().subList(1, plan.legs().size())) {
            change(leg.from().value(), leg.speed().value(), plan.changeOver());
        }
    }

    private void change(double at, double to, Measure over) {
        Phase last = phases.get(phases.size() - 1);
        if (to == last.from) {
            return;
        }
        double t = last.time(at);
        double T = 2 * over.value() / (last.from + to);
        phases.add(new Phase(t, at, last.from, to, T));
        phases.add(new Phase(t + T, at + over.value(), to, to, 0));
    }

    /** Whether the speed is one and the same throughout. */
    boolean isSteady() {
        return phases.size() == 1;
    }

    /** Times between which the speed is either steady or changes in one go, after 0 (s). */
    double[] seams() {
        return phases.stream().skip(1).mapToDouble(Phase::t).toArray();
    }

    /** Station of the front axle (m). */
    double station(double time) {
        return at(time).station(time);
    }

    /** Time at which the front axle is at a station (s). */
    double time(double station) {
        int i = phases.size() - 1;
        while (i > 0 && phases.get(i).x > station) {
            i--;
        }
        return phases.get(i).time(station);
    }

    /** Speed (m/s). */
    double speed(double time) {
        return at(time).speed(time);
    }

    /** Rate of change of the speed (m/s²). */
    double acceleration(double time) {
        return at(time).acceleration(time);
    }

    /** Writes the coefficients of the speed as a polynomial of τ = (t − time)/h: four of them (m/s). */
    void expandSpeed(double time, double h, double[] out) {
        Phase phase = at(time);
        out[0] = phase.speed(time);
        if (phase.steady()) {
            Arrays.fill(out, 1, 4, 0);
            return;
        }
        double s = (time - phase.t) / phase.T;
        double r = h / phase.T;
        double change = phase.to - phase.from;
        out[1] = change * 6 * s * (1 - s) * r;
        out[2] = change * (3 - 6 * s) * r * r;
        out[3] = -2 * change * r * r * r;
    }

    /** Whether the speed is steady at that time, or from it on. */
    boolean isSteadyAt(double time) {
        return at(time).steady();
    }

    private Phase at(double time) {
        int i = phases.size() - 1;
        while (i > 0 && phases.get(i).t > time) {
            i--;
        }
        return phases.get(i);
    }
}
