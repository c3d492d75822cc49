package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Handling;
import org.ridewright.fieldwork.BounceLog;
import org.ridewright.fieldwork.LogReference;
import org.ridewright.fieldwork.Release;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.RecordedMotion;
import org.ridewright.ringdown.Estimate;
import org.ridewright.ringdown.LoggedBounce;
import org.ridewright.ringdown.NoRingDownException;
import org.ridewright.ringdown.RingDown;
import org.ridewright.ringdown.RingDownOptions;
import org.ridewright.ringdown.RingDowns;
import org.ridewright.ringdown.Together;

/**
 * Logged bounce tests: the ride frequency over the cycles that stand out of the noise, and what is left of the first swing after half of them. Both are
 * held against the simulated test, let go from as far as the log's first turn shows: {@code (|A_0| + f)/ω²} where friction jumps,
 * {@code (|A_0| − f)/ω²} where it turns over gradually. Swings are ways from turn to turn in both.
 */
record BounceLogEvidence(BounceLog fact, BounceTest test, int halfCycles, List<Datum> data) implements Evidence {
    /**
     * Besides the errors of the fit, as a share of the frequency (our choice): the pitching that goes with a bounce of one end, and people aboard who
     * sit less still than a dead load, shift it by some thousandths. Clocks of loggers are far better.
     */
    private static final double OF_FREQUENCY = 0.005;

    /**
     * The same of a swing's share of the first, as a difference (our choice): hands that leave late, a floor that gives and friction that is not the same
     * each time change single swings by some hundredths.
     */
    private static final double OF_SHARE = 0.03;

    /**
     * @throws CalibrationException if a log shows no release, or unlike ones
     * @throws org.ridewright.measurement.UnusableLogException if a log cannot be used
     */
    static BounceLogEvidence of(BounceLog fact, Sources sources) {
        List<RingDown> releases = new ArrayList<>();
        for (LogReference log : fact.logs()) {
            releases.addAll(releases(fact, log, sources));
        }
        refuseUnlike(fact, releases);
        int halves = releases.stream().mapToInt(RingDown::halfCycles).min().orElseThrow();
        double frequency =
                mean(releases.stream().map(r -> r.frequency().value()).toList());
        double ofFit = ofFit(releases.stream().map(RingDown::frequency).toList());
        double scatter =
                scatter(releases.stream().map(r -> r.frequency().value()).toList());
        List<Datum> data = new ArrayList<>();
        data.add(new Datum(
                fact.label() + ": ride frequency",
                "Hz",
                frequency,
                Math.sqrt(ofFit * ofFit
                        + square(scatter)
                        + square(OF_FREQUENCY * frequency)
                        + square(frequency
                                * mean(releases.stream()
                                        .map(BounceLogEvidence::turnsShift)
                                        .toList()))),
                fact.keepBack(),
                ""));
        int later = halves / 2;
        if (later >= 1) {
            List<Estimate> left =
                    releases.stream().map(r -> r.amplitudes().get(later).left()).toList();
            List<Double> shares = left.stream().map(Estimate::value).toList();
            data.add(new Datum(
                    fact.label() + ": swing left after " + Double.toString(later / 2.0) + " cycles",
                    "%",
                    100 * mean(shares),
                    100
                            * Math.sqrt(square(scatter(shares))
                                    + square(OF_SHARE)
                                    + square(ofFit(left))
                                    + square(mean(releases.stream()
                                            .map(r -> swingsShift(r, later))
                                            .toList()))),
                    fact.keepBack(),
                    ""));
        }
        double depth = mean(releases.stream().map(RingDown::depth).toList());
        boolean lifts = fact.release() == Release.LIFTED;
        BounceTest test = new BounceTest(
                BounceEvidence.test(fact.test(), fact.release(), Optional.empty())
                        .kind(),
                lifts ? Handling.drop(depth) : Handling.pushTo(depth));
        return new BounceLogEvidence(fact, test, halves, List.copyOf(data));
    }

