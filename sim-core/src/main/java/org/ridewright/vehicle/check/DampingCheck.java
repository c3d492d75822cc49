package org.ridewright.vehicle.check;

import org.ridewright.quantity.Measure;
import org.ridewright.vehicle.Damping;

/** Judges viscous damping in each of the ways it may be given. */
final class DampingCheck {
    private DampingCheck() {}

    static void run(String path, String coefficientKey, String ratioKey, Damping damping, Faults faults) {
        if (damping instanceof Damping.Coefficient coefficient) {
            faults.notNegative(path + "." + coefficientKey, coefficient.value());
        } else if (damping instanceof Damping.Ratio ratio) {
            ratio(path + "." + ratioKey, ratio.value(), faults);
        } else if (damping instanceof Damping.Restitution restitution) {
            restitution(path + ".restitution", restitution.value(), faults);
        }
    }

    /** Only a coefficient will do. */
    static void coefficientOnly(String path, Damping damping, Faults faults) {
        run(path, "damping", "damping", damping, faults);
        if (damping instanceof Damping.Ratio || damping instanceof Damping.Restitution) {
            faults.add(path + ".damping", "", "is not a damping coefficient", "a damping such as 1500 N·s/m", "");
        }
    }

    /** A damping ratio from 0 to below 1. */
    static void ratio(String path, Measure ratio, Faults faults) {
        if (ratio.value() < 0 || ratio.value() >= 1) {
            faults.add(
                    path,
                    ratio.written(),
                    ratio.value() < 0 ? "is negative" : "is not below 1",
                    "a damping ratio from 0 to below 1, such as 0.15 or 15 %",
                    percentOf(ratio));
        }
    }

    private static void restitution(String path, Measure ratio, Faults faults) {
        if (ratio.value() <= 0 || ratio.value() > 1) {
            faults.add(
                    path,
                    ratio.written(),
                    ratio.value() <= 0 ? "is not above 0" : "is more than 1",
                    "speed after a bounce over speed before it, above 0 to 1, such as 0.7",
                    percentOf(ratio));
        }
    }

    private static String percentOf(Measure ratio) {
        boolean percentMeant =
                ratio.value() > 1 && ratio.value() < 100 && ratio.written().matches("[\\d.]+");
        return percentMeant ? "write " + ratio.written() + " %" : "";
    }
}
