package org.ridewright.solver;

/**
 * Guards of the present regime as polynomials in τ, and what follows when one is crossed.
 *
 * <p>Each guard is positive while its regime holds. It is raised by the round-off of the quantities that it is made of, so that a guard
 * that is zero on entry (just locked, just touching) stands above zero by that much, and whatever its first non-zero coefficient says
 * decides: rising, it is not crossed; falling, it is crossed when it is below zero by round-off (invariant 2).
 */
final class Guards {
    private final FlatLaws laws;
    private final Regime regime;
    private final TaylorSeries series;
    private final int speedAt;
    private final int loadedAt;
    private final int sliderAt;
    private final int senseAt;
    private final int contactAt;
    private final int count;
    private long stageCrossings;
    private long speedCrossings;
    private long loadCrossings;
    private long sliderCrossings;
    private long senseCrossings;
    private long contactCrossings;

    /** Kinds of guards, for statistics. */
    enum Kind {
        STAGE("helper, stop or table segment"),
        SPEED("damper segment"),
        LOAD("friction band"),
        SLIDER("friction"),
        SENSE("friction envelope"),
        CONTACT("contact");

        final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    Guards(FlatLaws laws, Regime regime, TaylorSeries series) {
        this.laws = laws;
        this.regime = regime;
        this.series = series;
        speedAt = laws.stageSlope.length;
        loadedAt = speedAt + laws.speedSlope.length;
        sliderAt = loadedAt + laws.ne;
        senseAt = sliderAt + 2 * laws.sliders();
        contactAt = senseAt + laws.ne;
        count = contactAt + 2 * laws.ne;
    }

    /** Number of guards, whether in force or not. */
    int count() {
        return count;
    }

    /** Crossings so far of each kind. */
    long crossings(Kind kind) {
        return switch (kind) {
            case STAGE -> stageCrossings;
            case SPEED -> speedCrossings;
            case LOAD -> loadCrossings;
            case SLIDER -> sliderCrossings;
            case SENSE -> senseCrossings;
            case CONTACT -> contactCrossings;
        };
    }

    /**
     * Coefficients of a guard.
     *
     * @param g overwritten up to the series' order
     * @return false if the guard is not in force in this regime
     */
    boolean polynomial(int guard, double[] g) {
        if (guard < speedAt) {
            int e = laws.stageElement[guard];
            int sign = regime.stageOn[guard] ? laws.stageSide[guard] : -laws.stageSide[guard];
            copy(series.c, laws.ne, e, sign, g);
            g[0] += -sign * laws.stageAt[guard] + FlatLaws.SLACK_COMPRESSION;
            return true;
        } else if (guard < loadedAt) {
            int p = guard - speedAt;
            int e = laws.speedElement[p];
            int sign = regime.speedOn[p] ? laws.speedSide[p] : -laws.speedSide[p];
            copy(series.speed, laws.ne, e, sign, g);
            g[0] += -sign * laws.speedAt[p] + FlatLaws.SLACK_SPEED;
            return true;
        } else if (guard < sliderAt) {
            int e = guard - loadedAt;
            if (laws.mu[e] == 0) {
                return false;
            }
            copy(series.elastic, laws.ne, e, regime.loaded[e] ? 1 : -1, g);
            g[0] += laws.slackForce[e];
            return true;
        } else if (guard < senseAt) {
            return slider((guard - sliderAt) / 2, (guard - sliderAt) % 2 == 0 ? 1 : -1, g);
        } else if (guard < contactAt) {
            int e = guard - senseAt;
            if (laws.envelope[e] == 0) {
                return false;
            }
            copy(series.speed, laws.ne, e, regime.sense[e], g);
            g[0] += FlatLaws.SLACK_SPEED;
            return true;
        }
        return contact((guard - contactAt) / 2, (guard - contactAt) % 2 == 0, g);
    }

    /** Locked: {@code S − s} above, {@code S + s} below. Sliding: {@code ±ċ}, told once. */
    private boolean slider(int j, int side, double[] g) {
        int e = laws.sliderElement[j];
        if (laws.envelope[e] > 0) {
            return false;
        }
        if (regime.slider[j] != Regime.LOCKED) {
            if (side < 0) {
                return false;
            }
            copy(series.speed, laws.ne, e, regime.slider[j], g);
            g[0] += FlatLaws.SLACK_SPEED;
            return true;
        }
        int ns = laws.sliders();
        double share = laws.sliderShare[j];
        double mu = regime.loaded[e] ? share * laws.mu[e] : 0;
        for (int k = 0; k <= series.order(); k++) {
            g[k] = mu * series.elastic[k * laws.ne + e] - side * series.s[k * ns + j];
        }
        g[0] += share * laws.constant[e] + laws.slackForce[e];
        return true;
    }

