package org.ridewright.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Low and high pass of even order n after Butterworth, as sections: {@code |LP|² = 1/(1 + (f/f0)^{2n})} and
 * {@code |HP|² = 1 − |LP|²}. The two halves of a crossing share the power of a signal between them without loss or gain.
 */
public final class Butterworth {
    private Butterworth() {}

    /**
     * @param order n, even, ≥ 2
     * @param frequency f0 where half of the power passes (Hz), &gt; 0
     */
    public static List<FilterSection> lowPass(int order, double frequency) {
        return sections(order, q -> FilterSection.lowPass(frequency, q));
    }

    /** Arguments as in {@link #lowPass}. */
    public static List<FilterSection> highPass(int order, double frequency) {
        return sections(order, q -> FilterSection.highPass(frequency, q));
    }

    /** The rate of change of what the low pass lets through, {@code s·LP(s)}; arguments as in {@link #lowPass}. */
    public static List<FilterSection> derivative(int order, double frequency) {
        List<FilterSection> sections = new ArrayList<>(lowPass(order, frequency));
        FilterSection first = sections.get(0);
        sections.set(0, new FilterSection(0, first.b0(), 0, first.a0(), first.a1(), first.a2()));
        return List.copyOf(sections);
    }

    /** Poles on a circle: {@code 1/Q_k = 2 sin((2k − 1)π/(2n))}. */
    private static List<FilterSection> sections(int order, DoubleFunction<FilterSection> section) {
        if (order < 2 || order % 2 != 0) {
            throw new IllegalArgumentException("order must be even and ≥ 2, got " + order);
        }
        List<FilterSection> list = new ArrayList<>();
        for (int k = order / 2; k >= 1; k--) {
            list.add(section.apply(1 / (2 * Math.sin((2 * k - 1) * Math.PI / (2 * order)))));
        }
        return List.copyOf(list);
    }
}
