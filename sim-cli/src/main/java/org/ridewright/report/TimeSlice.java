package org.ridewright.report;

import java.util.List;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Marker;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.ride.RideResult;
import org.ridewright.signal.Channel;

/**
 * The stretch of a run that figures show: its window and a little before; of a window too long for print the part around the greatest
 * acceleration.
 *
 * @param from beginning (s)
 * @param to end (s)
 * @param origin instant that the axis calls zero (s)
 */
record TimeSlice(double from, double to, double origin) {
    private static final double LEAD_IN = 0.05;
    /** What can be told apart in print (s). */
    private static final double LONGEST = 10;

    static TimeSlice of(RideResult result) {
        double window = result.window().to() - result.window().from();
        if (window > LONGEST) {
            double middle = Felt.of(result).isEmpty()
                    ? result.window().from()
                    : Felt.worst(Felt.of(result)).at();
            double from = Math.max(0, middle - LONGEST / 2);
            return new TimeSlice(from, Math.min(from + LONGEST, result.duration()), 0);
        }
        double lead = LEAD_IN * window;
        return new TimeSlice(
                Math.max(0, result.window().from() - lead), result.window().to(), 0);
    }

    /** The same with zero at the beginning of the window, or of the part of it that is shown. */
    static TimeSlice fromFirstContact(RideResult result) {
        TimeSlice slice = of(result);
        boolean part = !slice.said(result).isEmpty();
        return new TimeSlice(
                slice.from(), slice.to(), part ? slice.from() : result.window().from());
    }

    /** Words to be put at the end of a caption; empty where the whole window is shown. */
    String said(RideResult result) {
        return result.window().to() - result.window().from() > LONGEST
                ? " Shown are the %s s around the greatest acceleration.".formatted(Numbers.of(to - from, 2))
                : "";
    }

    AxisSpec axis() {
        return AxisSpec.of("Time", "s").between(from - origin, to - origin);
    }

    /** The n-th line of a panel. */
    Series line(int order, String name, Channel channel, double factor) {
        return Series.line(order, name, times(channel), values(channel, factor));
    }

    double[] times(Channel channel) {
        double[] t = new double[count(channel)];
        for (int i = 0; i < t.length; i++) {
            t[i] = channel.time(first(channel) + i) - origin;
        }
        return t;
    }

    double[] values(Channel channel, double factor) {
        double[] y = new double[count(channel)];
        for (int i = 0; i < y.length; i++) {
            y[i] = factor * channel.sample(first(channel) + i);
        }
        return y;
    }

    private int first(Channel channel) {
        int i = (int) Math.ceil((from - channel.start()) * channel.sampleRate() - 1e-6);
        return Math.min(Math.max(0, i), channel.size() - 1);
    }

    private int count(Channel channel) {
        int last = (int) Math.floor((to - channel.start()) * channel.sampleRate() + 1e-6);
        return Math.max(1, Math.min(last, channel.size() - 1) - first(channel) + 1);
    }

    /** Where each axle meets the obstacle. */
    List<Marker> markers(RideResult result) {
        return result.axles().stream()
                .filter(a -> a.meets() >= from && a.meets() <= to)
                .map(a -> new Marker(a.meets() - origin, result.axles().size() == 1 ? "meets" : a.axle() + " meets"))
                .toList();
    }

    Panel marked(Panel panel, RideResult result) {
        return panel.withMarkers(markers(result));
    }
}
