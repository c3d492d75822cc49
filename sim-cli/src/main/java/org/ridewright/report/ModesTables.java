package org.ridewright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ridewright.modal.Condition;
import org.ridewright.modal.ModalAnalysis;
import org.ridewright.modal.Mode;
import org.ridewright.modal.Motion;
import org.ridewright.modal.Participation;

/** Tables and sentences of modes, for page and terminal. */
public final class ModesTables {
    private static final String NONE = "–";
    private static final double LEAST_SHARE = 0.05;
    /** Farther off than this a centre of oscillation says only that the body hardly pitches (m). */
    private static final double FAR = 50;

    private ModesTables() {}

    /** Heads of {@link #rows}, with units. */
    public static final List<String> HEADS = List.of(
            "No.",
            "Mode",
            "Natural frequency (Hz)",
            "Damped (Hz)",
            "Damping ratio (%)",
            "Centre behind front axle (m)",
            "What moves, by kinetic energy");

    /** One row for each mode. */
    public static List<List<String>> rows(ModalAnalysis analysis, Condition condition) {
        List<List<String>> rows = new ArrayList<>();
        for (Mode mode : analysis.modes(condition).modes()) {
            rows.add(List.of(
                    String.valueOf(rows.size() + 1),
                    mode.name(),
                    mode.free() ? "0" : Numbers.of(mode.frequency()),
                    mode.free()
                            ? NONE
                            : mode.damped().map(d -> Numbers.of(d.frequency())).orElse("does not swing"),
                    mode.damped().map(d -> Numbers.fixed(100 * d.ratio(), 1)).orElse(NONE),
                    centre(analysis, mode),
                    shares(mode)));
        }
        return rows;
    }

    static String frequency(Mode mode) {
        return mode.free() ? "free" : Numbers.of(mode.frequency()) + " Hz";
    }

    private static String centre(ModalAnalysis analysis, Mode mode) {
        if (mode.centreBehindMass().isEmpty() || !mode.motion().ofBody()) {
            return NONE;
        }
        double behindMass = mode.centreBehindMass().getAsDouble();
        double at = analysis.model().centreOfMass().behindFrontAxle().value() + behindMass;
        return Math.abs(behindMass) > FAR ? "far off" : Numbers.fixed(at, 2);
    }

    private static String shares(Mode mode) {
        return mode.participations().stream()
                .filter(p -> p.share() >= LEAST_SHARE)
                .map((Participation p) -> p.name() + " " + Numbers.fixed(100 * p.share(), 0) + " %")
                .collect(Collectors.joining(", "));
    }

    /** A sentence for each load case; modes go by their names in the tables. */
    static List<String> answers(List<ModalAnalysis> all) {
        return all.stream().map(ModesTables::answer).toList();
    }

    private static String answer(ModalAnalysis analysis) {
        List<String> parts = new ArrayList<>();
        for (Motion motion : List.of(Motion.BOUNCE, Motion.PITCH, Motion.ROLL)) {
            Optional<Mode> sliding = analysis.sliding().chief(motion);
            Optional<Mode> locked = analysis.locked().chief(motion);
            if (sliding.isPresent() && locked.isPresent() && analysis.rubs()) {
                String held = locked.get().name();
                parts.add("“%s” %s Hz while its springs slide and %s%s Hz while friction holds them"
                        .formatted(
                                sliding.get().name(),
                                Numbers.of(sliding.get().frequency()),
                                held.equals(sliding.get().name()) ? "" : "“" + held + "” ",
                                Numbers.of(locked.get().frequency())));
            } else if (sliding.isPresent()) {
                parts.add("“%s” %s Hz"
                        .formatted(
                                sliding.get().name(), Numbers.of(sliding.get().frequency())));
            }
        }
        return RideFigures.upperFirst(analysis.model().loadCase().name()) + ": " + String.join("; ", parts) + ".";
    }
}
