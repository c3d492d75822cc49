package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.ringdown.DecayCurve.Place;
import org.ridewright.ringdown.DecayFit.Fitted;
import org.ridewright.ringdown.ReleaseFinder.Release;

/**
 * Measures one release: fits it; begins a half cycle later where the first one is not free motion; adds gradual friction or a second mode where the
 * residuals say so; reads off frequency, damping and kind.
 */
final class ReleaseFit {
    /** Share of the record's mean square that the curve must describe. */
    private static final double LEAST_EXPLAINED = 0.8;

    /** A first half cycle that leaves this many times as much as the rest was still held (r.m.s.). */
    private static final double HELD = 2;

    private static final int MOST_SKIPPED = 3;

    /** Gain of the information criterion that is called decisive; common practice. */
    private static final double DECISIVE = 10;

    private static final double LEAST_SECOND = 0.08;
    private static final double LEAST_DROP = 0.7;
    private static final double LOWEST_SECOND = 0.4;
    private static final double HIGHEST_SECOND = 3;
    private static final double APART = 0.06;
    private static final double[] SECOND_DAMPINGS = {0.02, 0.08};
    private static final double[] SOFTNESSES = {0.15, 0.5, 1};
    private static final double[] SLOWER = {1, 0.9, 0.8, 0.7};

    private static final double[] ROUGHER = {1, 2.5};

    /** Residuals of this many times the noise from sample to sample are a motion. */
    private static final double MISFIT = 1.3;

    private final Stretch stretch;
    private final Release release;
    private final RingDownOptions options;

    private ReleaseFit(Stretch stretch, Release release, RingDownOptions options) {
        this.stretch = stretch;
        this.release = release;
        this.options = options;
    }

    /**
     * Measures it.
     *
     * @throws NoRingDownException if it is no free decay, or cannot be measured
     */
    static RingDown of(Stretch stretch, Release release, RingDownOptions options) {
        return new ReleaseFit(stretch, release, options).measured();
    }

    private RingDown measured() {
        requireRate();
        Window window = new Window(stretch, release);
        Fitted fitted = enriched(window, window.fit().mixed(release.guess()));
        int skipped = 0;
        for (int later = 1;
                later <= MOST_SKIPPED && release.extremes().size() - later >= ReleaseFinder.FEWEST && isHeld(fitted);
                later++) {
            Window shorter = new Window(stretch, release.later(later));
            Fitted next =
                    enriched(shorter, shorter.fit().mixed(release.later(later).guess()));
            if (noise(next) > noise(fitted) / HELD * Math.sqrt(2)) {
                break;
            }
            window = shorter;
            fitted = next;
            skipped = later;
        }
        requireDecay(window, fitted);
        return Reading.of(window, fitted, window.fit(), skipped == 0 ? List.of() : List.of(held(skipped)));
    }

    private static String held(int later) {
        return later == 1
                ? "The first half cycle is left out: it is no free swing, the hands were still on."
                : "The first " + later + " half cycles are left out: they are no free swing, the hands were still on.";
    }

    private void requireRate() {
        double frequency = 0.5 / release.halfPeriod();
        if (stretch.rate() < 4 * frequency) {
            throw new NoRingDownException(
                    String.format(
                            Locale.ROOT,
                            "%.3g samples a second are too few for a bounce of %.2g Hz",
                            stretch.rate(),
                            frequency),
                    "at least four samples in each cycle, better twenty",
                    "record at 50 samples a second or more");
        }
    }

