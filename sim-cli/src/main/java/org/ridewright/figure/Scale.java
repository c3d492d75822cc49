package org.ridewright.figure;

/**
 * From where to where an axis runs.
 *
 * @param min value at its lower or left end
 * @param max value at its upper or right end, above min
 * @param log whether equal ratios take equal lengths; min is then above zero
 */
record Scale(double min, double max, boolean log) {

    /**
     * Place of a value along the axis.
     *
     * @param value in the unit of the axis
     * @return 0 at the lower end, 1 at the upper; outside for values outside
     */
    double share(double value) {
        return log
                ? (Math.log10(value) - Math.log10(min)) / (Math.log10(max) - Math.log10(min))
                : (value - min) / (max - min);
    }

    boolean holds(double value) {
        return value >= min && value <= max;
    }

    double span() {
        return max - min;
    }

    /**
     * The same middle with another span.
     *
     * @param wanted max − min
     * @return the linear scale
     */
    Scale withSpan(double wanted) {
        double middle = 0.5 * (min + max);
        return new Scale(middle - 0.5 * wanted, middle + 0.5 * wanted, false);
    }

    /**
     * The least scale that holds both.
     *
     * @param other of the same kind
     * @return the joint scale
     */
    Scale union(Scale other) {
        return new Scale(Math.min(min, other.min), Math.max(max, other.max), log);
    }
}
