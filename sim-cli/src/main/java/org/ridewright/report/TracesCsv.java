package org.ridewright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ridewright.ride.RideResult;
import org.ridewright.signal.Channel;

/** The traces of a ride test as a table of text: one line of names with units, then one line for each instant. */
public final class TracesCsv {
    private static final MathContext DIGITS = new MathContext(9);

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
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            printer.printRecord(header(traces));
            Channel clock = traces.isEmpty() ? null : traces.get(0);
            for (int i = 0; clock != null && i < clock.size(); i++) {
                printer.print(text(clock.time(i)));
                for (Channel trace : traces) {
                    printer.print(text(trace.sample(i)));
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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

    private static String text(double value) {
        return Double.toString(new BigDecimal(value).round(DIGITS).doubleValue());
    }
}
