package org.ridewright.solver;

import java.util.Arrays;

/** Which piece each law is on; mutable, one per run. */
final class Regime {
    static final byte LOCKED = 0;
    static final byte UP = 1;
    static final byte DOWN = -1;

    static final byte TOUCHING = 1;
    static final byte LIFTING = 0;
    static final byte APART = -1;

    private final FlatLaws laws;
    private final GuardTable table;
    final boolean[] stageOn;
    final boolean[] speedOn;
    /** Whether f_l > 0, so that friction grows with load. */
    final boolean[] loaded;

    final byte[] slider;
    /** Sense of travel for an exponential envelope. */
    final byte[] sense;

    final byte[] contact;

    /** Straight law in force on the present pieces: {@code f_e = elasticOffset + elasticRate c} beside gas, f_d likewise. */
    final double[] elasticOffset;

    final double[] elasticRate;
    /** Of these, what is the stops': {@code f_e − f_l = stopOffset + stopRate c}. */
    final double[] stopOffset;

    final double[] stopRate;
    final double[] dampingOffset;
    final double[] dampingRate;

    Regime(FlatLaws laws, GuardTable table) {
        this.laws = laws;
        this.table = table;
        stageOn = new boolean[laws.stageSlope.length];
        speedOn = new boolean[laws.speedSlope.length];
        loaded = new boolean[laws.ne];
        sense = new byte[laws.ne];
        contact = new byte[laws.ne];
        slider = new byte[laws.sliders()];
        elasticOffset = new double[laws.ne];
        elasticRate = new double[laws.ne];
        stopOffset = new double[laws.ne];
        stopRate = new double[laws.ne];
        dampingOffset = new double[laws.ne];
        dampingRate = new double[laws.ne];
    }

    /** The regime that holds at given compressions and their speeds, every slider locked. */
    void classify(double[] c, double[] speed) {
        for (int e = 0; e < laws.ne; e++) {
            for (int p = laws.stageFrom[e]; p < laws.stageFrom[e + 1]; p++) {
                stageOn[p] = laws.stageSide[p] * (c[e] - laws.stageAt[p]) > 0;
            }
            for (int p = laws.speedFrom[e]; p < laws.speedFrom[e + 1]; p++) {
                speedOn[p] = laws.speedSide[p] * (speed[e] - laws.speedAt[p]) > 0;
            }
            refresh(e);
            double elastic = elasticForce(e, c[e]);
            loaded[e] = leafForce(e, c[e]) > 0;
            double force = elastic + dampingOffset[e] + dampingRate[e] * speed[e];
            contact[e] = c[e] > 0 ? (force > 0 ? TOUCHING : LIFTING) : APART;
            sense[e] = (byte) (speed[e] < 0 ? -1 : 1);
        }
        Arrays.fill(slider, LOCKED);
    }

    /** Works out the straight law of element e on its present pieces. */
    private void refresh(int e) {
        double f0 = laws.offset[e];
        double k = laws.rate[e];
        double stop0 = 0;
        double stop = 0;
        for (int p = laws.stageFrom[e]; p < laws.stageFrom[e + 1]; p++) {
            if (stageOn[p]) {
                k += laws.stageSlope[p];
                f0 -= laws.stageSlope[p] * laws.stageAt[p];
                if (laws.stageStop[p]) {
                    stop += laws.stageSlope[p];
                    stop0 -= laws.stageSlope[p] * laws.stageAt[p];
                }
            }
        }
        elasticOffset[e] = f0;
        elasticRate[e] = k;
        stopOffset[e] = stop0;
        stopRate[e] = stop;
        double d0 = 0;
        double d = laws.damping[e];
        for (int p = laws.speedFrom[e]; p < laws.speedFrom[e + 1]; p++) {
            if (speedOn[p]) {
                d += laws.speedSlope[p];
                d0 -= laws.speedSlope[p] * laws.speedAt[p];
            }
        }
        dampingOffset[e] = d0;
        dampingRate[e] = d;
    }

    /** f_e at compression c on the present pieces (N). */
    double elasticForce(int e, double c) {
        double straight = elasticOffset[e] + elasticRate[e] * c;
        return laws.gas[e] == null ? straight : straight + laws.gas[e].force(c);
    }

    /** f_l at compression c on the present pieces (N): f_e without the stops. */
    double leafForce(int e, double c) {
        return elasticForce(e, c) - stopOffset[e] - stopRate[e] * c;
    }

    /** Friction force of a slider that slides, at the force f_l in the leaves (N). */
    double sliding(int j, double leafForce) {
        int e = laws.sliderElement[j];
        double limit = laws.constant[e] + (loaded[e] ? laws.mu[e] * leafForce : 0);
        return slider[j] * laws.sliderShare[j] * limit;
    }

    /** Whether the element passes on its force: always, but for one that only pushes and is off. */
    boolean acts(int e) {
        return !laws.pushes[e] || contact[e] == TOUCHING;
    }

    /** Whether a guard is one of the present regime. */
    boolean isWatched(int guard) {
        return switch (table.kind[guard]) {
            case SLIDER -> slider[table.part[guard]] == LOCKED || table.side[guard] > 0;
            case CONTACT_FORCE -> contact[table.element[guard]] != APART;
            default -> true;
        };
    }

    /** Passes to the regime on the other side of a crossed guard. */
    void cross(int guard) {
        int e = table.element[guard];
        int part = table.part[guard];
        switch (table.kind[guard]) {
            case STAGE -> {
                stageOn[part] ^= true;
                refresh(e);
            }
            case SPEED -> {
                speedOn[part] ^= true;
                refresh(e);
            }
            case LOAD -> loaded[e] ^= true;
            case SLIDER -> slider[part] = slider[part] == LOCKED ? (byte) table.side[guard] : LOCKED;
            case SENSE -> sense[e] = (byte) -sense[e];
            case CONTACT_FORCE -> contact[e] = contact[e] == TOUCHING ? LIFTING : TOUCHING;
            case CONTACT_GAP -> contact[e] = contact[e] == APART ? TOUCHING : APART;
        }
    }
}
