package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.study.Estimate;
import org.ridewright.study.Question;

/** At which frequencies one thing is told apart from another, in words. */
final class BandWords {
    private final List<ThirdOctave> bands;
    private final List<Estimate> ratios;
    private final boolean drawn;

    /**
     * @param bands lowest first, all of them resolved
     * @param ratios of the one thing to the other in each
     */
    BandWords(List<ThirdOctave> bands, List<Estimate> ratios, boolean drawn) {
        this.bands = List.copyOf(bands);
        this.ratios = List.copyOf(ratios);
        this.drawn = drawn;
    }

    /** −1 where it is lower for sure, 1 where it is higher, 0 where that is not told. */
    private int side(int band) {
        Estimate ratio = ratios.get(band);
        return ratio.high() < 1 ? -1 : ratio.low() > 1 ? 1 : 0;
    }

    String text() {
        int all = bands.size();
        if (all == 0) {
            return ChangeWords.NOTHING;
        }
        List<String> parts = new ArrayList<>();
        long lower = count(-1);
        long higher = count(1);
        int most = most();
        for (int side : lower >= higher ? new int[] {-1, 1} : new int[] {1, -1}) {
            if (count(side) > 0) {
                parts.add((side < 0 ? "lower " : "higher ")
                        + stretches(side)
                        + (side(most) == side ? " (most at " + at(most) + ")" : ""));
            }
        }
        if (parts.isEmpty()) {
            return "in no third octave from " + Question.spoken(bands.get(0)) + " to "
                    + Question.spoken(bands.get(all - 1)) + " clearly lower or higher";
        }
        if (lower + higher < all) {
            parts.add("elsewhere not told apart");
        }
        return Listed.of(parts);
    }

    private long count(int side) {
        return IntStream.range(0, bands.size()).filter(b -> side(b) == side).count();
    }

    /** The band in which the ratio is farthest from one, of those that are told apart; 0 if none is. */
    private int most() {
        return IntStream.range(0, bands.size())
                .filter(b -> side(b) != 0)
                .boxed()
                .max((a, b) -> Double.compare(size(a), size(b)))
                .orElse(0);
    }

    private double size(int band) {
        return Math.abs(Math.log(ratios.get(band).value()));
    }

    private String at(int band) {
        String text = ChangeWords.ofRatio(ratios.get(band), drawn);
        String brief = text.replaceFirst(" (lower|higher)", "").replaceFirst(" \\((.*)\\)$", "; $1");
        return Question.spoken(bands.get(band)) + ", " + (brief.equals(text) || brief.contains("times") ? "" : "by ")
                + brief;
    }

    /** All stretches of neighbouring bands on one side. */
    private String stretches(int side) {
        List<String> all = new ArrayList<>();
        for (int b = 0; b < bands.size(); b++) {
            if (side(b) == side && (b == 0 || side(b - 1) != side)) {
                int last = b;
                while (last + 1 < bands.size() && side(last + 1) == side) {
                    last++;
                }
                all.add(
                        last == b
                                ? "at " + Question.spoken(bands.get(b))
                                : "from " + Question.spoken(bands.get(b)).replace(" Hz", "") + " to "
                                        + Question.spoken(bands.get(last)));
            }
        }
        return Listed.of(all);
    }
}
