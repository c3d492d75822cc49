package org.ridewright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.ridewright.ride.RideResult;
import org.ridewright.signal.Channel;

/** The traces of a ride test as a table of text: one line of names with units, then one line for each instant. */
public final class TracesCsv {
    private static final MathContext DIGITS = new MathContext(9);
    /** Powers of ten that a double holds exactly, and the sizes of values for which they suffice. */
    private static final double[] POWERS = powers();

    private static final double SMALLEST = 1e-13;
    private static final double LARGEST = 1e15;

    private TracesCsv() {}

    /**
     * All traces side by side; 9 significant digits, decimal points, lines ended by a line feed.
     *
     * @throws IllegalArgumentException if the traces are not of the same instants
     */
    public static String render(RideResult result) {
        List<Channel> traces = result.traces();
        StringBuilder out = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
        out.append(format.format(header(traces).toArray())).append('\n');
        // Numbers need no quoting, and going through the printer for each of them takes longer than the ride.
        for (int i = 0; !traces.isEmpty() && i < traces.get(0).size(); i++) {
            out.append(text(traces.get(0).time(i)));
            for (Channel trace : traces) {
                out.append(',').append(text(trace.sample(i)));
            }
            out.append('\n');
        }
        return out.toString();
    }

    private static List<String> header(List<Channel> traces) {
        List<String> names = new ArrayList<>(List.of("time (s)"));
        for (Channel trace : traces) {
            Channel first = traces.get(0);
            if (trace.size() != first.size()
                    || trace.sampleRate() != first.sampleRate()
                    || trace.start() != first.start()) {
                throw new IllegalArgumentException(
                        "traces must be of the same instants, got '" + first + "' and '" + trace + "'");
            }
            names.add(trace.name() + " (" + trace.unit() + ")");
        }
        return names;
    }

    /** Rounds to nine significant digits, which is far quicker with a power of ten than with decimal arithmetic. */
    private static String text(double value) {
        double size = Math.abs(value);
        if (!(size >= SMALLEST && size < LARGEST)) {
            return Double.toString(
                    value == 0 ? 0 : new BigDecimal(value).round(DIGITS).doubleValue());
        }
        int exponent = (int) Math.floor(Math.log10(size));
        int places = DIGITS.getPrecision() - 1 - exponent;
        double rounded = places >= 0
                ? Math.rint(value * POWERS[places]) / POWERS[places]
                : Math.rint(value / POWERS[-places]) * POWERS[-places];
        return Double.toString(rounded);
    }

    private static double[] powers() {
        double[] powers = new double[23];
        for (int i = 0; i < powers.length; i++) {
            powers[i] = Double.parseDouble("1e" + i);
        }
        return powers;
    }
}
