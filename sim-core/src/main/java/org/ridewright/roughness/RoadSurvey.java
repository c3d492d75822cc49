package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.road.Road;
import org.ridewright.road.RoadTracks;
import org.ridewright.road.Surface;
import org.ridewright.road.Track;

/**
 * How a road is surveyed.
 *
 * @param halfTrack distance of each track from the centre line (m), ≥ 0; one track where 0
 * @param spacing of the heights (m), &gt; 0
 * @param length of a road that does not end (m), &gt; 0; of others, at most so much is looked at if it is given
 * @param wheels whose paths are wanted
 */
public record RoadSurvey(double halfTrack, double spacing, Optional<Double> length, List<SampledWheel> wheels) {
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

    /** Level road looked at before the first obstacle and behind the last (m): enough to show waves of 5 m. */
    private static final double ROOM = 10;

    /** Shorter stretches (m) are not cut down to leave out where a surface grows. */
    private static final double SHORTEST = 20;

    public RoadSurvey {
        wheels = List.copyOf(wheels);
        if (!(halfTrack >= 0) || Double.isInfinite(halfTrack)) {
            throw new IllegalArgumentException("half of the track must be ≥ 0 m, got " + halfTrack + " m");
        }
        if (!(spacing > 0) || Double.isInfinite(spacing)) {
            throw new IllegalArgumentException("spacing of heights must be > 0 m, got " + spacing + " m");
        }
        if (length.isPresent() && !(length.get() > 0 && Double.isFinite(length.get()))) {
            throw new IllegalArgumentException("length of road must be > 0 m, got " + length.get() + " m");
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
        Span span = span(road, tracks);
        if (!(span.from < span.to)) {
            return Optional.empty();
        }
        long size = 1 + Math.round((span.to - span.from) / spacing);
        List<SurveyedRoad.SurveyedTrack> found = new ArrayList<>();
        for (Track track : tracks) {
            String name = track.y() > 0 ? "left track" : track.y() < 0 ? "right track" : "centre line";
            found.add(new SurveyedRoad.SurveyedTrack(
                    name, TrackSurvey.of(new TrackHeights(track, span.from, spacing, size), wheels)));
        }
        if (found.size() == 2 && alike(found.get(0).roughness(), found.get(1).roughness())) {
            found = List.of(
                    new SurveyedRoad.SurveyedTrack("either track", found.get(0).roughness()));
        }
        return Optional.of(new SurveyedRoad(road.name(), source, notes(road), found));
    }

    private static List<String> notes(Road road) {
        return road.surfaces().isEmpty()
                ? List.of(
                        "The road is level but for its obstacles: its spectrum and its roughness index depend on how much level road around them "
                                + "is looked at, here " + Math.round(ROOM) + " m.")
                : List.of();
    }

    private record Span(double from, double to) {}

    private Span span(Road road, List<Track> tracks) {
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
            double growth = road.runUp().value();
            if (to - from - 2 * growth >= SHORTEST) {
                from += growth;
                to -= growth;
            }
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
