package org.ridewright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.ride.RideResult;

/** The table that a run prints: one line for each seat, or point where nobody is aboard. */
final class ResultTable {
    private static final List<String> HEADS = List.of(
            "vehicle, load",
            "road",
            "speed",
            "seat",
            "peak",
            "MTVV",
            "VDV",
            "a_w",
            "travel",
            "least N",
            "off",
            "draught",
            "energy");
    private static final List<String> UNITS =
            List.of("", "", "km/h", "", "m/s²", "m/s²", "m/s^1.75", "m/s²", "mm", "N", "s", "N", "residual");

    private ResultTable() {}

    static void print(List<RideResult> rides, PrintWriter out) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADS);
        rows.add(UNITS);
        for (RideResult ride : rides) {
            addRows(ride, rows);
        }
        int[] widths = new int[HEADS.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String pad = " ".repeat(widths[i] - row.get(i).length());
                boolean words = i <= 1 || i == 3;
                line.append(words ? row.get(i) + pad : pad + row.get(i)).append("  ");
            }
            out.println(line.toString().stripTrailing());
        }
        out.println();
        out.println(
                "peak: greatest vertical acceleration at the seat, unweighted. MTVV: 1 s, Wk. VDV and a_w (weighted r.m.s., Wk): from");
        out.println(
                "first contact to 2 s after the last axle has left the obstacle; they depend on that window. travel: greatest of any");
        out.println(
                "spring, from rest. least N: smallest load of any wheel. off: longest time any wheel was off the ground.");
        remarks(rides, out);
    }

    private static void addRows(RideResult ride, List<List<String>> rows) {
        List<String> front = List.of(
                ride.model().vehicle().name() + ", " + ride.model().loadCase().name(),
                ride.road().name(),
                number("%.4g", 3.6 * ride.speed()));
        List<String> back = List.of(
                number("%.1f", 1000 * travel(ride)),
                number(
                        "%.0f",
                        ride.wheels().stream()
                                        .mapToDouble(w -> w.least().value())
                                        .min()
                                        .orElse(Double.NaN)
                                + 0.0),
                number(
                        "%.3f",
                        ride.wheels().stream()
                                .mapToDouble(RideResult.WheelResult::timeOff)
                                .max()
                                .orElse(0)),
                number("%.0f", ride.draught().value()),
                number("%.0e", ride.energy().relativeResidual()));
        List<List<String>> middles = new ArrayList<>();
        for (RideResult.SeatResult seat : ride.seats()) {
            VibrationMetrics z = seat.metrics().get(Axis.Z);
            middles.add(List.of(
                    seat.seat(),
                    number("%.2f", seat.peak()),
                    z == null ? "–" : number("%.2f", z.mtvv()),
                    z == null ? "–" : number("%.2f", z.vdv()),
                    z == null ? "–" : number("%.3f", z.rms())));
        }
        for (RideResult.PointResult point : ride.points()) {
            double peak = Math.max(point.greatest().value(), -point.least().value());
            middles.add(List.of(point.point(), number("%.2f", peak), "–", "–", "–"));
        }
        if (middles.isEmpty()) {
            middles.add(List.of("–", "–", "–", "–", "–"));
        }
        for (List<String> middle : middles) {
            List<String> row = new ArrayList<>(front);
            row.addAll(middle);
            row.addAll(back);
            rows.add(row);
        }
    }

    private static double travel(RideResult ride) {
        return ride.springs().stream()
                .filter(s -> s.kind().equals("spring"))
                .mapToDouble(s -> Math.max(s.compression(), s.extension()))
                .max()
                .orElse(0);
    }

    private static void remarks(List<RideResult> rides, PrintWriter out) {
        Set<String> seen = new LinkedHashSet<>();
        for (RideResult ride : rides) {
            for (String remark : ride.remarks()) {
                seen.add(String.format(
                        Locale.ROOT,
                        "- %s, %s, %.4g km/h: %s",
                        ride.model().vehicle().name(),
                        ride.model().loadCase().name(),
                        3.6 * ride.speed(),
                        remark));
            }
        }
        if (!seen.isEmpty()) {
            out.println();
            out.println("Near the limits of the model:");
            seen.forEach(out::println);
        }
        out.println();
    }

    private static String number(String format, double value) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, format, value) : "–";
    }
}
