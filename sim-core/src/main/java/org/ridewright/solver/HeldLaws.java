package org.ridewright.solver;

/**
 * The laws of the present regime, as straight as they are: {@code f = constant + stiffness·c + damping·ċ}, to which elements with gas or
 * an envelope add a curved part. A locked slider is a spring of rate k_p about its anchor {@code s − k_p c}; one that slides follows f_l, which is f_e without the stops.
 *
 * <p>Every guard is {@code constant + byElastic·f_e + byCompression·c + bySpeed·ċ}, positive while its regime holds; for straight laws
 * f_e is written out in c. From these follow, for each element, the range of c and of ċ within which none of its guards can be crossed.
 */
final class HeldLaws {
    private final FlatLaws laws;
    private final GuardTable table;
    private final Regime regime;

    /** Constant part of each element's force (N). */
    final double[] constant;
    /** Its rate, locked sliders included (N/m). */
    final double[] stiffness;
    /** N·s/m. */
    final double[] damping;
    /** Factor of f_e in the force of a curved element: one and its sliders' share of friction. */
    final double[] elasticFactor;
    /** Of each slider, {@code s − k_p c} since it locked (N). */
    final double[] anchor;

    /** Of each guard, in N, m or m/s as its kind has it; so are its factors of f_e, c and ċ, and its round-off. */
    final double[] guardConstant;

    final double[] guardByElastic;
    final double[] guardByCompression;
    final double[] guardBySpeed;
    final double[] guardSlack;
    final boolean[] watched;

    /** Range of c within which no guard of the element is crossed, whatever ċ does. */
    final double[] lowestCompression;

    final double[] highestCompression;
    final double[] lowestSpeed;
    final double[] highestSpeed;
    /** The guard of each element that depends on both c and ċ, {@code constant + byC·c + byĊ·ċ}; constant +∞ where there is none. */
    final double[] mixedConstant;

    final double[] mixedByCompression;
    final double[] mixedBySpeed;

    HeldLaws(FlatLaws laws, GuardTable table, Regime regime) {
        this.laws = laws;
        this.table = table;
        this.regime = regime;
        int ne = laws.ne;
        constant = new double[ne];
        stiffness = new double[ne];
        damping = new double[ne];
        elasticFactor = new double[ne];
        anchor = new double[laws.sliders()];
        guardConstant = new double[table.count];
        guardByElastic = new double[table.count];
        guardByCompression = new double[table.count];
        guardBySpeed = new double[table.count];
        guardSlack = new double[table.count];
        watched = new boolean[table.count];
        lowestCompression = new double[ne];
        highestCompression = new double[ne];
        lowestSpeed = new double[ne];
        highestSpeed = new double[ne];
        mixedConstant = new double[ne];
        mixedByCompression = new double[ne];
        mixedBySpeed = new double[ne];
    }

    /** Anchors slider j at friction force s and compression c. */
    void lock(int j, double s, double c) {
        anchor[j] = s - laws.sliderRate[j] * c;
    }

    /** Works out everything of element e anew after its regime has changed. */
    void refresh(int e) {
        refreshForce(e);
        for (int g = table.from[e]; g < table.from[e + 1]; g++) {
            watched[g] = regime.isWatched(g);
            if (watched[g]) {
                refreshGuard(g, e);
            }
        }
        refreshRanges(e);
    }

    private void refreshForce(int e) {
        double factor = 1;
        double offset = regime.dampingOffset[e];
        double rate = 0;
        if (laws.envelope[e] == 0) {
            for (int j = laws.sliderFrom[e]; j < laws.sliderFrom[e + 1]; j++) {
                if (regime.slider[j] == Regime.LOCKED) {
                    offset += anchor[j];
                    rate += laws.sliderRate[j];
                } else {
                    double share = regime.slider[j] * laws.sliderShare[j];
                    offset += share * laws.constant[e];
                    factor += regime.loaded[e] ? share * laws.mu[e] : 0;
                }
            }
        }
        elasticFactor[e] = factor;
        offset -= (factor - 1) * regime.stopOffset[e];
        rate -= (factor - 1) * regime.stopRate[e];
        boolean acts = regime.acts(e);
        if (!acts || laws.curved[e]) {
            constant[e] = acts ? offset : 0;
            stiffness[e] = acts ? rate : 0;
        } else {
            constant[e] = offset + factor * regime.elasticOffset[e];
            stiffness[e] = rate + factor * regime.elasticRate[e];
        }
        damping[e] = acts ? regime.dampingRate[e] : 0;
    }