    /** Touching ends when the force or the compression vanishes; lifting and apart when either comes back. */
    private boolean contact(int e, boolean byForce, double[] g) {
        if (!laws.pushes[e]) {
            return false;
        }
        byte state = regime.contact[e];
        if (byForce) {
            if (state == Regime.APART) {
                return false;
            }
            int sign = state == Regime.TOUCHING ? 1 : -1;
            for (int k = 0; k <= series.order(); k++) {
                g[k] = sign * (series.elastic[k * laws.ne + e] + series.viscous[k * laws.ne + e]);
            }
            g[0] += laws.slackForce[e];
            return true;
        }
        copy(series.c, laws.ne, e, state == Regime.APART ? -1 : 1, g);
        g[0] += FlatLaws.SLACK_COMPRESSION;
        return true;
    }

    private void copy(double[] x, int width, int index, int sign, double[] g) {
        for (int k = 0; k <= series.order(); k++) {
            g[k] = sign * x[k * width + index];
        }
    }

    /**
     * Passes to the regime on the other side of a crossed guard.
     *
     * @param s friction states at the crossing; that of a slider that begins to slide is set to its limit at {@code elastic}
     * @param elastic f_e of each element at the crossing
     */
    void cross(int guard, double[] s, double[] elastic) {
        if (guard < speedAt) {
            regime.stageOn[guard] ^= true;
            regime.refresh(laws.stageElement[guard]);
            stageCrossings++;
        } else if (guard < loadedAt) {
            regime.speedOn[guard - speedAt] ^= true;
            regime.refresh(laws.speedElement[guard - speedAt]);
            speedCrossings++;
        } else if (guard < sliderAt) {
            regime.loaded[guard - loadedAt] ^= true;
            loadCrossings++;
        } else if (guard < senseAt) {
            int j = (guard - sliderAt) / 2;
            if (regime.slider[j] == Regime.LOCKED) {
                int side = (guard - sliderAt) % 2 == 0 ? 1 : -1;
                int e = laws.sliderElement[j];
                double limit = laws.constant[e] + (regime.loaded[e] ? laws.mu[e] * elastic[e] : 0);
                regime.slider[j] = (byte) side;
                s[j] = side * laws.sliderShare[j] * limit;
            } else {
                regime.slider[j] = Regime.LOCKED;
            }
            sliderCrossings++;
        } else if (guard < contactAt) {
            regime.sense[guard - senseAt] = (byte) -regime.sense[guard - senseAt];
            senseCrossings++;
        } else {
            int e = (guard - contactAt) / 2;
            boolean byForce = (guard - contactAt) % 2 == 0;
            regime.contact[e] = afterContact(regime.contact[e], byForce);
            contactCrossings++;
        }
    }

    private static byte afterContact(byte state, boolean byForce) {
        if (byForce) {
            return state == Regime.TOUCHING ? Regime.LIFTING : Regime.TOUCHING;
        }
        return state == Regime.APART ? Regime.TOUCHING : Regime.APART;
    }

    /** By how much a guard is raised above its zero, > 0. */
    double slack(int guard) {
        if (guard < speedAt) {
            return FlatLaws.SLACK_COMPRESSION;
        } else if (guard < loadedAt) {
            return FlatLaws.SLACK_SPEED;
        } else if (guard < sliderAt) {
            return laws.slackForce[guard - loadedAt];
        } else if (guard < senseAt) {
            int j = (guard - sliderAt) / 2;
            return regime.slider[j] == Regime.LOCKED ? laws.slackForce[laws.sliderElement[j]] : FlatLaws.SLACK_SPEED;
        } else if (guard < contactAt) {
            return FlatLaws.SLACK_SPEED;
        }
        int e = (guard - contactAt) / 2;
        return (guard - contactAt) % 2 == 0 ? laws.slackForce[e] : FlatLaws.SLACK_COMPRESSION;
    }

    /** Name of a guard for messages. */
    String describe(int guard) {
        if (guard < speedAt) {
            return Kind.STAGE.word + " of '" + laws.name(laws.stageElement[guard]) + "'";
        } else if (guard < loadedAt) {
            return Kind.SPEED.word + " of '" + laws.name(laws.speedElement[guard - speedAt]) + "'";
        } else if (guard < sliderAt) {
            return Kind.LOAD.word + " of '" + laws.name(guard - loadedAt) + "'";
        } else if (guard < senseAt) {
            return Kind.SLIDER.word + " of '" + laws.name(laws.sliderElement[(guard - sliderAt) / 2]) + "'";
        } else if (guard < contactAt) {
            return Kind.SENSE.word + " of '" + laws.name(guard - senseAt) + "'";
        }
        return Kind.CONTACT.word + " of '" + laws.name((guard - contactAt) / 2) + "'";
    }
}
