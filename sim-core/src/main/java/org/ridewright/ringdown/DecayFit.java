package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ridewright.ringdown.DecayCurve.Place;

/**
 * The stages of a fit: from several starts with every sample, jumps drawn out over two intervals; then without the samples next to a turn,
 * where what a logger's low pass or the evening out of instants leaves of a jump would count as misfit.
 */
final class DecayFit {
    /** Samples this near to a turn are left out in the end (intervals). */
    private static final double NEAR_TURN = 1.6;

    /** Step for the slopes of what a motion tells (of a parameter's unit): far above round-off, far below any standard error that matters. */
    private static final double DIFFERENCE = 1e-6;

    private static final int PASSES = 3;
    private static final double[] VISCOUS_SHARES = {0, 0.5, 1};
    private static final List<Place> LINE =
            List.of(Place.LOG_OMEGA, Place.START, Place.FIRST, Place.OFFSET, Place.DRIFT);

    private final double[] times;
    private final double[] values;
    private final double interval;

    /**
     * @param times of the samples (s), even
     * @param values (m/s²)
     */
    DecayFit(double[] times, double[] values) {
        this.times = times;
        this.values = values;
        this.interval = (times[times.length - 1] - times[0]) / (times.length - 1);
    }

    /** Something that a motion tells, which each of its parameters may change. */
    interface Quantity {
        /** Of a motion and the whole vector of its parameters, by the places of {@link Place}. */
        double of(FrictionOscillation motion, double[] whole);
    }

    /** A fit with its curve and the samples that counted. */
    record Fitted(DecayCurve curve, boolean[] counted, CurveFit fit) {
        double value(Place place) {
            return curve.whole(fit.parameters())[place.index()];
        }

        boolean varies(Place place) {
            return curve.free().contains(place);
        }

        /** Where it is among the parameters. */
        int index(Place place) {
            return curve.free().indexOf(place);
        }

        double standardError(Place place) {
            return varies(place) ? fit.standardError(index(place)) : 0;
        }

        double covariance(Place a, Place b) {
            return varies(a) && varies(b) ? fit.covariance(index(a), index(b)) : 0;
        }

        Estimate estimate(Place place) {
            return Estimate.of(value(place), standardError(place), fit.quantile());
        }

        /**
         * What the motion says besides, its error by differences over all parameters with their covariance.
         *
         * @param quantity of a motion and of the whole vector of parameters
         */
        Estimate estimate(Quantity quantity) {
            double[] parameters = fit.parameters();
            int n = parameters.length;
            double[] slopes = new double[n];
            for (int k = 0; k < n; k++) {
                double step = DIFFERENCE * curve.unit(k);
                slopes[k] = (read(quantity, moved(parameters, k, step)) - read(quantity, moved(parameters, k, -step)))
                        / (2 * step);
            }
            double variance = 0;
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    variance += slopes[a] * slopes[b] * fit.covariance(a, b);
                }
            }
            return Estimate.of(read(quantity, parameters), Math.sqrt(Math.max(0, variance)), fit.quantile());
        }

        private double read(Quantity quantity, double[] parameters) {
            return quantity.of(curve.motion(parameters), curve.whole(parameters));
        }

        private static double[] moved(double[] parameters, int k, double by) {
            double[] moved = parameters.clone();
            moved[k] += by;
            return moved;
        }

        int samples() {
            int n = 0;
            for (boolean one : counted) {
                n += one ? 1 : 0;
            }
            return n;
        }
    }

    /** Which parameters a kind of decay has. */
    static List<Place> places(boolean viscous, boolean dry) {
        List<Place> places = new ArrayList<>(LINE);
        if (viscous) {
            places.add(Place.ZETA);
        }
        if (dry) {
            places.add(Place.FRICTION);
        }
        return places;
    }

    /** Both parameters, from several starts. */
    Fitted mixed(Guess guess) {
        boolean[] all = after(guess.start());
        List<Place> free = places(true, true);
        List<double[]> bases = new ArrayList<>();
        for (double share : VISCOUS_SHARES) {
            double[] base = new double[Place.values().length];
            base[Place.LOG_OMEGA.index()] = Math.log(guess.omega());
            base[Place.ZETA.index()] = guess.zeta(share);
            base[Place.FRICTION.index()] = guess.friction(share);
            base[Place.START.index()] = guess.start();
            base[Place.FIRST.index()] = guess.first();
            bases.add(base);
        }
        return refined(free, lowest(all, free, bases));
    }

    /** All samples but those up to the first turn and next to it. */
    boolean[] after(double start) {
        boolean[] after = new boolean[times.length];
        for (int i = 0; i < after.length; i++) {
            after[i] = times[i] > start + NEAR_TURN * interval;
        }
        return after;
    }

    /** From where another fit ended, with other parameters free; samples next to the turns left out. */
    Fitted refined(List<Place> free, double[] base) {
        double[] whole = base;
        for (int pass = 0; ; pass++) {
            DecayCurve curve = new DecayCurve(times, interval, free, whole);
            boolean[] counted = awayFromTurns(curve.motion(curve.start()));
            requireEnough(counted, free);
            double[] found = CurveFit.minimum(curve, values, counted, curve.start(), CurveFit.CLOSE);
            double[] next = curve.whole(found);
            if (pass + 1 == PASSES || Arrays.equals(counted, awayFromTurns(curve.motion(found)))) {
                return new Fitted(curve, counted, CurveFit.at(curve, values, counted, found, reach(next)));
            }
            whole = next;
        }
    }

    private static void requireEnough(boolean[] counted, List<Place> free) {
        int n = 0;
        for (boolean one : counted) {
            n += one ? 1 : 0;
        }
        if (n < 2 * free.size()) {
            throw new NoRingDownException(
                    n + " samples between its turns are too few to fit",
                    "ten samples in each cycle or more",
                    "record at 50 samples a second or more");
        }
    }

    /** The same samples, with other parameters free. */
    Fitted among(boolean[] counted, List<Place> free, double[] base) {
        DecayCurve curve = new DecayCurve(times, interval, free, base);
        double[] found = CurveFit.minimum(curve, values, counted, curve.start(), CurveFit.CLOSE);
        return new Fitted(curve, counted, CurveFit.at(curve, values, counted, found, reach(curve.whole(found))));
    }

    /** Of several starts the one that ends lowest, with what it came to. */
    double[] lowest(boolean[] counted, List<Place> free, List<double[]> bases) {
        double[] best = bases.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (double[] base : bases) {
            DecayCurve curve = new DecayCurve(times, interval, free, base);
            double[] found = CurveFit.minimum(curve, values, counted, curve.start(), CurveFit.ROUGH);
            double sum = CurveFit.sumOfSquares(curve, values, counted, found);
            if (sum < least) {
                least = sum;
                best = curve.whole(found);
            }
        }
        return best;
    }

    /** A half cycle. */
    private int reach(double[] whole) {
        return (int) Math.max(3, Math.rint(Math.PI / Math.exp(whole[Place.LOG_OMEGA.index()]) / interval));
    }

    private boolean[] awayFromTurns(FrictionOscillation motion) {
        boolean[] counted = new boolean[times.length];
        List<FrictionOscillation.Turn> turns = motion.turns();
        int at = 0;
        for (int i = 0; i < times.length; i++) {
            while (at + 1 < turns.size()
                    && turns.get(at + 1).time() - times[i]
                            < times[i] - turns.get(at).time()) {
                at++;
            }
            double first = turns.get(0).time();
            counted[i] = times[i] > first && Math.abs(times[i] - turns.get(at).time()) > NEAR_TURN * interval;
        }
        return counted;
    }
}
