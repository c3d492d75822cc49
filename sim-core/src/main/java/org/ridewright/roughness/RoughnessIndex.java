package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;

/**
 * The International Roughness Index of one track, worked out as heights come in.
 *
 * <pre>
 *   s(i) = (y(i+k) − y(i)) / (k Δ)       k = max(1, round(0.25 m / Δ))
 *   IRI  = mean of |z_s′ − z_u′| over the road
 * </pre>
 *
 * <p>The slope is that over 250 mm: for spacings below 250 mm this is the moving average of the standard, which stands for the length
 * of a tyre on the road. At the start both masses follow the mean slope of the first 11 m. The index is given for the whole length
 * and for each hundred metres; its unit is m/m here, 1000 times that in m/km or mm/m.
 *
 * <p>Source: World Bank Technical Paper 46 (1986); ASTM E1926. Memory does not grow with the road but for one number each hundred metres.
 */
public final class RoughnessIndex {
    /** Length of road that the index is given for besides the whole (m). */
    public static final double SECTION = 100;

    /** Length over which slopes are taken (m). */
    static final double BASE = 0.25;

    /** Length whose mean slope the car starts with (m): half a second at 80 km/h. */
    static final double START = 11;

    private final double spacing;
    private final int base;
    private final int startIntervals;
    private final long sectionIntervals;
    private final GoldenCar car;
    private final double[] recent;
    private double[] start;
    private int waiting;
    private long heights;
    private long intervals;
    private double sum;
    private double sectionSum;
    private long inSection;
    private final List<Double> sections = new ArrayList<>();

    private RoughnessIndex(double spacing, int base) {
        this.car = new GoldenCar(spacing);
        this.spacing = spacing;
        this.base = base;
        this.startIntervals = (int) Math.max(1, Math.round(START / spacing));
        this.sectionIntervals = Math.max(1, Math.round(SECTION / spacing));
        this.recent = new double[base];
        this.start = new double[startIntervals + 1];
    }

    /**
     * As the standard prescribes.
     *
     * @param spacing of the heights (m), > 0
     */
    public static RoughnessIndex standard(double spacing) {
        return new RoughnessIndex(spacing, Math.max(1, (int) Math.round(BASE / spacing)));
    }

    /** Without the moving average, for profiles already averaged and for comparison with closed forms. */
    public static RoughnessIndex unaveraged(double spacing) {
        return new RoughnessIndex(spacing, 1);
    }

    /**
     * The next heights of the road.
     *
     * @param window heights (m); not modified
     * @param from first one taken
     * @param to one past the last
     */
    public void accept(double[] window, int from, int to) {
        for (int i = from; i < to; i++) {
            if (start != null) {
                start[waiting++] = window[i];
                if (waiting == start.length) {
                    begin();
                }
            } else {
                take(window[i]);
            }
        }
    }

    private void begin() {
        double[] first = start;
        start = null;
        car.settle((first[startIntervals] - first[0]) / (startIntervals * spacing));
        for (double height : first) {
            take(height);
        }
    }

    private void take(double height) {
        int place = (int) (heights % base);
        if (heights >= base) {
            car.advance((height - recent[place]) / (base * spacing));
            add(car.rectifiedSlope());
        }
        recent[place] = height;
        heights++;
    }

    private void add(double slope) {
        sum += slope;
        sectionSum += slope;
        intervals++;
        inSection++;
        if (inSection == sectionIntervals) {
            sections.add(sectionSum / inSection);
            sectionSum = 0;
            inSection = 0;
        }
    }

    /** Whether the road was long enough, 11 m, for the car to start. */
    public boolean isKnown() {
        return intervals > 0;
    }

    /** Index of the whole length (m/m); NaN if it was shorter than 11 m. */
    public double value() {
        return sum / intervals;
    }

    /** Index of each hundred metres (m/m), in order; a last, shorter piece counts if it is at least half as long. */
    public List<Double> sections() {
        List<Double> all = new ArrayList<>(sections);
        if (2 * inSection >= sectionIntervals) {
            all.add(sectionSum / inSection);
        }
        return all;
    }

    /** Length over which the slopes were taken (m). */
    public double base() {
        return base * spacing;
    }
}
