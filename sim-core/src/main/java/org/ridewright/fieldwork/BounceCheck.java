package org.ridewright.fieldwork;

import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Layout;
import org.ridewright.vehicle.check.Faults;

/** Judges bounce tests. */
record BounceCheck(Names names, Faults faults) {
    /** Bodies on springs lie well within (common practice). */
    private static final double SLOWEST = 0.2;

    private static final double FASTEST = 30;

    void count(String path, BounceCount count) {
        possible(path, count.test());
        faults.positive(path + ".cycles", count.cycles());
        new Bounds(faults).time(path + ".in", count.time());
        faults.positive(path + ".by", count.by());
        faults.notNegative(path + ".cycles to rest", count.toRest());
        double frequency = count.cycles().value() / count.time().value();
        if (count.cycles().value() > 0 && count.time().value() > 0 && (frequency < SLOWEST || frequency > FASTEST)) {
            faults.add(
                    path + ".in",
                    count.time().written(),
                    "makes " + Faults.plain(frequency) + " Hz of "
                            + count.cycles().written() + " cycles",
                    "a frequency from " + SLOWEST + " to " + Faults.plain(FASTEST) + " Hz",
                    "write the time of all cycles together, and check its unit",
                    path + ".cycles");
        }
        if (count.cycles().value() > 0
                && count.toRest().map(Measure::value).orElse(Double.MAX_VALUE)
                        < count.cycles().value() - 1) {
            faults.add(
                    path + ".cycles to rest",
                    count.toRest().orElseThrow().written(),
                    "is less than the cycles that were counted, "
                            + count.cycles().written(),
                    "all cycles until nothing more was seen",
                    "check both",
                    path + ".cycles");
        }
    }

    void log(String path, BounceLog log) {
        possible(path, log.test());
        new LogCheck(names, faults).run(path, log.logs());
    }

    /** A slice of a vehicle does not pitch or roll if its layout does not. */
    private void possible(String path, BounceKind test) {
        names.vehicle().ifPresent(vehicle -> {
            Layout layout = vehicle.layout();
            boolean can =
                    switch (test) {
                        case FRONT, REAR, PITCH -> layout.pitches();
                        case SIDE -> layout.rolls();
                        case HEAVE -> true;
                    };
            if (!can) {
                faults.add(
                        path + ".test",
                        test.word(),
                        "is no test of a vehicle described as '" + layout.word() + "'",
                        "a motion that the layout has",
                        "write heave, or describe the whole vehicle",
                        "vehicle");
            }
        });
    }
}
