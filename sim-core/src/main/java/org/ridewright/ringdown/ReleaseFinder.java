package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Looks for releases: extremes of the smoothed record that follow each other at a steady pace, on alternating sides, and die away.
 *
 * <p>An extreme counts if it stands out of the noise. A chain of them ends where the pace changes by more than half (unless little is left, and it grows faster), where it falls silent for
 * longer than the slowest bounce, or where an extreme is {@value #PUSH} times as large as both before it: somebody pushed again. The release is at
 * the greatest extreme of its chain.
 */
final class ReleaseFinder {
    /** Growth from one extreme to the next that no beating of two modes makes. */
    private static final double PUSH = 1.6;

    private static final double STANDS_OUT = 4;
    private static final double FAINTEST = 0.03;
    private static final double SMALLEST_SHARE = 0.02;
    private static final double FROM_REST = 0.5;
    private static final double LEAST_DECAY = 0.75;

    /** What is left at this share of the beginning may be a pack that sticks, and swings much faster. */
    private static final double FAINT = 0.4;

    private static final double TAIL_PAUSE = 3;
    private static final int EARLY = 4;

    /** Extremes from the release on that a decay can be told from: a cycle and a half. */
    static final int FEWEST = 4;

    private final Stretch stretch;
    private final RingDownOptions options;
    private final Smoothed smoothed;
    private final double threshold;

    ReleaseFinder(Stretch stretch, RingDownOptions options) {
        this.stretch = stretch;
        this.options = options;
        this.smoothed = Smoothed.of(stretch, options.highest());
        this.threshold =
                Math.max(Math.max(FAINTEST, STANDS_OUT * smoothed.quiet()), SMALLEST_SHARE * smoothed.greatest());
    }

    /**
     * An extreme of the smoothed record.
     *
     * @param time (s)
     * @param value (m/s²)
     */
    record Extreme(double time, double value) {
        double size() {
            return Math.abs(value);
        }
    }

    /**
     * A release with what follows on it.
     *
     * @param extremes from the release on
     * @param end up to where nothing else happens (s)
     */
    record Release(List<Extreme> extremes, double end) {
        double at() {
            return extremes.get(0).time();
        }

        double halfPeriod() {
            int n = extremes.size() - 1;
            return (extremes.get(n).time() - extremes.get(0).time()) / n;
        }

        /** From a later extreme on. */
        Release later(int extremesLater) {
            return new Release(List.copyOf(extremes.subList(extremesLater, extremes.size())), end);
        }

        Guess guess() {
            int n = extremes.size() - 1;
            double ratio = extremes.get(n).size() / extremes.get(0).size();
            // a pack that sticks in the end swings faster then
            int early = Math.min(n, EARLY);
            double half = (extremes.get(early).time() - at()) / early;
            return new Guess(at(), half, extremes.get(0).value(), Math.min(0.98, ratio), n);
        }
    }

    /**
     * All releases, and what was passed over.
     *
     * @param releases in order of time
     * @param tooShort motions that stand out but hold fewer extremes than a decay can be told from
     */
    record Found(List<Release> releases, List<Release> tooShort) {}

    Found find() {
        List<Extreme> all = extremes();
        List<Release> releases = new ArrayList<>();
        List<Release> tooShort = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= all.size(); i++) {
            if (i < all.size() && goesOn(all, from, i)) {
                continue;
            }
            int at = from;
            for (int k = from; k < i; k++) {
                at = all.get(k).size() > all.get(at).size() ? k : at;
            }
            // what is let go from rest begins with a jump, which smoothing cuts to a half
            if (at == from + 1 && all.get(from).size() > FROM_REST * all.get(at).size()) {
                at = from;
            }
            List<Extreme> chain = List.copyOf(all.subList(at, i));
            double next = i < all.size() ? all.get(i).time() : Double.POSITIVE_INFINITY;
            Release release = new Release(chain, end(chain, next));
            if (isTail(chain, from, all)) {
                from = i;
                continue;
            }
            if (chain.size() >= FEWEST && dies(chain)) {
                releases.add(release);
            } else if (chain.size() < FEWEST && chain.get(0).size() > 3 * threshold) {
                tooShort.add(release);
            }
            from = i;
        }
        return new Found(releases, tooShort);
    }

    /** Whether it only goes on with what the chain before left: a pack that sticks and swings on. */
    private static boolean isTail(List<Extreme> chain, int from, List<Extreme> all) {
        if (from == 0) {
            return false;
        }
        Extreme last = all.get(from - 1);
        double pause = chain.get(0).time() - last.time();
        double half = (chain.get(chain.size() - 1).time() - chain.get(0).time()) / Math.max(1, chain.size() - 1);
        return pause < TAIL_PAUSE * half && chain.get(0).size() < PUSH * last.size();
    }

    private static boolean dies(List<Extreme> chain) {
        return chain.get(chain.size() - 1).size() < LEAST_DECAY * chain.get(0).size();
    }

    /** A cycle of rest after the last extreme, if there is one. */
    private double end(List<Extreme> chain, double next) {
        double last = chain.get(chain.size() - 1).time();
        double half = chain.size() > 1 ? (last - chain.get(0).time()) / (chain.size() - 1) : 0.5 / options.highest();
        double free = Math.max(last + 0.3 * half, next - 0.8 * half);
        return Math.min(Math.min(last + 2.5 * half, free), stretch.end());
    }

    private boolean goesOn(List<Extreme> all, int from, int i) {
        double gap = all.get(i).time() - all.get(i - 1).time();
        if (gap < 0.7 * 0.5 / options.highest() || gap > 1.3 * 0.5 / options.lowest()) {
            return false;
        }
        double before = all.get(i - 1).size();
        double greater = i - 2 >= from ? Math.max(before, all.get(i - 2).size()) : before;
        if (all.get(i).size() > PUSH * greater) {
            return false;
        }
        if (i - from >= 3) {
            double[] gaps = new double[i - 1 - from];
            for (int k = 0; k < gaps.length; k++) {
                gaps[k] = all.get(from + k + 1).time() - all.get(from + k).time();
            }
            Arrays.sort(gaps);
            double usual = gaps[gaps.length / 2];
            return (gap > 0.5 * usual
                            || all.get(i).size() < FAINT * all.get(from).size())
                    && gap < 1.6 * usual;
        }
        return true;
    }

    /** The greatest value of each run beyond the threshold on one side. */
    private List<Extreme> extremes() {
        List<Extreme> extremes = new ArrayList<>();
        double[] a = smoothed.values();
        int best = -1;
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i]) < threshold) {
                continue;
            }
            if (best >= 0 && Math.signum(a[i]) != Math.signum(a[best])) {
                extremes.add(new Extreme(smoothed.time(best), a[best]));
                best = i;
            } else if (best >= 0 && smoothed.time(i) - smoothed.time(best) > 0.5 / options.lowest()) {
                extremes.add(new Extreme(smoothed.time(best), a[best]));
                best = i;
            } else if (best < 0 || Math.abs(a[i]) > Math.abs(a[best])) {
                best = i;
            }
        }
        if (best >= 0) {
            extremes.add(new Extreme(smoothed.time(best), a[best]));
        }
        return extremes;
    }
}
