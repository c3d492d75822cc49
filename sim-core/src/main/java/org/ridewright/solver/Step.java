package org.ridewright.solver;

/**
 * One step of a run, on which every quantity is a polynomial in τ = (t − start)/h from 0 to {@link #end()}. A view into the solver's work
 * arrays: valid during the call that hands it over.
 */
public final class Step {
    private final ElementOrder order;
    private final FlatLaws laws;
    private final TaylorSeries series;
    private final Regime regime;
    private double start;
    private double end;

    Step(ElementOrder order, FlatLaws laws, TaylorSeries series, Regime regime) {
        this.order = order;
        this.laws = laws;
        this.series = series;
        this.regime = regime;
    }

    void set(double newStart, double newEnd) {
        start = newStart;
        end = newEnd;
    }

    /** Time at τ = 0 (s). */
    public double start() {
        return start;
    }

    /** Time that passes while τ runs from 0 to 1 (s). */
    public double h() {
        return series.h();
    }

    /** τ at which the step ends, at most 1. */
    public double end() {
        return end;
    }

    /** Length of the step (s). */
    public double duration() {
        return end * series.h();
    }

    /** Highest power of the polynomials. */
    public int degree() {
        return series.order() + 1;
    }

    /** Adds {@code factor × q̈_i} to out. */
    public void addAcceleration(int coordinate, double factor, double[] out) {
        for (int k = 0; k <= series.order(); k++) {
            out[k] += factor * (k + 1) / series.h() * series.v[(k + 1) * laws.n + coordinate];
        }
    }

    /** q̈_i at τ (m/s² or rad/s²). */
    public double acceleration(int coordinate, double tau) {
        double sum = 0;
        for (int k = tau == 0 ? 0 : series.order(); k >= 0; k--) {
            sum = sum * tau + (k + 1) * series.v[(k + 1) * laws.n + coordinate];
        }
        return sum / series.h();
    }

    /** Adds {@code factor × v_i} to out. */
    public void addVelocity(int coordinate, double factor, double[] out) {
        add(series.v, laws.n, coordinate, series.order(), factor, out);
    }

    /** Adds {@code factor × q_i}, from the free state, to out. */
    public void addDisplacement(int coordinate, double factor, double[] out) {
        out[0] += factor * series.q[coordinate];
        for (int k = 1; k <= degree(); k++) {
            out[k] += factor * series.h() / k * series.v[(k - 1) * laws.n + coordinate];
        }
    }

    /** Adds {@code factor × c_e} to out. */
    public void addCompression(int element, double factor, double[] out) {
        add(series.c, laws.ne, order.place(element), degree(), factor, out);
    }

    /** Adds {@code factor × f_e} to out. */
    public void addForce(int element, double factor, double[] out) {
        add(series.force, laws.ne, order.place(element), degree(), factor, out);
    }

    /** Adds {@code factor × Σ s} of the element's friction states to out. */
    public void addFriction(int element, double factor, double[] out) {
        int e = order.place(element);
        for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
            for (int k = 0; k <= degree(); k++) {
                out[k] += factor * series.friction(j, k);
            }
        }
    }

    /** Adds {@code factor × u̇} of a height to out. */
    public void addHeightSpeed(int input, double factor, double[] out) {
        int inputs = laws.equations.inputs();
        for (int k = 0; k < series.inputDegree(); k++) {
            out[k] += factor * (k + 1) * series.u[(k + 1) * inputs + input] / series.h();
        }
    }

    /** Adds {@code factor × u} of a height to out. */
    public void addHeight(int input, double factor, double[] out) {
        add(series.u, laws.equations.inputs(), input, series.inputDegree(), factor, out);
    }

    private static void add(double[] x, int width, int index, int degree, double factor, double[] out) {
        for (int k = 0; k <= degree; k++) {
            out[k] += factor * x[k * width + index];
        }
    }

    /** Whether an element that only pushes is off during this step. */
    public boolean isOff(int element) {
        return !regime.acts(order.place(element));
    }

    /** Whether every friction state of the element is locked during this step; never for an envelope, which gives at every travel. */
    public boolean isLocked(int element) {
        int e = order.place(element);
        if (laws.envelope[e] > 0) {
            return false;
        }
        for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
            if (regime.slider[j] != Regime.LOCKED) {
                return false;
            }
        }
        return true;
    }

    /** Whether a gapped stage of the element acts during this step. */
    public boolean isStageOn(int element, int stage) {
        return regime.stageOn[laws.stageFrom[order.place(element)] + stage];
    }
}