    private void requireDecay(Window window, Fitted fitted) {
        double all = 0;
        double left = 0;
        double mean = 0;
        int n = fitted.samples();
        double[] residuals = fitted.fit().residuals();
        for (int i = 0; i < residuals.length; i++) {
            mean += fitted.counted()[i] ? window.values()[i] / n : 0;
        }
        for (int i = 0; i < residuals.length; i++) {
            if (fitted.counted()[i]) {
                all += Math.pow(window.values()[i] - mean, 2);
                left += residuals[i] * residuals[i];
            }
        }
        if (!(left < (1 - LEAST_EXPLAINED) * all)) {
            throw new NoRingDownException(
                    String.format(
                            Locale.ROOT,
                            "the motion from %.2f s on is no free decay: the best curve describes only %.0f %% of it",
                            release.at(),
                            100 * Math.max(0, 1 - left / all)),
                    "a vehicle that is let go and left alone until it stands",
                    "hands off after the push, nobody moving aboard; record again");
        }
        double frequency = Math.exp(fitted.value(Place.LOG_OMEGA)) / (2 * Math.PI);
        if (frequency < 0.7 * options.lowest() || frequency > 1.4 * options.highest()) {
            throw new NoRingDownException(
                    String.format(Locale.ROOT, "the motion from %.2f s on swings at %.2g Hz", release.at(), frequency),
                    String.format(Locale.ROOT, "a bounce of %.2g to %.2g Hz", options.lowest(), options.highest()),
                    "if that is the bounce, state the band with --band");
        }
    }

    private static double noise(Fitted fitted) {
        return Math.sqrt(fitted.fit().sumOfSquares() / Math.max(1, fitted.samples()));
    }

    private boolean isHeld(Fitted fitted) {
        double half = Math.PI / Math.exp(fitted.value(Place.LOG_OMEGA));
        double until = fitted.value(Place.START) + half;
        double first = 0;
        double rest = 0;
        int early = 0;
        int late = 0;
        double[] residuals = fitted.fit().residuals();
        for (int i = 0; i < residuals.length; i++) {
            if (!fitted.counted()[i]) {
                continue;
            }
            double t = fitted.curve().time(i);
            if (t < until) {
                first += residuals[i] * residuals[i];
                early++;
            } else {
                rest += residuals[i] * residuals[i];
                late++;
            }
        }
        return early > 2 && late > 2 && first / early > HELD * HELD * rest / late;
    }

    /** Adds gradual friction or a second mode, whichever is decisive and gains more; neither where the residuals are noise. */
    private static Fitted enriched(Window window, Fitted plain) {
        if (noise(plain) < MISFIT * window.grain()) {
            return plain;
        }
        boolean[] all = window.fit().after(plain.value(Place.START));
        double[] base = plain.curve().whole(plain.fit().parameters());
        Fitted whole = window.fit().among(all, plain.curve().free(), base);
        Optional<Fitted> two =
                second(window, whole).filter(rich -> criterion(rich, rich) < criterion(whole, rich) - DECISIVE);
        if (two.isPresent() && noise(two.get()) < MISFIT * window.grain()) {
            return between(window, two.get());
        }
        Fitted soft = soft(window, all, base);
        boolean softer = soft.value(Place.FRICTION) > 0 && criterion(soft, soft) < criterion(whole, soft) - DECISIVE;
        if (two.isPresent() && (!softer || criterion(two.get(), two.get()) < criterion(soft, two.get()))) {
            return between(window, two.get());
        }
        return softer ? soft : plain;
    }

    /** Once more, without the samples next to the turns. */
    private static Fitted between(Window window, Fitted two) {
        return window.fit()
                .refined(two.curve().free(), two.curve().whole(two.fit().parameters()));
    }

    /** Gradual friction, from several starts: the locked parts of each half cycle make the swing faster than ω. */
    private static Fitted soft(Window window, boolean[] all, double[] plain) {
        List<Place> free = new ArrayList<>(DecayFit.places(true, true));
        free.add(Place.SOFTNESS);
        List<double[]> bases = new ArrayList<>();
        for (double softness : SOFTNESSES) {
            for (double slower : SLOWER) {
                for (double rougher : ROUGHER) {
                    bases.add(softStart(plain, softness, slower, rougher));
                }
            }
        }
        return window.fit().among(all, free, window.fit().lowest(all, free, bases));
    }