    private static List<RingDown> releases(BounceLog fact, LogReference log, Sources sources) {
        LoggedBounce logged =
                LoggedBounce.of(RecordedMotion.of(sources.recordings().apply(log), log.options()), LogAxis.Z);
        try {
            return RingDowns.of(logged.stretches(), logged.flaws(), RingDownOptions.USUAL)
                    .releases();
        } catch (NoRingDownException none) {
            throw new CalibrationException(fact.label() + ", " + log.written() + ": " + none.getMessage());
        }
    }

    /** A mean of unlike motions would be that of none. */
    private static void refuseUnlike(BounceLog fact, List<RingDown> releases) {
        if (!Together.alike(releases)) {
            throw new CalibrationException(String.format(
                    Locale.ROOT,
                    "%s: its releases swing at %s Hz, too far apart to be of one end and one load; write a bounce log for each"
                            + " kind, with 'from' and 'to' where they are in one file",
                    fact.label(),
                    releases.stream()
                            .map(r -> String.format(
                                    Locale.ROOT, "%.2f", r.frequency().value()))
                            .collect(Collectors.joining(", "))));
        }
    }

    /**
     * By how much a second mode may shift the frequency, as a share: the fit tells that of the first mode, the simulated test counts turns of both. At a turn where the
     * second moves r times as far as the first, its phase, which may be any, shifts the turn by r/√2 of a radian (r.m.s.).
     */
    private static double turnsShift(RingDown release) {
        double first = Math.min(1, beside(release, 0) / place(release, 0));
        double last = Math.min(1, beside(release, release.counted()) / place(release, release.counted()));
        return Math.hypot(first, last) / Math.sqrt(2) / (Math.PI * Math.max(1, release.halfCycles()));
    }

    /** The same of what is left of the first swing, as a difference. */
    private static double swingsShift(RingDown release, int later) {
        double time = release.amplitudes().get(later).time()
                - release.amplitudes().get(0).time();
        double left = release.amplitudes().get(later).left().value();
        return Math.hypot(beside(release, time), left * beside(release, 0)) / Math.sqrt(2);
    }

    /** What the first mode goes to either side at a time after the release, over the same at first. */
    private static double place(RingDown release, double time) {
        return Math.exp(-2
                * Math.PI
                * release.naturalFrequency().value()
                * release.dampingRatio().value()
                * time);
    }

    /** What a second mode goes to either side then, over that of the first mode at first; displacements are accelerations over ω². */
    private static double beside(RingDown release, double time) {
        return release.second()
                .map(mode -> mode.share()
                        * square(release.naturalFrequency().value()
                                / mode.frequency().value())
                        * Math.exp(-2
                                * Math.PI
                                * mode.frequency().value()
                                * mode.dampingRatio().value()
                                * time))
                .orElse(0.0);
    }

    /** Standard error of a mean, from those of the fits. */
    private static double ofFit(List<Estimate> of) {
        return Math.sqrt(mean(of.stream().map(e -> square(e.standardError())).toList()) / of.size());
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElseThrow();
    }

    /** Standard error of the mean, from the scatter; 0 of a single value. */
    private static double scatter(List<Double> values) {
        double mean = mean(values);
        double sum = values.stream().mapToDouble(v -> square(v - mean)).sum();
        return values.size() < 2 ? 0 : Math.sqrt(sum / (values.size() - 1) / values.size());
    }

    private static double square(double x) {
        return x * x;
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        Count count = trial.bounce(fact.load(), test).count();
        double frequency = BounceEvidence.frequency(count, halfCycles / 2.0).orElse(Double.NaN);
        if (data.size() == 1) {
            return new double[] {frequency};
        }
        int later = halfCycles / 2;
        double left = later < count.halfCycles() ? count.swing(later) / count.swing(0) : 0;
        return new double[] {frequency, 100 * left};
    }
}
