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
    /** Lowest power of ten written without an exponent. */
    private static final int SMALLEST_PLAIN = -4;

    private TracesCsv() {}

    /**
     * All traces side by side; 9 significant digits, decimal points, lines ended by a line feed.
     *
     * @throws IllegalArgumentException if the traces are not of the same instants
     */
    public static String render(RideResult result) {
        return render(result.traces());
    }

    /**
     * The same of any traces.
     *
     * @throws IllegalArgumentException if they are not of the same instants
     */
    public static String render(List<Channel> traces) {
        StringBuilder out = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
        out.append(format.format(header(traces).toArray())).append('\n');
        // Numbers need no quoting, and going through the printer for each of them takes longer than the ride.
        for (int i = 0; !traces.isEmpty() && i < traces.get(0).size(); i++) {
            append(traces.get(0).time(i), out);
            for (Channel trace : traces) {
                append(trace.sample(i), out.append(','));
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

    /** Nine significant digits, written from the whole number that they make: many times quicker than by way of a double. */
    private static void append(double value, StringBuilder out) {
        double size = Math.abs(value);
        if (!(size >= SMALLEST && size < LARGEST)) {
            out.append(value == 0 ? 0 : new BigDecimal(value).round(DIGITS).doubleValue());
            return;
        }
        int exponent = (int) Math.floor(Math.log10(size));
        int places = DIGITS.getPrecision() - 1 - exponent;
        long digits = Math.round(places >= 0 ? size * POWERS[places] : size / POWERS[-places]);
        while (digits % 10 == 0) {
            digits /= 10;
            places--;
        }
        if (value < 0) {
            out.append('-');
        }
        if (exponent < SMALLEST_PLAIN || exponent >= DIGITS.getPrecision()) {
            appendScientific(digits, places, out);
        } else {
            appendPlain(digits, places, out);
        }
    }

    /** {@code digits·10^−places} with a decimal point. */
    private static void appendPlain(long digits, int places, StringBuilder out) {
        if (places <= 0) {
            out.append(digits * (long) POWERS[-places]).append(".0");
            return;
        }
        long one = (long) POWERS[places];
        long fraction = digits % one;
        out.append(digits / one).append('.');
        for (long tenth = one / 10; tenth > fraction; tenth /= 10) {
            out.append('0');
        }
        if (fraction > 0) {
            out.append(fraction);
        }
    }

    /** {@code digits·10^−places} with one digit before the point. */
    private static void appendScientific(long digits, int places, StringBuilder out) {
        String all = Long.toString(digits);
        out.append(all.charAt(0)).append('.').append(all.length() > 1 ? all.substring(1) : "0");
        out.append('E').append(all.length() - 1 - places);
    }

    private static double[] powers() {
        double[] powers = new double[23];
        for (int i = 0; i < powers.length; i++) {
            powers[i] = Double.parseDouble("1e" + i);
        }
        return powers;
    }
}
