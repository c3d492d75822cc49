package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.Surface;
import org.ridewright.road.Track;

/**
 * How a road is surveyed.
 *
 * @param halfTrack distance of each track from the centre line (m), ≥ 0; one track where 0
 * @param spacing of the heights (m), &gt; 0; absent: that of a measured profile, and {@link #USUAL_SPACING} for anything else
 * @param length of a road that does not end (m), &gt; 0; of others, at most so much is looked at if it is given
 * @param wheels whose paths are wanted
 */
public record RoadSurvey(
        double halfTrack, Optional<Double> spacing, Optional<Double> length, List<SampledWheel> wheels) {
    /**
     * Wheels of old and new vehicles: a small pneumatic one, and rigid ones from the barrow's to the coach's. The footprint is a quarter of
     * the diameter (common practice).
     */
    public static final List<SampledWheel> USUAL_WHEELS = List.of(
            new SampledWheel.Pneumatic(0.4, 0.1),
            new SampledWheel.Disc(0.4),
            new SampledWheel.Disc(0.6),
            new SampledWheel.Disc(0.9),
            new SampledWheel.Disc(1.2),
            new SampledWheel.Disc(1.5));

    /** Spacing unless stated (m): ten heights on the shortest wave that is looked at are more than enough. */
    public static final double USUAL_SPACING = 0.01;

    /** Half the distance of two tracks unless stated (m): common practice. */
    public static final double USUAL_HALF_TRACK = 0.75;

    /** Length of an endless road that is looked at unless stated (m). */
    public static final double USUAL_LENGTH = 1000;

    private static final long MOST_HEIGHTS = 1L << 33;

    /** Level road looked at before the first obstacle and behind the last (m): enough to show waves of 5 m. */
    private static final double ROOM = 10;

    /** Share of a stretch that must be left when its growing and fading ends are cut off; else they are kept. */
    private static final double LEAST_LEFT = 0.2;

    /** Heights this much nearer to one another than they were measured are told of. */
    private static final double NEARER = 0.9;

    public RoadSurvey {
        wheels = List.copyOf(wheels);
        if (!(halfTrack >= 0) || Double.isInfinite(halfTrack)) {
            throw new IllegalArgumentException("half of the track must be ≥ 0 m, got " + halfTrack + " m");
        }
        spacing.ifPresent(value -> requirePositive("spacing of heights", value));
        length.ifPresent(value -> requirePositive("length of road", value));
    }

    private static void requirePositive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be > 0 m, got " + value + " m");
        }
    }

    /**
     * Surveys a road; where random surfaces grow and fade away is left out. Tracks that are alike are told as one.
     *
     * @return nothing if the road is level throughout
     */
    public Optional<SurveyedRoad> of(Road road, String source) {
        double[] ys = halfTrack > 0 ? new double[] {halfTrack, -halfTrack} : new double[] {0};
        List<Track> tracks = RoadTracks.of(road, ys);
        double step = spacing.orElseGet(() -> measuredSpacing(road).orElse(USUAL_SPACING));
        Span span = span(road, tracks, step);
        if (!(span.from < span.to)) {
            return Optional.empty();
        }
        long size = 1 + (long) Math.floor((span.to - span.from) / step * (1 + 1e-12));
        if (size > MOST_HEIGHTS) {
            throw new IllegalArgumentException("a survey takes at most " + MOST_HEIGHTS + " heights, got " + size + ": "
                    + (span.to - span.from) + " m at every " + step + " m");
        }
        List<SurveyedRoad.SurveyedTrack> found = new ArrayList<>();
        for (Track track : tracks) {
            String name = track.y() > 0 ? "left track" : track.y() < 0 ? "right track" : "centre line";
            found.add(new SurveyedRoad.SurveyedTrack(
                    name, TrackSurvey.of(new TrackHeights(track, span.from, step, size), wheels)));
        }
        if (found.size() == 2 && alike(found.get(0).roughness(), found.get(1).roughness())) {
            found = List.of(
                    new SurveyedRoad.SurveyedTrack("either track", found.get(0).roughness()));
        }
        return Optional.of(new SurveyedRoad(road.name(), source, notes(road, step), found));
    }

    /** Distance of the points of a road that was measured throughout (m). */
    private static Optional<Double> measuredSpacing(Road road) {
        double widest = 0;
        for (Surface surface : road.surfaces()) {
            if (!(surface instanceof Surface.Measured measured)) {
                return Optional.empty();
            }
            widest = Math.max(widest, measured.spacing().map(Measure::value).orElseGet(() -> median(measured)));
        }
        return widest > 0 ? Optional.of(widest) : Optional.empty();
    }

    private static double median(Surface.Measured measured) {
        double[] steps = new double[measured.profile().size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = measured.profile().station(i + 1) - measured.profile().station(i);
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    private static List<String> notes(Road road, double step) {
        List<String> notes = new ArrayList<>();
        if (road.surfaces().isEmpty()) {
            notes.add(
                    "The road is level but for its obstacles: its spectrum and its roughness index depend on how much level road around them is "
                            + "looked at, here " + Math.round(ROOM) + " m.");
        }
        for (Surface surface : road.surfaces()) {
            if (surface instanceof Surface.Measured measured) {
                notes.addAll(measured.remarks());
            }
        }
        measuredSpacing(road)
                .filter(measured -> step < NEARER * measured)
                .ifPresent(measured -> notes.add(String.format(
                        Locale.ROOT,
                        "Heights were measured %.4g m apart; what is shown of shorter waves than %.4g m comes from the smooth curve laid through "
                                + "them.",
                        measured,
                        2 * measured)));
        return notes;
    }

    private record Span(double from, double to) {}

    private Span span(Road road, List<Track> tracks, double step) {
        double begin = Double.POSITIVE_INFINITY;
        double end = Double.NEGATIVE_INFINITY;
        for (Track track : tracks) {
            begin = Math.min(begin, track.begin());
            end = Math.max(end, track.end());
        }
        double from = begin - ROOM;
        double to = end + ROOM;
        if (!road.surfaces().isEmpty()) {
            from = Double.POSITIVE_INFINITY;
            to = Double.NEGATIVE_INFINITY;
            for (Surface surface : road.surfaces()) {
                from = Math.min(from, surface.stretch().begin());
                to = Math.max(to, Math.min(end, surface.stretch().end()));
            }
            boolean grows = road.surfaces().stream()
                    .anyMatch(s -> s instanceof Surface.Spectral || s instanceof Surface.Measured);
            // the first and the last point at least: the level road around begins there
            double growth = grows ? Math.max(step, road.runUp().value()) : 0;
            if (to - from - 2 * growth >= LEAST_LEFT * (to - from)) {
                from += growth;
                to -= growth;
            }
            // an obstacle beyond belongs to the road, though the ground around it is level
            double obstacles = RoadTracks.everySide(new Road(road.name(), road.obstacles(), Optional.empty()))
                    .end();
            to = Math.max(to, obstacles + ROOM);
        }
        if (length.isPresent() || Double.isInfinite(to)) {
            to = Math.min(to, from + length.orElse(USUAL_LENGTH));
        }
        return new Span(from, to);
    }

    private static boolean alike(TrackRoughness a, TrackRoughness b) {
        return Arrays.equals(a.outline().low(), b.outline().low())
                && Arrays.equals(a.outline().high(), b.outline().high())
                && (a.index().value() == b.index().value()
                        || !a.index().isKnown() && !b.index().isKnown());
    }
}
