package org.ridewright.ringdown;

import java.util.List;
import java.util.Locale;
import org.ridewright.measurement.LogAxis;
import org.ridewright.measurement.RecordedMotion;

/**
 * A log as ring-downs are looked for in it: at the instants at which it was logged, with the places that are not to be trusted.
 *
 * @param stretches unbroken, in order of time
 * @param flaws where a column stands at the end of its range
 */
public record LoggedBounce(List<Stretch> stretches, List<RingDowns.Flaw> flaws) {
    public LoggedBounce {
        stretches = List.copyOf(stretches);
        flaws = List.copyOf(flaws);
    }

    /** One axis of a log, which must hold it. */
    public static LoggedBounce of(RecordedMotion recorded, LogAxis axis) {
        return new LoggedBounce(
                recorded.runs().stream()
                        .map(run -> new Stretch(run.times(), run.values().get(axis)))
                        .toList(),
                recorded.clips().stream().map(LoggedBounce::flaw).toList());
    }

    private static RingDowns.Flaw flaw(RecordedMotion.ClippedTime clip) {
        return new RingDowns.Flaw(
                clip.from(),
                clip.to(),
                String.format(
                        Locale.ROOT,
                        "column '%s' is clipped in its decay, from line %d (%.2f s) on",
                        clip.column(),
                        clip.line(),
                        clip.from()));
    }
}
