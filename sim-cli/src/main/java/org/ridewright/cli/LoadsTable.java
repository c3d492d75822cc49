package org.ridewright.cli;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.report.LoadsTables;
import org.ridewright.standing.Standing;
import org.ridewright.vehicle.Vehicle;

/** What a table of loads prints: wheels, springs, leaves and attitude, load case by load case, then what to heed. */
final class LoadsTable {
    private LoadsTable() {}

    static List<String> lines(Vehicle vehicle, List<Standing> all) {
        List<String> lines = new ArrayList<>();
        add(lines, 2, LoadsTables.wheelHeads(), LoadsTables.wheels(vehicle, all));
        lines.add("");
        add(lines, 2, springHeads(), LoadsTables.springs(all));
        lines.add(
                "friction: how much more or less the spring may carry as it settled. by load: what the load alone adds.");
        if (!LoadsTables.stresses(all).isEmpty()) {
            lines.add("");
            add(lines, 2, stressHeads(), LoadsTables.stresses(all));
        }
        lines.add("");
        add(lines, 1, attitudeHeads(vehicle), LoadsTables.attitudes(vehicle, all));
        lines.add(
                "Degrees nose down and left side up, and rise of the body above each axle in mm, left and right, all by the load.");
        List<String> cautions = LoadsTables.cautions(all);
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add("To heed:");
            cautions.forEach(c -> ShortRemarks.wrap(c, lines));
        }
        lines.add("");
        return lines;
    }

    private static List<String> springHeads() {
        return List.of(
                "Load case",
                "Spring",
                "kN",
                "friction N",
                "N/mm",
                "from free mm",
                "by load mm",
                "helper",
                "to bump mm",
                "to droop mm");
    }

    private static List<String> stressHeads() {
        return List.of("Load case", "Leaves of", "MPa", "on bump MPa", "allowable MPa", "of it %", "on bump %");
    }

    private static List<String> attitudeHeads(Vehicle vehicle) {
        List<String> heads = new ArrayList<>(List.of("Load case", "nose down", "left up"));
        vehicle.axles().forEach(axle -> {
            heads.add(axle.name() + (vehicle.layout().rolls() ? " left" : ""));
            if (vehicle.layout().rolls()) {
                heads.add(axle.name() + " right");
            }
        });
        return heads;
    }

    private static void add(List<String> lines, int words, List<String> heads, List<List<String>> rows) {
        TextTable table = new TextTable(words);
        table.row(heads);
        String last = "";
        for (List<String> row : rows) {
            List<String> shown = new ArrayList<>(row);
            if (row.get(0).equals(last)) {
                shown.set(0, "");
            }
            last = row.get(0);
            table.row(shown);
        }
        lines.addAll(table.lines());
    }
}
