package org.ridewright.road;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;

/** What covers a stretch of road. Heights are above the level road (m); surfaces and obstacles all add up. */
public sealed interface Surface {
    /** Where it lies. */
    Stretch stretch();

    /**
     * A stretch of road.
     *
     * @param from station where it begins (m); absent: {@link Road#START}
     * @param to station where it ends (m); absent: it goes on for good
     */
    record Stretch(Optional<Measure> from, Optional<Measure> to) {
        /** The whole road. */
        public static final Stretch ALL = new Stretch(Optional.empty(), Optional.empty());

        /** Where it begins (m). */
        public double begin() {
            return from.map(Measure::value).orElse(Road.START);
        }

        /** Where it ends (m); +∞ where it does not. */
        public double end() {
            return to.map(Measure::value).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /**
     * A random surface of a given spectrum, Gaussian and stationary but for its run-up.
     *
     * @param coherence from track to track
     * @param seed which of all such surfaces
     */
    record Spectral(Stretch stretch, RoughnessSpectrum spectrum, Coherence coherence, long seed) implements Surface {}

    /**
     * Corrugation square across the road, from the level down: {@code −h/2 (1 − cos 2πs/p)} from one crest to the next.
     *
     * @param pitch mean distance p from crest to crest (m), > 0
     * @param height h from trough to crest (m), > 0
     * @param drift standard deviation of a pitch over the mean pitch, 0 to 0.3: how soon the crests get out of step
     * @param seed of the drift
     */
    record Washboard(Stretch stretch, Measure pitch, Measure height, Measure drift, long seed) implements Surface {}

    /**
     * Setts, or larger cobbles, in rows square across the road, broken joint from row to row. The crowns of the stones lie level with the
     * road before them.
     *
     * @param length of a stone along the road with its joint, on the average (m), > 0
     * @param width of a stone across the road with its joint (m), > 0
     * @param crown how far the middle of a stone stands above its ends (m), ≥ 0; along the road a parabola
     * @param joint clear width of a joint (m), ≥ 0
     * @param jointDepth of its bottom below the ends of the stones (m), ≥ 0
     * @param unevenness standard deviation of the stones' heights (m), ≥ 0
     * @param irregularity standard deviation of the rows' lengths over their mean, 0 to 0.3
     * @param seed of heights and lengths
     */
    record Setts(
            Stretch stretch,
            Measure length,
            Measure width,
            Measure crown,
            Measure joint,
            Measure jointDepth,
            Measure unevenness,
            Measure irregularity,
            long seed)
            implements Surface {}

    /**
     * Two ruts, across the road {@code cos²} in shape, whose depths vary along it by themselves.
     *
     * @param depth mean depth (m), > 0
     * @param width of each at the top (m), > 0
     * @param apart distance of their middles, which lie evenly about the centre line (m), > 0
     * @param variation standard deviation of the depth over its mean, ≥ 0; no rut is less than 0 deep
     * @param length along the road from one chosen depth to the next (m), > 0
     * @param seed of the depths
     */
    record Ruts(
            Stretch stretch, Measure depth, Measure width, Measure apart, Measure variation, Measure length, long seed)
            implements Surface {}

    /**
     * Undulation whose right side lags behind its left: with a lag of half a turn the road twists about its centre line. At the left edge
     * {@code h/2 sin 2πs/L}, at the right {@code h/2 sin(2πs/L − lag)}, straight across between them and beyond. It grows over its first
     * wave, and fades over its last.
     *
     * @param height h from trough to crest at the edges (m), > 0
     * @param length L of a wave (m), > 0
     * @param across distance of the two edges (m), > 0
     * @param lag (rad)
     */
    record Twist(Stretch stretch, Measure height, Measure length, Measure across, Measure lag) implements Surface {}

    /**
     * Slabs with joints between them, as of a bridge deck or a concrete road: the far end of each slab stands proud of the next one.
     *
     * @param every distance from joint to joint (m), > 0
     * @param gap clear width of a joint (m), ≥ 0
     * @param depth of its bottom below the level (m), ≥ 0
     * @param lip height of a slab's far end above its near end, which is level (m), ≥ 0
     * @param sag how far its middle lies below the straight line between its ends (m), any sign
     * @param skew angle of the joints to the square across the road (rad); positive: the left wheel meets them later
     */
    record Joints(Stretch stretch, Measure every, Measure gap, Measure depth, Measure lip, Measure sag, Measure skew)
            implements Surface {}

    /**
     * Loose stones at random, each a rounded lump (a paraboloid) that a wheel meets where its line crosses it. Where two overlap, their
     * heights add up.
     *
     * @param perMetre mean number in each metre of the strip, > 0
     * @param strip width over which they are scattered, evenly about the centre line (m), > 0
     * @param size median width of a stone (m), > 0
     * @param spread ratio of the size that 84 % of stones do not exceed to the median, ≥ 1; sizes are log-normal, cut at its square
     * @param proud height of a stone above the ground over its width, > 0
     * @param seed of places and sizes
     */
    record Stones(
            Stretch stretch, Measure perMetre, Measure strip, Measure size, Measure spread, Measure proud, long seed)
            implements Surface {
        /** Width of the largest (m). */
        public double largest() {
            return size.value() * spread.value() * spread.value();
        }
    }

    /**
     * A profile as it was measured. Wheels left of the centre line run on its left track, those right of it on the right one, those on it
     * on the mean of the two; a single track serves all. Its first station comes to lie where the stretch begins.
     *
     * @param stretch its end, if given, cuts the profile short
     * @param spikesRemoved whether points that stand far off all around them are left out
     * @param spacing even spacing for which it is smoothed and sampled anew (m); absent: its own points
     */
    record Measured(
            Stretch stretch, MeasuredProfile profile, Trend trend, boolean spikesRemoved, Optional<Measure> spacing)
            implements Surface {
        /** What is taken off the heights. */
        public sealed interface Trend {}

        /** The first height alone. */
        public record AsMeasured() implements Trend {}

        /** The straight line that fits best. */
        public record Detrended() implements Trend {}

        /** A Gaussian mean line; waves of this length keep half of their height (m). */
        public record HighPass(Measure length) implements Trend {}

        /** What is to be said of gaps, spikes and a road that does not end at its own level. */
        public List<String> remarks() {
            return MeasuredSurface.remarks(this);
        }
    }
}
