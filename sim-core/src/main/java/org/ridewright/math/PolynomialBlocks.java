package org.ridewright.math;

/**
 * A piecewise polynomial handed over in blocks that follow one another, so that a long one need never be held whole.
 *
 * <p>Block 0 holds from −∞ to its last joint, block i from the last joint of block i − 1 to its own, the last block without end. A
 * single {@link PiecewisePolynomial} is one block. Asking twice gives the same numbers.
 */
public interface PolynomialBlocks {
    /**
     * Block i.
     *
     * @throws IndexOutOfBoundsException if i is negative or past the last block
     */
    PiecewisePolynomial block(int i);

    /** Whether block i is the last. */
    boolean isLast(int i);
}
