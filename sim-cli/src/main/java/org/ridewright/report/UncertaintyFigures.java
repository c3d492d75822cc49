package org.ridewright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.figure.AxisSpec;
import org.ridewright.figure.Figure;
import org.ridewright.figure.LineStyle;
import org.ridewright.figure.Panel;
import org.ridewright.figure.Series;
import org.ridewright.figure.Tone;
import org.ridewright.figure.Trace;
import org.ridewright.ride.RideResult;
import org.ridewright.signal.Channel;
import org.ridewright.uncertainty.TraceBand;
import org.ridewright.uncertainty.UncertainRide;

/** What the inputs' tolerances make of the traces: the ride as written between the lines that hold nine tenths of the draws. */
final class UncertaintyFigures {
    private static final double MILLI = 1000;
    /** Smallest motion that is drawn (m or rad). */
    private static final double LEAST_MOTION = 1e-9;

    private UncertaintyFigures() {}

    /** Acceleration at the place where it is greatest, and the body's motion; nothing of a ride without bands. */
    static Optional<Figure> of(UncertainRide uncertain) {
        RideResult ride = uncertain.ride();
        List<Felt> places = Felt.of(ride);
        List<Panel> panels = new ArrayList<>();
        if (!places.isEmpty()) {
            Felt worst = Felt.worst(places);
            worst.trace(ride)
                    .flatMap(trace -> panel(uncertain, trace, "Acceleration", "m/s²", 1, worst.name()))
                    .ifPresent(panels::add);
        }
        List<String> coordinates = ride.model().coordinates().names();
        for (int i = 0; i < coordinates.size(); i++) {
            boolean angle = ride.model().coordinates().units().get(i).equals("rad");
            String name = coordinates.get(i);
            if (name.startsWith("body ") && stirs(ride, name)) {
                ride.trace(name)
                        .flatMap(trace -> panel(
                                uncertain,
                                trace,
                                RideFigures.upperFirst(name),
                                angle ? "°" : "mm",
                                angle ? Math.toDegrees(1) : MILLI,
                                ""))
                        .ifPresent(panels::add);
            }
        }
        if (panels.isEmpty()) {
            return Optional.empty();
        }
        RideName name = RideName.of(ride);
        String caption =
                "%s: the ride with every value as written, and the lines between which nine tenths of %d rides lie at each instant, of vehicles drawn from the inputs' tolerances. Each line joins quantiles; no single ride follows it."
                        .formatted(RideFigures.upperFirst(name.words()), uncertain.draws());
        return Optional.of(Figure.stacked(
                name.slug() + "-uncertainty",
                "%s: how sure the traces are, %s".formatted(name.subject(), name.speed()),
                caption + TimeSlice.of(ride).said(),
                30 + 44.0 * panels.size(),
                panels.toArray(Panel[]::new)));
    }

    /** A motion far below what can be measured is round-off. */
    private static boolean stirs(RideResult ride, String coordinate) {
        return ride.trace(coordinate)
                .filter(trace -> Arrays.stream(trace.samples()).anyMatch(x -> Math.abs(x) > LEAST_MOTION))
                .isPresent();
    }

    private static Optional<Panel> panel(
            UncertainRide uncertain, Channel trace, String quantity, String unit, double factor, String title) {
        Optional<TraceBand> band = uncertain.bands().stream()
                .filter(b -> b.low().name().equals(trace.name() + ", 5 %"))
                .findFirst();
        TimeSlice slice = TimeSlice.of(uncertain.ride());
        return band.map(b -> slice.marked(
                Panel.of(
                        title,
                        slice.axis(),
                        AxisSpec.of(quantity, unit),
                        slice.line(0, "as written", trace, factor),
                        line(slice, "95 %", b.high(), factor, Tone.RUST),
                        line(slice, "5 %", b.low(), factor, Tone.TEAL)),
                uncertain.ride()));
    }

    private static Series line(TimeSlice slice, String name, Channel channel, double factor, Tone tone) {
        LineStyle style = tone == Tone.RUST ? LineStyle.DASH : LineStyle.DOT;
        return new Series(name, slice.times(channel), slice.values(channel, factor), style, tone, Trace.LINE);
    }
}
