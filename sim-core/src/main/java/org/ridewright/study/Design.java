package org.ridewright.study;

/** Points of the unit cube at which a function is to be known; each worked out from its number alone. Belongs to one thread. */
public interface Design {
    /** No points. */
    Design NONE = new Design() {
        @Override
        public long size() {
            return 0;
        }

        @Override
        public double[] point(long i) {
            throw new IllegalArgumentException("there is no point, got " + i);
        }
    };

    /** How many. */
    long size();

    /** Point {@code i}, from 0; a new array. */
    double[] point(long i);
}
