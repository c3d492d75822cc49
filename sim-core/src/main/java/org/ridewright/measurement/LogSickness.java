package org.ridewright.measurement;

import java.util.Comparator;
import java.util.Optional;
import org.ridewright.comfort.MotionSickness;
import org.ridewright.comfort.MotionSicknessMeter;
import org.ridewright.comfort.StartUp;
import org.ridewright.comfort.Weighting;
import org.ridewright.comfort.Window;
import org.ridewright.signal.Channel;
import org.ridewright.signal.FilterStream;

/**
 * Motion sickness dose of the longest piece of a log. Wf reaches down to 0.1 Hz and takes 13 s to settle; a piece that leaves less than a
 * minute after that says nothing.
 */
public final class LogSickness {
    private static final double SHORTEST = 60;

    private LogSickness() {}

    /** For an exposure as long as what was measured; empty where no piece is long enough. */
    public static Optional<MotionSickness> of(RecordedRide ride) {
        Piece longest = ride.pieces().stream()
                .max(Comparator.comparingDouble(p -> p.window().length()))
                .orElseThrow();
        Channel z = longest.vertical();
        double from = Math.max(longest.window().from(), z.start() + Weighting.WF.settlingTime());
        double to = Math.min(longest.window().to(), z.end() - FilterStream.DELAY / z.sampleRate());
        if (!(to - from >= SHORTEST)) {
            return Optional.empty();
        }
        Window window = new Window(from, to);
        MotionSicknessMeter meter = new MotionSicknessMeter(window, z.sampleRate(), z.start(), StartUp.AT_REST);
        for (int i = 0; i < z.size(); i++) {
            meter.accept(z.sample(i));
        }
        return Optional.of(meter.result(window.length()));
    }
}
