package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.ride.RideResult;

/** What a run prints: under each vehicle and load, one line for each seat and point of each ride test. */
final class ResultTable {
    private static final List<String> HEADS = List.of(
            "", "speed", "", "peak", "MTVV", "VDV", "a_w", "travel", "least load", "off ground", "draught", "energy");
    private static final List<String> UNITS =
            List.of("road", "", "place", "m/s²", "m/s²", "m/s^1.75", "m/s²", "mm", "kN", "s", "kN", "residual");
    private static final int WORD_COLUMNS = 3;
    private static final List<String> NOTES = List.of(
            "peak: greatest vertical acceleration, up or down, unweighted. MTVV (1 s), VDV and a_w (weighted r.m.s.): vertical,",
            "ISO 2631-1 Wk at the seat, from first contact to 2 s after the last axle has left the last obstacle (or the end of",
            "the run); VDV and a_w depend on that window. travel: greatest of any spring, from rest. least load: smallest of any",
            "wheel. off ground: longest of any wheel. draught: greatest. The report has each seat, spring and wheel.");

    private ResultTable() {}

    /** The table, its notes, and the remarks in short. */
    static List<String> lines(List<RideResult> rides) {
        TextTable table = new TextTable(WORD_COLUMNS);
        table.row(HEADS);
        table.row(UNITS);
        String subject = "";
        for (RideResult ride : rides) {
            if (!Wording.subject(ride).equals(subject)) {
                subject = Wording.subject(ride);
                table.heading(subject);
            }
            addRows(ride, table);
        }
        List<String> lines = new ArrayList<>(table.lines());
        lines.add("");
        lines.addAll(NOTES);
        List<String> remarks = ShortRemarks.lines(rides);
        if (!remarks.isEmpty()) {
            lines.add("");
            lines.add("Near the limits of the model:");
            lines.addAll(remarks);
        }
        lines.add("");
        return lines;
    }

    private static void addRows(RideResult ride, TextTable table) {
        List<List<String>> places = places(ride);
        for (int i = 0; i < places.size(); i++) {
            List<String> row = new ArrayList<>();
            row.addAll(i == 0 ? List.of(ride.road().name(), Wording.speed(ride)) : List.of("", ""));
            row.addAll(places.get(i));
            row.addAll(i == 0 ? whole(ride) : List.of("", "", "", "", ""));
            table.row(row);
        }
    }

    private static List<List<String>> places(RideResult ride) {
        List<List<String>> places = new ArrayList<>();
        for (RideResult.SeatResult seat : ride.seats()) {
            VibrationMetrics z = seat.metrics().get(Axis.Z);
            places.add(List.of(
                    seat.seat(),
                    Wording.number(seat.peak(), 2),
                    z == null ? "–" : Wording.number(z.mtvv(), 2),
                    z == null ? "–" : Wording.number(z.vdv(), 2),
                    z == null ? "–" : Wording.number(z.rms(), 3)));
        }
        for (RideResult.PointResult point : ride.points()) {
            double peak = Math.max(point.greatest().value(), -point.least().value());
            places.add(List.of(point.point(), Wording.number(peak, 2), "–", "–", "–"));
        }
        if (places.isEmpty()) {
            places.add(List.of("–", "–", "–", "–", "–"));
        }
        return places;
    }

    /** What holds for the vehicle as a whole. */
    private static List<String> whole(RideResult ride) {
        double travel = ride.springs().stream()
                .filter(s -> s.kind().equals("spring"))
                .mapToDouble(s -> Math.max(s.compression(), s.extension()))
                .max()
                .orElse(Double.NaN);
        double least =
                ride.wheels().stream().mapToDouble(w -> w.least().value()).min().orElse(Double.NaN);
        double off = ride.wheels().stream()
                .mapToDouble(RideResult.WheelResult::timeOff)
                .max()
                .orElse(Double.NaN);
        return List.of(
                Wording.number(1000 * travel, 1),
                Wording.number(least / 1000, 2),
                Wording.number(off, 3),
                Wording.number(ride.draught().value() / 1000, 2),
                String.format(Locale.ROOT, "%.0e", ride.energy().relativeResidual()));
    }
}