    private static double[] softStart(double[] plain, double softness, double slower, double rougher) {
        double[] base = plain.clone();
        double first = plain[Place.FIRST.index()];
        double friction = rougher * Math.max(0.02 * Math.abs(first), plain[Place.FRICTION.index()]);
        base[Place.SOFTNESS.index()] = softness;
        base[Place.LOG_OMEGA.index()] += Math.log(slower);
        base[Place.FRICTION.index()] = friction;
        base[Place.ZETA.index()] = Math.max(0.01, plain[Place.ZETA.index()] / 2);
        base[Place.FIRST.index()] = first + Math.signum(first) * friction;
        return base;
    }

    /** {@code n_e ln(SSE) + p ln n_e}, with the independent samples of the richer fit for both. */
    private static double criterion(Fitted fitted, Fitted richer) {
        double n = richer.fit().effective();
        return n * Math.log(fitted.fit().sumOfSquares()) + fitted.curve().free().size() * Math.log(n);
    }

    private static Optional<Fitted> second(Window window, Fitted plain) {
        double[] base = plain.curve().whole(plain.fit().parameters());
        double own = base[Place.LOG_OMEGA.index()];
        double[] times = window.times();
        double length = times[times.length - 1] - times[0];
        double lowest = Math.max(LOWEST_SECOND * Math.exp(own), 2 * Math.PI / length);
        double[] found = null;
        double least = Double.POSITIVE_INFINITY;
        for (double omega = lowest; omega < HIGHEST_SECOND * Math.exp(own); omega += 0.25 * 2 * Math.PI / length) {
            if (Math.abs(Math.log(omega) - own) < APART) {
                continue;
            }
            for (double zeta : SECOND_DAMPINGS) {
                double[] parts = DampedWave.best(times, plain.fit().residuals(), plain.counted(), omega, zeta);
                if (parts[2] < least) {
                    least = parts[2];
                    found = new double[] {Math.log(omega), zeta, parts[0], parts[1]};
                }
            }
        }
        if (found == null) {
            return Optional.empty();
        }
        base[Place.SECOND_LOG_OMEGA.index()] = found[0];
        base[Place.SECOND_ZETA.index()] = found[1];
        base[Place.SECOND_COSINE.index()] = found[2];
        base[Place.SECOND_SINE.index()] = found[3];
        List<Place> free = new ArrayList<>(plain.curve().free());
        free.addAll(List.of(Place.SECOND_LOG_OMEGA, Place.SECOND_ZETA, Place.SECOND_COSINE, Place.SECOND_SINE));
        Fitted two = window.fit().among(plain.counted(), free, base);
        boolean large = Reading.secondShare(two) > LEAST_SECOND;
        boolean drops = noise(two) < LEAST_DROP * noise(plain);
        return large && drops ? Optional.of(two) : Optional.empty();
    }

    /** Samples of a release, from a quarter cycle before the first turn looks to be. */
    static final class Window {
        private static final double FOUR_FIFTHS_OF_NORMAL = 1.2816;

        private final double[] times;
        private final double[] values;
        private final DecayFit fit;

        Window(Stretch stretch, Release release) {
            int from = stretch.from(release.at() - 0.4 * release.halfPeriod());
            int to = stretch.from(release.end());
            times = Arrays.copyOfRange(stretch.times(), from, to);
            values = Arrays.copyOfRange(stretch.values(), from, to);
            fit = new DecayFit(times, values);
        }

        double[] times() {
            return times;
        }

        double[] values() {
            return values;
        }

        /** Noise from sample to sample, by the third differences that four fifths do not exceed (m/s²). */
        double grain() {
            double[] differences = new double[Math.max(1, values.length - 3)];
            for (int i = 0; i + 3 < values.length; i++) {
                differences[i] = Math.abs(values[i + 3] - 3 * values[i + 2] + 3 * values[i + 1] - values[i]);
            }
            Arrays.sort(differences);
            return differences[(int) (0.8 * differences.length)] / (FOUR_FIFTHS_OF_NORMAL * Math.sqrt(20));
        }

        DecayFit fit() {
            return fit;
        }
    }
}
