package org.ridewright.vehicle.check;

import java.util.List;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damper.Law;

/** Judges one damper. */
final class DamperCheck {
    private DamperCheck() {}

    static void run(Damper damper, String path, Faults faults) {
        faults.notNegative(path + ".friction", damper.friction());
        faults.positive(path + ".locked rate", damper.lockedRate());
        boolean idle = damper.law().isEmpty();
        if (damper.law().isPresent() && damper.law().get() instanceof Law.Rates rates) {
            faults.notNegative(path + ".bump", rates.bump());
            faults.notNegative(path + ".rebound", rates.rebound());
            idle = rates.bump().value() == 0 && rates.rebound().value() == 0;
        } else if (damper.law().isPresent() && damper.law().get() instanceof Law.Table table) {
            table(table.points(), path + ".table", faults);
        }
        if (idle && damper.friction().value() == 0) {
            faults.add(
                    path,
                    "",
                    "damps nothing",
                    "bump and rebound, or damping, or a table, or friction",
                    "remove the damper",
                    path + ".bump",
                    path + ".rebound",
                    path + ".friction");
        }
    }

    private static void table(List<Law.Point> points, String at, Faults faults) {
        if (points.size() < 2) {
            faults.add(
                    at,
                    "",
                    "has fewer than two points",
                    "rows [speed, force], such as [0.1 m/s, 200 N]",
                    "add points, or give bump and rebound");
        }
        for (int i = 0; i < points.size(); i++) {
            Law.Point here = points.get(i);
            if (i > 0 && here.speed().value() <= points.get(i - 1).speed().value()) {
                faults.add(
                        at + "[" + i + "][0]",
                        here.speed().written(),
                        "is not more than the speed before it, "
                                + points.get(i - 1).speed().written(),
                        "speeds that rise from row to row, rebound (negative) first",
                        "put the rows in order and leave out double ones",
                        at + "[" + (i - 1) + "]");
            }
            if (here.speed().value() * here.force().value() < 0) {
                faults.add(
                        at + "[" + i + "][1]",
                        here.force().written(),
                        "pushes the way the damper moves",
                        "a force with the sign of its speed",
                        "write both with a minus sign in rebound and neither in bump",
                        at + "[" + i + "][0]");
            }
        }
    }
}
