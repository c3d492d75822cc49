package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.ride.RideResult;
import org.ridewright.uncertainty.Interval;
import org.ridewright.uncertainty.UncertainRide;

/** The few numbers of a ride test that come first, with their intervals where tolerances were drawn. */
public final class Headline {
    /** Heads of {@link #rows}. */
    public static final List<String> HEADS = List.of(
            "Ride test",
            "Where",
            "Rides",
            "Peak (m/s²)",
            "MTVV (m/s²)",
            "VDV (m/s^1.75)",
            "Weighted r.m.s. (m/s²)",
            "Travel (mm)",
            "Least load (kN)");

    private Headline() {}

    /** By place, then by name; in the units of {@link #HEADS}. */
    private static Map<String, Map<String, Double>> byPlace(RideResult result) {
        Map<String, Map<String, Double>> places = new LinkedHashMap<>();
        for (RideResult.SeatResult seat : result.seats()) {
            Map<String, Double> values = new LinkedHashMap<>();
            values.put("peak", seat.peak());
            VibrationMetrics z = seat.metrics().get(Axis.Z);
            if (z != null) {
                values.put("MTVV", z.mtvv());
                values.put("VDV", z.vdv());
                values.put("r.m.s.", z.rms());
            }
            places.put(seat.seat(), values);
        }
        for (RideResult.PointResult point : result.points()) {
            double peak = Math.max(point.greatest().value(), -point.least().value());
            places.put(point.point(), new LinkedHashMap<>(Map.of("peak", peak)));
        }
        if (places.isEmpty()) {
            places.put("–", new LinkedHashMap<>());
        }
        Map<String, Double> first = places.values().iterator().next();
        Extremes.farthestSpring(result).ifPresent(spring -> first.put("travel", 1000 * Extremes.travel(spring)));
        first.put("least load", Extremes.leastLoad(Extremes.lightestWheel(result)) / 1000);
        return places;
    }

    /** Each number by a name of its own. */
    static Map<String, Double> numbers(RideResult result) {
        Map<String, Double> numbers = new HashMap<>();
        byPlace(result)
                .forEach((place, values) -> values.forEach((name, value) -> numbers.put(key(place, name), value)));
        return numbers;
    }

    private static String key(String place, String name) {
        return "headline/" + place + "/" + name;
    }

    /** One line for each place of each ride test: the number as written, and in brackets where nine tenths of the draws lie. */
    public static List<List<String>> rows(List<UncertainRide> rides) {
        List<List<String>> rows = new ArrayList<>();
        for (UncertainRide ride : rides) {
            byPlace(ride.ride()).forEach((place, values) -> {
                List<String> row =
                        new ArrayList<>(List.of(RideName.of(ride.ride()).words(), place, String.valueOf(ride.draws())));
                for (String name : List.of("peak", "MTVV", "VDV", "r.m.s.", "travel", "least load")) {
                    row.add(cell(values.get(name), ride.numbers().get(key(place, name))));
                }
                rows.add(row);
            });
        }
        return rows;
    }

    private static String cell(Double value, Interval interval) {
        if (value == null) {
            return "–";
        }
        return interval == null
                ? Numbers.of(value)
                : "%s (%s to %s)".formatted(Numbers.of(value), Numbers.of(interval.low()), Numbers.of(interval.high()));
    }
}
