package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.solver.Step;

/** A weighted sum of coordinates, their speeds and accelerations, compressions and forces, plus a constant. */
final class LinearReadOff implements ReadOff {
    private final String name;
    private final String unit;
    private final double constant;
    private final List<Term> terms;

    private LinearReadOff(String name, String unit, double constant, List<Term> terms) {
        this.name = name;
        this.unit = unit;
        this.constant = constant;
        this.terms = List.copyOf(terms);
    }

    /** What a term is taken from. */
    enum Source {
        DISPLACEMENT,
        VELOCITY,
        ACCELERATION,
        COMPRESSION,
        FORCE,
        FRICTION,
        HEIGHT,
        HEIGHT_SPEED
    }

    private record Term(Source source, int index, double factor) {}

    static Builder named(String name, String unit) {
        return new Builder(name, unit);
    }

    /** Collects terms. */
    static final class Builder {
        private final String name;
        private final String unit;
        private final List<Term> terms = new ArrayList<>();
        private double constant;

        private Builder(String name, String unit) {
            this.name = name;
            this.unit = unit;
        }

        Builder plus(Source source, int index, double factor) {
            if (factor != 0) {
                terms.add(new Term(source, index, factor));
            }
            return this;
        }

        Builder plusRow(Source source, double[] row) {
            for (int i = 0; i < row.length; i++) {
                plus(source, i, row[i]);
            }
            return this;
        }

        /** A row on displacements from rest. */
        Builder plusRowFromRest(double[] row, double[] rest) {
            plusRow(Source.DISPLACEMENT, row);
            for (int i = 0; i < row.length; i++) {
                constant -= row[i] * rest[i];
            }
            return this;
        }

        Builder less(double value) {
            constant -= value;
            return this;
        }

        LinearReadOff build() {
            return new LinearReadOff(name, unit, constant, terms);
        }
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String unit() {
        return unit;
    }

    @Override
    public int polynomial(Step step, double[] out) {
        out[0] += constant;
        for (int i = 0; i < terms.size(); i++) {
            Term term = terms.get(i);
            switch (term.source()) {
                case DISPLACEMENT -> step.addDisplacement(term.index(), term.factor(), out);
                case VELOCITY -> step.addVelocity(term.index(), term.factor(), out);
                case ACCELERATION -> step.addAcceleration(term.index(), term.factor(), out);
                case COMPRESSION -> step.addCompression(term.index(), term.factor(), out);
                case FORCE -> step.addForce(term.index(), term.factor(), out);
                case FRICTION -> step.addFriction(term.index(), term.factor(), out);
                case HEIGHT -> step.addHeight(term.index(), term.factor(), out);
                case HEIGHT_SPEED -> step.addHeightSpeed(term.index(), term.factor(), out);
            }
        }
        return step.degree();
    }
}
