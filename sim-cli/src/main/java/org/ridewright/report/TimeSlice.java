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
 * @param said words to be put at the end of a caption; empty where the whole window is shown
 */
record TimeSlice(double from, double to, double origin, String said) {
    private static final double LEAD_IN = 0.05;
    /** What can be told apart in print (s). */
    private static final double LONGEST = 10;
    /** What shows a single blow to a wheel (s). */
    private static final double BLOW = 2;

    static TimeSlice of(RideResult result) {
        if (window(result) > LONGEST) {
            return around(result, greatestAcceleration(result), LONGEST, "greatest acceleration");
        }
        return whole(result);
    }

    /** The two seconds around the greatest load of a wheel, if they were kept; around the greatest acceleration if not. */
    static TimeSlice ofBlow(RideResult result) {
        if (window(result) <= BLOW) {
            return whole(result);
        }
        double at = Extremes.heaviestWheel(result).greatest().at();
        Channel kept = result.traces().get(0);
        return at > kept.start() && at < kept.end()
                ? around(result, at, BLOW, "greatest wheel load")
                : around(result, greatestAcceleration(result), BLOW, "greatest acceleration");
    }

    private static double window(RideResult result) {
        return result.window().to() - result.window().from();
    }

    private static double greatestAcceleration(RideResult result) {
        List<Felt> felt = Felt.of(result);
        return felt.isEmpty() ? result.window().from() : Felt.worst(felt).at();
    }

    private static TimeSlice whole(RideResult result) {
        double lead = LEAD_IN * window(result);
        return new TimeSlice(
                Math.max(0, result.window().from() - lead), result.window().to(), 0, "");
    }

    private static TimeSlice around(RideResult result, double middle, double length, String what) {
        double from = Math.max(0, middle - length / 2);
        double to = Math.min(from + length, result.duration());
        return new TimeSlice(
                from, to, 0, " Shown are the %s s around the %s.".formatted(Numbers.of(to - from, 2), what));
    }

    /** The same with zero at the beginning of the window, or of the part of it that is shown. */
    static TimeSlice fromFirstContact(RideResult result) {
        TimeSlice slice = of(result);
        return new TimeSlice(
                slice.from(),
                slice.to(),
                slice.said().isEmpty() ? result.window().from() : slice.from(),
                slice.said());
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
