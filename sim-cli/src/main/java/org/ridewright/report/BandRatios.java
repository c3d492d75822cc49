package org.ridewright.report;

import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.study.BandFamily;
import org.ridewright.study.CompareFindings;
import org.ridewright.study.Estimate;
import org.ridewright.study.Tries;

/**
 * What one question in third octaves found of one ride test: the bands that it resolves, and what each thing has there, beside the first of them.
 *
 * @param family the question
 * @param test number of the ride test
 * @param resolved places of the resolved bands in the family, lowest first
 */
record BandRatios(BandFamily family, int test, Tries tries, List<Integer> resolved) {
    BandRatios {
        resolved = List.copyOf(resolved);
    }

    /** Of every question in third octaves and every ride test that resolves any. */
    static List<BandRatios> of(CompareFindings findings) {
        return BandFamily.of(findings.study().questions()).stream()
                .flatMap(family -> IntStream.range(0, findings.rows().size())
                        .mapToObj(test -> of(family, test, findings.tries().orElseThrow())))
                .filter(ratios -> !ratios.resolved().isEmpty())
                .toList();
    }

    private static BandRatios of(BandFamily family, int test, Tries tries) {
        return new BandRatios(
                family,
                test,
                tries,
                IntStream.range(0, family.bands().size())
                        .filter(b -> Double.isFinite(
                                tries.value(0, test, family.questions().get(b)).value()))
                        .boxed()
                        .toList());
    }

    List<ThirdOctave> bands() {
        return resolved.stream().map(family.bands()::get).toList();
    }

    /** R.m.s. of a thing in the i-th resolved band (m/s²). */
    Estimate level(int thing, int i) {
        return tries.value(thing, test, question(i));
    }

    /** The same over that of the first thing, draw by draw. */
    Estimate ratio(int thing, int i) {
        return tries.ratio(0, thing, test, question(i));
    }

    private int question(int i) {
        return family.questions().get(resolved.get(i));
    }
}