    private void refreshGuard(int g, int e) {
        int part = table.part[g];
        switch (table.kind[g]) {
            case STAGE -> {
                int sign = regime.stageOn[part] ? laws.stageSide[part] : -laws.stageSide[part];
                guard(g, e, -sign * laws.stageAt[part], 0, sign, 0, FlatLaws.SLACK_COMPRESSION);
            }
            case SPEED -> {
                int sign = regime.speedOn[part] ? laws.speedSide[part] : -laws.speedSide[part];
                guard(g, e, -sign * laws.speedAt[part], 0, 0, sign, FlatLaws.SLACK_SPEED);
            }
            case LOAD -> {
                int sign = regime.loaded[e] ? 1 : -1;
                guard(g, e, -sign * regime.stopOffset[e], sign, -sign * regime.stopRate[e], 0, laws.slackForce[e]);
            }
            case SLIDER -> refreshSliderGuard(g, e, part);
            case SENSE -> guard(g, e, 0, 0, 0, regime.sense[e], FlatLaws.SLACK_SPEED);
            case CONTACT_FORCE -> {
                int sign = regime.contact[e] == Regime.TOUCHING ? 1 : -1;
                guard(g, e, sign * regime.dampingOffset[e], sign, 0, sign * regime.dampingRate[e], laws.slackForce[e]);
            }
            case CONTACT_GAP ->
                guard(g, e, 0, 0, regime.contact[e] == Regime.APART ? -1 : 1, 0, FlatLaws.SLACK_COMPRESSION);
        }
    }

    /** Locked: {@code S − s} above, {@code S + s} below. Sliding: {@code ±ċ}. */
    private void refreshSliderGuard(int g, int e, int j) {
        if (regime.slider[j] != Regime.LOCKED) {
            guard(g, e, 0, 0, 0, regime.slider[j], FlatLaws.SLACK_SPEED);
            return;
        }
        int side = table.side[g];
        double share = laws.sliderShare[j];
        double byLeaves = regime.loaded[e] ? share * laws.mu[e] : 0;
        guard(
                g,
                e,
                share * laws.constant[e] - side * anchor[j] - byLeaves * regime.stopOffset[e],
                byLeaves,
                -side * laws.sliderRate[j] - byLeaves * regime.stopRate[e],
                0,
                laws.slackForce[e]);
    }

    private void guard(
            int g, int e, double offset, double byElastic, double byCompression, double bySpeed, double slack) {
        guardConstant[g] = offset;
        guardByElastic[g] = byElastic;
        guardByCompression[g] = byCompression;
        guardBySpeed[g] = bySpeed;
        guardSlack[g] = slack;
        if (!laws.curved[e]) {
            guardConstant[g] += byElastic * regime.elasticOffset[e];
            guardByCompression[g] += byElastic * regime.elasticRate[e];
            guardByElastic[g] = 0;
        }
    }

    private void refreshRanges(int e) {
        lowestCompression[e] = Double.NEGATIVE_INFINITY;
        highestCompression[e] = Double.POSITIVE_INFINITY;
        lowestSpeed[e] = Double.NEGATIVE_INFINITY;
        highestSpeed[e] = Double.POSITIVE_INFINITY;
        mixedConstant[e] = Double.POSITIVE_INFINITY;
        mixedByCompression[e] = 0;
        mixedBySpeed[e] = 0;
        if (laws.curved[e]) {
            // Always looked at closely: f_e is not read off c alone.
            lowestSpeed[e] = Double.POSITIVE_INFINITY;
            return;
        }
        for (int g = table.from[e]; g < table.from[e + 1]; g++) {
            if (watched[g]) {
                narrow(g, e);
            }
        }
    }

    private void narrow(int g, int e) {
        double byC = guardByCompression[g];
        double byV = guardBySpeed[g];
        if (byC != 0 && byV != 0) {
            mixedConstant[e] = guardConstant[g];
            mixedByCompression[e] = byC;
            mixedBySpeed[e] = byV;
        } else if (byC > 0) {
            lowestCompression[e] = Math.max(lowestCompression[e], -guardConstant[g] / byC);
        } else if (byC < 0) {
            highestCompression[e] = Math.min(highestCompression[e], -guardConstant[g] / byC);
        } else if (byV > 0) {
            lowestSpeed[e] = Math.max(lowestSpeed[e], -guardConstant[g] / byV);
        } else if (byV < 0) {
            highestSpeed[e] = Math.min(highestSpeed[e], -guardConstant[g] / byV);
        } else if (guardConstant[g] + guardSlack[g] < 0) {
            lowestSpeed[e] = Double.POSITIVE_INFINITY;
        }
    }
}
