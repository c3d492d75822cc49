package org.ridewright.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ridewright.bounce.LoadCaseBounces;
import org.ridewright.figure.Figure;
import org.ridewright.ride.RideResult;
import org.ridewright.ride.Scenario;
import org.ridewright.roughness.SurveyedRoad;
import org.ridewright.uncertainty.UncertainRide;
import org.ridewright.uncertainty.UncertainRides;

/**
 * Figures that belong under one heading.
 *
 * @param heading plain text
 * @param figures in the order of reading
 */
public record FigureGroup(String heading, List<Figure> figures) {
    public FigureGroup {
        figures = List.copyOf(figures);
    }

    /** All figures of a run: the comparison, what surge and sway add, the wheel paths of each vehicle and road, then those of each ride test; file names unlike. */
    public static List<FigureGroup> of(Scenario scenario, List<RideResult> results) {
        Set<String> taken = new HashSet<>();
        List<FigureGroup> groups = new ArrayList<>();
        add(groups, "All ride tests on equal axes", ComparisonFigures.of(results), taken);
        add(groups, "What riders feel against speed", SpeedFigures.of(results), taken);
        add(groups, "When friction locks the springs", FrictionFigure.of(results), taken);
        add(groups, "What surge and sway add", MissedFigures.of(results), taken);
        List<Figure> paths = new ArrayList<>();
        Set<List<String>> seen = new LinkedHashSet<>();
        for (RideResult result : results) {
            if (seen.add(List.of(result.vehicleFile(), result.road().name()))) {
                PathFigure.of(result).ifPresent(paths::add);
            }
        }
        add(groups, "What the wheels follow", paths, taken);
        Map<String, List<RideResult>> bySubject = new LinkedHashMap<>();
        for (RideResult result : results) {
            bySubject
                    .computeIfAbsent(RideName.of(result).words(), k -> new ArrayList<>())
                    .add(result);
        }
        bySubject.forEach((words, rides) -> {
            for (RideResult ride : rides) {
                add(groups, words, RideFigures.ofTest(ride), taken);
            }
        });
        return List.copyOf(groups);
    }

    /** The same with the bands of uncertain rides. */
    public static List<FigureGroup> of(Scenario scenario, UncertainRides.Outcome outcome) {
        List<FigureGroup> groups = new ArrayList<>();
        add(
                groups,
                "How sure the traces are",
                outcome.rides().stream()
                        .map(UncertaintyFigures::of)
                        .flatMap(Optional::stream)
                        .toList(),
                new HashSet<>());
        groups.addAll(
                of(scenario, outcome.rides().stream().map(UncertainRide::ride).toList()));
        return List.copyOf(groups);
    }

    /** All figures of a survey, those of each road under its name; file names unlike. */
    public static List<FigureGroup> of(List<SurveyedRoad> roads) {
        Set<String> taken = new HashSet<>();
        List<FigureGroup> groups = new ArrayList<>();
        for (SurveyedRoad road : roads) {
            add(groups, RideFigures.upperFirst(road.name()), RoadFigures.of(road), taken);
        }
        return List.copyOf(groups);
    }

    /** All figures of bounce tests: the chart of frequencies, then what happens under each load; file names unlike. */
    public static List<FigureGroup> ofBounces(List<LoadCaseBounces> all) {
        Set<String> taken = new HashSet<>();
        List<FigureGroup> groups = new ArrayList<>();
        add(groups, "What friction does to the ride frequency", List.of(BounceFigures.chart(all)), taken);
        for (LoadCaseBounces bounces : all) {
            String load = bounces.model().loadCase().name();
            add(groups, RideFigures.upperFirst(load), List.of(BounceFigures.traces(bounces)), taken);
        }
        return List.copyOf(groups);
    }

    private static void add(List<FigureGroup> groups, String heading, List<Figure> figures, Set<String> taken) {
        if (!figures.isEmpty()) {
            groups.add(new FigureGroup(
                    heading, figures.stream().map(f -> unlike(f, taken)).toList()));
        }
    }

    private static Figure unlike(Figure figure, Set<String> taken) {
        String name = figure.fileName();
        for (int n = 2; !taken.add(name); n++) {
            name = figure.fileName() + "-" + n;
        }
        return new Figure(
                name,
                figure.title(),
                figure.caption(),
                figure.panels(),
                figure.columns(),
                figure.widthMm(),
                figure.heightMm());
    }
}
