package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.quantity.Measure;
import org.ridewright.report.DescriptionRows.Entry;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.RideResult.ElementResult;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.SpeedPlan;
import org.ridewright.road.Road;
import org.ridewright.vehicle.Vehicle;

/** What a run rests on, as tables of text: inputs, figures put in for them, position of rest, energy, remarks. */
final class BasisTables {
    private static final String NONE = "–";

    private BasisTables() {}

    static Map<String, Object> of(Scenario scenario, List<RideResult> results) {
        return Map.of(
                "inputs", inputs(scenario, results),
                "resolutions", resolutions(results),
                "rest", rest(results),
                "energy", energy(results),
                "remarks", remarks(results));
    }

    /** A table for each vehicle, then each road, then the run itself. */
    private static List<Map<String, Object>> inputs(Scenario scenario, List<RideResult> results) {
        List<Map<String, Object>> tables = new ArrayList<>();
        for (Vehicle vehicle : vehicles(results).values()) {
            List<Entry> entries = new ArrayList<>();
            for (Entry entry : DescriptionRows.of(vehicle, "")) {
                entries.add(entry);
            }
            tables.add(table(vehicle.name(), vehicle.about().strip(), rows(entries)));
            tables.add(table(
                    vehicle.name() + ": figures worked out or put in",
                    "What the equations use for the body, and for whatever the file does not give.",
                    rows(EstimatedFigures.of(vehicle))));
        }
        for (Road road : scenario.roads()) {
            List<List<String>> rows = rows(DescriptionRows.of(road, ""));
            tables.add(table("Road: " + road.name(), road.obstacles().isEmpty() ? "Level." : "", rows));
        }
        List<Entry> run = new ArrayList<>();
        for (Scenario.Entrant entrant : scenario.entrants()) {
            entrant.speeds().forEach(plan -> run.addAll(speeds(entrant.vehicle().name(), plan)));
        }
        run.addAll(DescriptionRows.of(scenario.samplingRate(), "sampling rate of the traces"));
        run.addAll(DescriptionRows.of(scenario.duration(), "duration"));
        run.addAll(DescriptionRows.of(scenario.start(), "friction at the start"));
        run.addAll(DescriptionRows.of(scenario.braked(), "braked"));
        run.addAll(DescriptionRows.of(scenario.points(), "points read off"));
        tables.add(table("Run", "", rows(run)));
        return tables;
    }

    private static List<Entry> speeds(String vehicle, SpeedPlan plan) {
        List<Entry> entries = new ArrayList<>();
        for (SpeedPlan.Leg leg : plan.legs()) {
            String from = plan.isSteady() ? "" : " from " + leg.from().written() + " on, " + plan.written();
            entries.add(new Entry(
                    "speed of " + vehicle + from, leg.speed(), leg.speed().written()));
        }
        return entries;
    }

    private static Map<String, Object> table(String heading, String about, List<List<String>> rows) {
        return Map.of("heading", heading, "about", about, "rows", rows);
    }

    private static List<List<String>> rows(List<Entry> entries) {
        return entries.stream().map(BasisTables::row).toList();
    }

    private static List<String> row(Entry entry) {
        String path = entry.path().startsWith(" › ") ? entry.path().substring(3) : entry.path();
        Measure m = entry.measure();
        if (m == null) {
            return List.of(path, entry.text(), NONE, NONE, NONE);
        }
        String unit = m.kind().siUnit().equals("1") ? "" : " " + m.kind().siUnit();
        String tolerance = m.tolerance() > 0 ? "± " + Numbers.of(m.tolerance(), 2) + unit : "none stated";
        return List.of(
                path,
                m.written(),
                Numbers.of(m.value(), 5) + unit,
                tolerance,
                m.provenance().word());
    }

    private static Map<String, Vehicle> vehicles(List<RideResult> results) {
        Map<String, Vehicle> vehicles = new LinkedHashMap<>();
        results.forEach(r -> vehicles.put(r.vehicleFile(), r.model().vehicle()));
        return vehicles;
    }

    private static List<List<String>> resolutions(List<RideResult> results) {
        return vehicles(results).values().stream()
                .map(v -> List.of(v.name(), Resolution.of(v).words()))
                .toList();
    }

    /** Masses, wheel loads and springs standing still, once for each load on each road's ground. */
    private static List<Map<String, Object>> rest(List<RideResult> results) {
        List<Map<String, Object>> tables = new ArrayList<>();
        Set<List<String>> seen = new HashSet<>();
        for (RideResult result : results) {
            RideName name = RideName.of(result);
            boolean firm = result.road().groundRate().isEmpty();
            if (!seen.add(List.of(result.vehicleFile(), name.load(), firm ? "" : name.road()))) {
                continue;
            }
            List<List<String>> rows = new ArrayList<>();
            rows.add(List.of("total mass", Numbers.of(result.model().totalMass(), 4) + " kg", NONE));
            rows.add(List.of("sprung mass", Numbers.of(result.model().sprungMass(), 4) + " kg", NONE));
            for (RideResult.WheelResult wheel : result.wheels()) {
                rows.add(List.of(wheel.wheel(), Numbers.of(wheel.loadAtRest(), 4) + " N", NONE));
            }
            for (ElementResult e : result.springs()) {
                if (e.forceAtRest() != 0) {
                    Units units = Units.of(e);
                    boolean linear = units.travel().equals("m");
                    String travel = linear
                            ? Numbers.of(1000 * e.atRest()) + " mm"
                            : Numbers.of(e.atRest()) + " " + units.travel();
                    rows.add(List.of(e.element(), Numbers.of(e.forceAtRest(), 4) + " " + units.force(), travel));
                }
            }
            tables.add(table(name.subject() + (firm ? "" : ", on " + name.road()), "", rows));
        }
        return tables;
    }

    private static List<List<String>> energy(List<RideResult> results) {
        return results.stream()
                .map(r -> List.of(
                        RideName.of(r).words(),
                        Numbers.of(r.energy().work(), 4),
                        Numbers.of(r.energy().stored(), 4),
                        Numbers.of(r.energy().dissipated(), 4),
                        Numbers.of(r.energy().relativeResidual(), 2),
                        String.valueOf(r.statistics().steps()),
                        String.valueOf(r.statistics().switches())))
                .toList();
    }

    private static List<Map<String, Object>> remarks(List<RideResult> results) {
        return RemarkGroup.of(results).stream()
                .map(group -> Map.<String, Object>of("text", group.text(), "rides", group.rides()))
                .toList();
    }
}
