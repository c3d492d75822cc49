package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ridewright.bounce.BounceKind;
import org.ridewright.bounce.BounceTest;
import org.ridewright.bounce.Count;
import org.ridewright.bounce.Handling;
import org.ridewright.fieldwork.BounceCount;
import org.ridewright.fieldwork.Release;
import org.ridewright.quantity.Measure;

/**
 * A bounce test counted against a stopwatch. Its ride frequency is what the simulated test gives over as many cycles, or over all that can be seen
 * where there are fewer, and no eigenvalue. How long it goes on depends on what the eye still sees; that is the softer datum.
 */
record BounceEvidence(BounceCount fact, BounceTest test, List<Datum> data) implements Evidence {
    /** With fewer, a half cycle that creeps back against friction makes a frequency of its own. */
    private static final double FEWEST_CYCLES = 2;

    /** How hard people push who do not say how far: by the force that their usual depth takes on the vehicle as its file has it. */
    static BounceEvidence of(BounceCount fact, Trial before) {
        BounceTest asked = test(fact.test(), fact.release(), fact.by());
        List<Datum> data = new ArrayList<>();
        if (hasFrequency(fact)) {
            data.add(frequency(fact, asked, before));
        }
        fact.toRest()
                .ifPresent(rest -> data.add(new Datum(
                        fact.label() + ": cycles to rest", "", rest.value(), rest.tolerance(), fact.keepBack(), "")));
        if (data.isEmpty()) {
            throw new CalibrationException(String.format(
                    Locale.ROOT,
                    "%.3g cycles were counted. Where friction stops the bounce so soon, each half cycle lasts as long as it likes, and there is no frequency to "
                            + "compare; add 'cycles to rest', push further, or log the bounce",
                    fact.cycles().value()));
        }
        BounceTest test = asked;
        if (fact.by().isEmpty() && fact.release() != Release.LIFTED) {
            // the same push for every vehicle of the search: people do not measure their push, and a search for it
            // costs more than the test
            test = new BounceTest(
                    test.kind(), Handling.push(before.bounce(fact.load(), test).force()));
        }
        return new BounceEvidence(fact, test, List.copyOf(data));
    }

    private static boolean hasFrequency(BounceCount fact) {
        return fact.cycles().value() >= FEWEST_CYCLES;
    }

    private static Datum frequency(BounceCount fact, BounceTest test, Trial before) {
        Measure cycles = fact.cycles();
        Measure time = fact.time();
        double frequency = cycles.value() / time.value();
        double relative = Math.hypot(cycles.tolerance() / cycles.value(), time.tolerance() / time.value());
        return new Datum(
                fact.label() + ": ride frequency",
                "Hz",
                frequency,
                Math.hypot(frequency * relative, ofEye(fact, test, before)),
                fact.keepBack(),
                "");
    }

    /**
     * What it does to the frequency that an eye sees twice as much or half as much: near the end friction holds the springs, and each half cycle more that is
     * counted may be a slower or a faster one. An even band over the three (Hz).
     */
    private static double ofEye(BounceCount fact, BounceTest test, Trial before) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double visible : new double[] {test.visible() / 2, test.visible(), 2 * test.visible()}) {
            BounceTest seen = new BounceTest(test.kind(), test.handling(), visible, test.tolerance());
            OptionalDouble found = frequency(
                    before.bounce(fact.load(), seen).count(), fact.cycles().value());
            if (found.isPresent()) {
                least = Math.min(least, found.getAsDouble());
                most = Math.max(most, found.getAsDouble());
            }
        }
        return most > least ? (most - least) / 2 / EVEN : 0;
    }

    static BounceTest test(org.ridewright.fieldwork.BounceKind where, Release release, Optional<Measure> by) {
        boolean lifts = release == Release.LIFTED;
        double depth = by.map(Measure::value).orElse(Handling.USUAL_DEPTH);
        double most = by.isPresent() || lifts ? Double.POSITIVE_INFINITY : Handling.USUAL_FORCE;
        return new BounceTest(kind(where), new Handling(lifts, depth, most));
    }

    private static BounceKind kind(org.ridewright.fieldwork.BounceKind where) {
        return switch (where) {
            case FRONT -> BounceKind.FRONT;
            case REAR -> BounceKind.REAR;
            case SIDE -> BounceKind.ROLL;
            case HEAVE -> BounceKind.HEAVE;
            case PITCH -> BounceKind.PITCH;
        };
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        Count count = trial.bounce(fact.load(), test).count();
        double[] both = {frequency(count, fact.cycles().value()).orElse(Double.NaN), count.smoothCycles()};
        int from = hasFrequency(fact) ? 0 : 1;
        return Arrays.copyOfRange(both, from, from + data.size());
    }

    /** Over a number of cycles from letting go, the last half of them in proportion; over all that are seen where there are fewer. */
    static OptionalDouble frequency(Count count, double cycles) {
        double halves = 2 * cycles;
        int whole = (int) Math.floor(halves);
        if (count.halfCycles() <= whole) {
            return count.smoothFrequency();
        }
        double start = count.turningPoints().get(0).time();
        double at = count.turningPoints().get(whole).time();
        double next = count.turningPoints().get(whole + 1).time();
        return OptionalDouble.of(cycles / (at + (halves - whole) * (next - at) - start));
    }
}
