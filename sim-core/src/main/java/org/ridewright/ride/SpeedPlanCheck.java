package org.ridewright.ride;

import java.util.List;
import java.util.Locale;
import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.check.Faults;

/** Looks for speeds and changes of speed that no vehicle can keep to. */
record SpeedPlanCheck(SpeedPlan plan, String path, Faults faults) {
    private static final double FASTEST = 70;

    void run() {
        List<SpeedPlan.Leg> legs = plan.legs();
        if (legs.isEmpty()) {
            faults.add(
                    path + ".legs",
                    "",
                    "has no leg",
                    "at least one row [station, speed]",
                    "write legs: [[0 m, 6 km/h], [80 m, 12 km/h]]");
        }
        faults.positive(path + ".change over", plan.changeOver());
        for (int i = 0; i < legs.size(); i++) {
            speed(legs.get(i).speed(), plan.name().isEmpty() && plan.isSteady() ? path : path + ".legs[" + i + "][1]");
        }
        if (!legs.isEmpty() && legs.get(0).from().value() != 0) {
            faults.add(
                    path + ".legs[0][0]",
                    legs.get(0).from().written(),
                    "is not where the front axle starts",
                    "0 m in the first row",
                    "begin with [0 m, ...]");
        }
        for (int i = 1; i < legs.size(); i++) {
            follows(legs.get(i - 1).from(), legs.get(i).from(), i);
        }
    }

    /** Every change of speed has to be over before the ride is. */
    void within(Measure distance) {
        List<SpeedPlan.Leg> legs = plan.legs();
        if (legs.size() < 2 || !(distance.value() > 0) || !(plan.changeOver().value() > 0)) {
            return;
        }
        Measure last = legs.get(legs.size() - 1).from();
        double over = last.value() + plan.changeOver().value();
        if (over > distance.value()) {
            faults.add(
                    path + ".legs[" + (legs.size() - 1) + "][0]",
                    last.written(),
                    String.format(
                            Locale.ROOT,
                            "begins a change of speed that takes until %.2f m, and the ride ends before",
                            over),
                    String.format(
                            Locale.ROOT,
                            "a station of %.2f m or less",
                            distance.value() - plan.changeOver().value()),
                    "begin the leg sooner, shorten 'change over', or lengthen 'distance'",
                    "distance");
        }
    }

    private void speed(Measure speed, String at) {
        if (speed.value() == 0) {
            faults.add(
                    at,
                    speed.written(),
                    "is no speed: a vehicle that stands still rides over nothing",
                    "a speed > 0 km/h",
                    "write a speed such as 8 km/h; 'check' on the vehicle file tells whether it stands");
        } else {
            faults.positive(at, speed);
        }
        if (speed.value() > FASTEST) {
            faults.within(at, speed, 0, FASTEST, "check the unit");
        }
    }

    private void follows(Measure before, Measure from, int i) {
        double least = before.value() + (i == 1 ? 0 : plan.changeOver().value());
        if (from.value() <= before.value() || from.value() < least) {
            faults.add(
                    path + ".legs[" + i + "][0]",
                    from.written(),
                    "comes before the change of speed before it is over",
                    String.format(Locale.ROOT, "a station of %.2f m or more", Math.max(least, before.value())),
                    "move the leg farther on, or shorten 'change over'");
        }
    }
}
