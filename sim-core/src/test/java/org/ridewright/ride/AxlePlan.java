package org.ridewright.ride;

import java.util.Locale;

/**
 * One axle of a generated vehicle.
 *
 * @param beam or independent wheels
 * @param unsprung mass of the whole axle (kg)
 * @param iron or pneumatic
 * @param contactRate (N/m)
 * @param contactRatio damping of the contact over critical
 * @param spring each of its springs
 * @param imbalance by how much the left spring is stronger than the mean, as a share of it
 * @param damping mean of the dampers' two directions (N·s/m), or 0 for none
 * @param rebound over bump
 * @param table whether the dampers give way at greater speeds
 * @param bar anti-roll bar (N·m/rad), or 0 for none
 */
record AxlePlan(
        boolean beam,
        double track,
        double unsprung,
        double diameter,
        boolean iron,
        double contactRate,
        double contactRatio,
        SpringPlan spring,
        double imbalance,
        double damping,
        double rebound,
        boolean table,
        double bar) {

    static AxlePlan of(Knobs knobs, double bodyOnAxle) {
        double load = bodyOnAxle * 9.80665 / 2;
        double unsprung = bodyOnAxle * knobs.between(0.12, 0.35);
        boolean iron = knobs.chance(0.5);
        SpringPlan spring = SpringPlan.of(knobs, load);
        double critical = 2 * Math.sqrt(spring.rate() * bodyOnAxle / 2);
        boolean damped = spring.rubbing() == SpringPlan.Rubs.NOT || knobs.chance(0.5);
        double wheelLoad = load + unsprung * 9.80665 / 2;
        return new AxlePlan(
                !knobs.chance(0.4),
                knobs.between(1.3, 1.7),
                unsprung,
                knobs.between(0.9, 0.6),
                iron,
                iron ? knobs.spread(1e6, 4e6) : wheelLoad / knobs.between(0.012, 0.025),
                iron ? knobs.between(0.3, 0.12) : knobs.between(0.08, 0.03),
                spring,
                knobs.chance(0.3) ? knobs.between(-0.1, 0.1) : 0,
                damped ? critical * knobs.between(0.15, 0.35) : 0,
                knobs.chance(0.6) ? knobs.between(1, 3) : 1,
                knobs.chance(0.3),
                knobs.chance(0.3) ? bodyOnAxle * knobs.between(3, 12) : 0);
    }

    AxlePlan with(SpringPlan other) {
        return new AxlePlan(
                beam,
                track,
                unsprung,
                diameter,
                iron,
                contactRate,
                contactRatio,
                other,
                imbalance,
                damping,
                rebound,
                table,
                bar);
    }

    AxlePlan mirrored() {
        return new AxlePlan(
                beam,
                track,
                unsprung,
                diameter,
                iron,
                contactRate,
                contactRatio,
                spring,
                -imbalance,
                damping,
                rebound,
                table,
                bar);
    }

    /** With the same damping at all speeds and in both directions. */
    AxlePlan evenlyDamped() {
        return new AxlePlan(
                beam,
                track,
                unsprung,
                diameter,
                iron,
                contactRate,
                contactRatio,
                spring,
                imbalance,
                damping > 0 ? damping : 0.3 * Math.sqrt(spring.rate() * unsprung),
                1,
                false,
                bar);
    }

    AxlePlan onContact(double rate, double ratio) {
        return new AxlePlan(
                beam, track, unsprung, diameter, iron, rate, ratio, spring, imbalance, damping, rebound, table, bar);
    }

    /** Whether a left and a right spring differ. */
    boolean isUneven() {
        return imbalance != 0;
    }

    /**
     * @param parts into how many like springs each is split
     */
    String yaml(String name, double behind, double mount, int parts) {
        StringBuilder text = new StringBuilder();
        text.append(f("  - name: %s\n    kind: %s\n", name, beam ? "beam" : "independent"));
        text.append(f("    behind front axle: %.12g m\n    track: %.12g m\n", behind, track));
        text.append(f("    unsprung mass: %.12g kg\n", unsprung));
        text.append(f(
                "    wheels: {diameter: %.12g m, tyre: %s, contact rate: %.12g N/m, contact damping ratio: %.12g}\n",
                diameter, iron ? "iron" : "pneumatic, path: disc and footprint", contactRate, contactRatio));
        text.append("    springs:\n");
        for (int part = 0; part < parts; part++) {
            if (imbalance == 0) {
                spring(text, name + " spring " + part, "pair", mount, 1.0 / parts);
            } else {
                spring(text, name + " spring left " + part, "left", mount, (1 + imbalance) / parts);
                spring(text, name + " spring right " + part, "right", mount, (1 - imbalance) / parts);
            }
        }
        if (damping > 0) {
            text.append("    dampers: [{").append(apart(0.85));
            double bump = 2 * damping / (1 + rebound);
            double back = bump * rebound;
            if (table) {
                text.append(f(
                        "table: [[-1 m/s, %.12g N], [-0.1 m/s, %.12g N], [0 m/s, 0 N], [0.1 m/s, %.12g N], [1 m/s, %.12g N]]}]\n",
                        -0.5 * back, -0.15 * back, 0.15 * bump, 0.5 * bump));
            } else {
                text.append(f("bump: %.12g N s/m, rebound: %.12g N s/m}]\n", bump, back));
            }
        }
        if (bar > 0) {
            text.append(f("    anti-roll bar: %.12g N m/rad\n", bar));
        }
        return text.toString();
    }

    private void spring(StringBuilder text, String name, String side, double mount, double factor) {
        text.append(f("      - {name: %s, side: %s, %s", name, side, apart(0.7)));
        text.append(f("mount height: %.12g m, ", mount))
                .append(spring.yaml(factor))
                .append("}\n");
    }

    private String apart(double ofTrack) {
        return beam ? f("apart: %.12g m, ", ofTrack * track) : "";
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
