package org.ridewright.bounce;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person with a stopwatch makes of one motion after it was let go. The first turning point is the letting go; a swing runs from
 * one turning point to the next and is half a cycle. It counts while the motion goes at least {@code visible} to either side, that is while
 * the swing is at least {@code 2 visible}; the count ends for good where nothing visible happens for longer than
 * {@link VisibleTurns#PATIENCE} half cycles.
 *
 * <p>Once friction holds every spring the body may go on trembling at the locked rate, where hardly anything damps it in a model whose friction
 * has one slider; real springs slide leaf by leaf. That is no more part of the count: {@code visible} is then at least half as large again as the tremor, which {@code left} tells, unless even the first
 * swing is no larger.
 *
 * <p>With turning points x_0 … x_n at t_0 … t_n the ride frequency is {@code n / (2 (t_n − t_0))}.
 *
 * @param visible least motion to either side that counts (m or rad)
 * @param turningPoints x_0 … x_n, n ≥ 0
 * @param next the turning point after the last counted, of a swing too small to be seen; at the last counted one where the motion stops there
 * @param offset where the motion comes to rest, from where it was at rest before (m or rad); friction leaves it there
 * @param left what still moves when the count is over
 * @param seen every turning point that an onlooker sees as far as the run goes, those on held springs included; begins as {@code turningPoints}
 */
public record Count(
        Motion motion,
        double visible,
        List<TurningPoint> turningPoints,
        TurningPoint next,
        double offset,
        Tremor left,
        List<TurningPoint> seen) {
    public Count {
        turningPoints = List.copyOf(turningPoints);
        seen = List.copyOf(seen);
    }

    /** Number of visible half cycles n; 0 where friction holds the body down, or it creeps back out of sight. */
    public int halfCycles() {
        return turningPoints.size() - 1;
    }

    /** Counted cycles, halves included. */
    public double cycles() {
        return halfCycles() / 2.0;
    }

    /** Whether all that is counted are swings on springs that friction holds: even the first is no wider than they are. */
    public boolean isOnHeldSprings() {
        return !isHeld() && left.held() && left.visible() && visible < Tremor.ALIKE * left.halfWidth();
    }

    /** Turning points of the swings before friction holds every spring; the letting go alone where there are none. */
    public List<TurningPoint> slidingTurns() {
        return isOnHeldSprings() ? turningPoints.subList(0, 1) : turningPoints;
    }

    /** Cycles before friction holds every spring, halves included: the swings on held springs are no part of them. */
    public double slidingCycles() {
        return (slidingTurns().size() - 1) / 2.0;
    }

    /** Every cycle that is seen as far as the run goes, those on held springs included. */
    public double cyclesSeen() {
        return (seen.size() - 1) / 2.0;
    }

    /** Whether the body did not swing visibly: it stayed, or crept. */
    public boolean isHeld() {
        return halfCycles() == 0;
    }

    /** Time from letting go to the last turning point that is seen (s). */
    public double duration() {
        return turningPoints.get(halfCycles()).time() - turningPoints.get(0).time();
    }

    /** Ride frequency, counted cycles over their time (Hz); none where nothing is counted. */
    public OptionalDouble frequency() {
        return between(0, halfCycles());
    }

    /** Frequency of the first cycle (Hz), of the first half where there is no more. */
    public OptionalDouble firstFrequency() {
        return between(0, Math.min(2, halfCycles()));
    }

    /** Frequency of the last cycle (Hz), of the last half where there is no more. */
    public OptionalDouble lastFrequency() {
        return between(Math.max(0, halfCycles() - 2), halfCycles());
    }

    private OptionalDouble between(int from, int to) {
        return to == from
                ? OptionalDouble.empty()
                : OptionalDouble.of((to - from)
                        / 2.0
                        / (turningPoints.get(to).time()
                                - turningPoints.get(from).time()));
    }

    /** Swing from turning point j to the next (m or rad), j < n. */
    public double swing(int j) {
        return Math.abs(turningPoints.get(j + 1).value() - turningPoints.get(j).value());
    }

    /** All visible swings (m or rad). */
    public List<Double> swings() {
        List<Double> swings = new ArrayList<>();
        for (int j = 0; j < halfCycles(); j++) {
            swings.add(swing(j));
        }
        return List.copyOf(swings);
    }

    /** How the swings get smaller; none of fewer than three. */
    public Optional<Decay> decay() {
        return Decay.of(swings());
    }

    /**
     * Share of the half cycle after the last counted one, from 0 to 1: 0 where the last counted swing is just visible, 1 where the next just
     * fails to be. With it count and frequency change smoothly when a figure of the vehicle does.
     */
    private double share() {
        double least = 2 * visible;
        double last = isHeld() ? 0 : swing(halfCycles() - 1);
        double after = Math.abs(next.value() - turningPoints.get(halfCycles()).value());
        if (isHeld()) {
            return Math.min(1, after / least);
        }
        return Math.min(1, Math.max(0, (last - least) / (last - Math.min(after, least))));
    }

    /**
     * Cycles until the motion is no more seen, as a number that changes smoothly with the vehicle: the counted ones and the share
     * {@code (s_n − 2 visible)/(s_n − s_{n+1})} of the half cycle after them. For fitting.
     */
    public double smoothCycles() {
        return (halfCycles() + share()) / 2;
    }

    /**
     * Ride frequency that changes smoothly with the vehicle (Hz), for fitting: {@link #smoothCycles} over the time that they take, the last share
     * of the half cycle at its own length, or, where the motion stops, at that of the one before. Where few cycles are counted and the last,
     * small one is quicker than the others, it lies between the frequency with it and that without. None where nothing is counted.
     */
    public OptionalDouble smoothFrequency() {
        int n = halfCycles();
        if (n == 0) {
            return OptionalDouble.empty();
        }
        double t = turningPoints.get(n).time();
        double after =
                next.time() > t ? next.time() - t : t - turningPoints.get(n - 1).time();
        return OptionalDouble.of(smoothCycles() / (duration() + share() * after));
    }
}
