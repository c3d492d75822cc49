package org.ridewright.solver;

/**
 * Forces, accelerations and guards at one instant, each law written out as it reads; for the reference solver. Of what the series uses it
 * takes rows, laws and {@code −M⁻¹B_iᵀ} from {@link FlatLaws}, the list of guards from {@link GuardTable}, and from {@link Regime}
 * the present pieces with their straight laws. Mutable, one per run.
 */
final class PointLaws {
    private final FlatLaws laws;
    private final GuardTable table;
    private final Regime regime;
    private final PushTerms pushes;
    final double[] q;
    final double[] v;
    final double[] s;
    final double[] a;
    /** Rate of change of each friction state; that of sliders that slide is left to c. */
    final double[] frictionRate;

    final double[] c;
    final double[] speed;
    private final double[] force;
    private final double[] elastic;
    private final double[] leaf;
    private final double[] viscous;

    PointLaws(FlatLaws laws, GuardTable table, Regime regime) {
        this.laws = laws;
        this.table = table;
        this.regime = regime;
        pushes = new PushTerms(laws, 1);
        force = new double[laws.ne];
        q = new double[laws.n];
        v = new double[laws.n];
        a = new double[laws.n];
        s = new double[laws.sliders()];
        frictionRate = new double[laws.sliders()];
        c = new double[laws.ne];
        speed = new double[laws.ne];
        elastic = new double[laws.ne];
        leaf = new double[laws.ne];
        viscous = new double[laws.ne];
    }

    /** Works out everything from q, v, s, the heights in row 0 of u and their speeds in row 1. */
    void evaluate(double[] u) {
        int n = laws.n;
        int inputs = laws.equations.inputs();
        System.arraycopy(laws.freeFall, 0, a, 0, n);
        for (int g = 0; g < laws.gravity.length; g++) {
            a[laws.gravityRow[g]] += laws.gravity[g] * q[laws.gravityColumn[g]];
        }
        for (int e = 0; e < laws.ne; e++) {
            c[e] = 0;
            speed[e] = 0;
            for (int j = 0; j < n; j++) {
                c[e] += laws.row[e * n + j] * q[j];
                speed[e] += laws.row[e * n + j] * v[j];
            }
            if (laws.input[e] >= 0) {
                c[e] += u[laws.input[e]];
                speed[e] += u[inputs + laws.input[e]];
            }
            double f = force(e);
            force[e] = f;
            for (int i = 0; i < n; i++) {
                a[i] += laws.w[e * n + i] * f;
            }
        }
        pushes.accelerateAt(u, force, a);
    }

    private double force(int e) {
        elastic[e] = regime.elasticForce(e, c[e]);
        leaf[e] = regime.leafForce(e, c[e]);
        viscous[e] = regime.dampingOffset[e] + regime.dampingRate[e] * speed[e];
        double f = elastic[e] + viscous[e];
        for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
            frictionRate[j] = 0;
            if (laws.envelope[e] > 0) {
                int sense = regime.sense[e];
                double limit = laws.constant[e] + (regime.loaded[e] ? laws.mu[e] * leaf[e] : 0);
                frictionRate[j] = sense * speed[e] * (sense * limit - s[j]) / laws.envelope[e];
            } else if (regime.slider[j] == Regime.LOCKED) {
                frictionRate[j] = laws.sliderRate[j] * speed[e];
            } else {
                s[j] = regime.sliding(j, leaf[e]);
            }
            f += s[j];
        }
        return regime.acts(e) ? f : 0;
    }

    /** A watched guard's value in units of its round-off: below −1 it is crossed. */
    double guard(int g) {
        int e = table.element[g];
        int part = table.part[g];
        return switch (table.kind[g]) {
            case STAGE ->
                (regime.stageOn[part] ? 1 : -1)
                        * laws.stageSide[part]
                        * (c[e] - laws.stageAt[part])
                        / FlatLaws.SLACK_COMPRESSION;
            case SPEED ->
                (regime.speedOn[part] ? 1 : -1)
                        * laws.speedSide[part]
                        * (speed[e] - laws.speedAt[part])
                        / FlatLaws.SLACK_SPEED;
            case LOAD -> (regime.loaded[e] ? 1 : -1) * leaf[e] / laws.slackForce[e];
            case SLIDER -> slider(part, e, table.side[g]);
            case SENSE -> regime.sense[e] * speed[e] / FlatLaws.SLACK_SPEED;
            case CONTACT_FORCE ->
                (regime.contact[e] == Regime.TOUCHING ? 1 : -1) * (elastic[e] + viscous[e]) / laws.slackForce[e];
            case CONTACT_GAP -> (regime.contact[e] == Regime.APART ? -1 : 1) * c[e] / FlatLaws.SLACK_COMPRESSION;
        };
    }

    private double slider(int j, int e, int side) {
        if (regime.slider[j] != Regime.LOCKED) {
            return regime.slider[j] * speed[e] / FlatLaws.SLACK_SPEED;
        }
        double limit = laws.constant[e] + (regime.loaded[e] ? laws.mu[e] * leaf[e] : 0);
        return (laws.sliderShare[j] * limit - side * s[j]) / laws.slackForce[e];
    }

    /** Value of the guard that is nearest to its crossing or furthest beyond, in units of its round-off. */
    double least() {
        int nearest = nearest();
        return nearest < 0 ? Double.POSITIVE_INFINITY : guard(nearest);
    }

    /** That guard, or −1 if none is watched. */
    int nearest() {
        int found = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int g = 0; g < table.count; g++) {
            if (regime.isWatched(g)) {
                double value = guard(g);
                if (value < least) {
                    least = value;
                    found = g;
                }
            }
        }
        return found;
    }
}
