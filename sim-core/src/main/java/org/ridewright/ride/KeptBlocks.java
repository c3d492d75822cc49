package org.ridewright.ride;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.math.PolynomialBlocks;

/** Blocks that are kept once they were asked for, for rides that follow the same path one after another. Belongs to one thread. */
final class KeptBlocks implements PolynomialBlocks {
    private final PolynomialBlocks source;
    private final List<PiecewisePolynomial> kept = new ArrayList<>();

    KeptBlocks(PolynomialBlocks source) {
        this.source = source;
    }

    @Override
    public PiecewisePolynomial block(int i) {
        while (kept.size() <= i) {
            kept.add(source.block(kept.size()));
        }
        return kept.get(i);
    }

    @Override
    public boolean isLast(int i) {
        return source.isLast(i);
    }
}
