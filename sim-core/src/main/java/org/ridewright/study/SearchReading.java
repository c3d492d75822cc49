package org.ridewright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the runs of a search say beside the best of them: which limits bind, how well the best is determined, how rough the way is. */
public final class SearchReading {
    /** Share of the best answer by which another is hardly worse. */
    public static final double ALIKE = 0.01;
    /** How near to the best a run must be to say which limit binds, in shares of the ranges. */
    private static final double NEAR = 0.01;
    /** How near to an end of a range the best lies at the end. */
    private static final double END = 1e-3;

    /** Part of a range over which the same answer says that the value hardly matters there. */
    private static final double BROAD = 0.1;

    private final Method.Search method;
    private final SearchRun.Result result;

    public SearchReading(Method.Search method, SearchRun.Result result) {
        this.method = method;
        this.result = result;
    }

    /** The run with which the search ended; absent if none could be ridden. */
    public Optional<SearchRun.Step> best() {
        return result.best() < 0 ? Optional.empty() : Optional.of(result.way().get(result.best()));
    }

    /** Whether it keeps the limits. */
    public boolean keeps() {
        return best().map(SearchRun.Step::keeps).orElse(false);
    }

    /** Runs of the search proper, without the scenario as written. */
    public List<SearchRun.Step> looks() {
        return result.way().subList(1, result.way().size());
    }

    /** Whether a run breaks a limit. */
    public boolean breaks(SearchRun.Step step, int limit) {
        return method.limits().get(limit).excess(step.limited().get(limit)) > 0;
    }

    /** Numbers of the limits that a run breaks. */
    public List<Integer> broken(SearchRun.Step step) {
        return IntStream.range(0, method.limits().size())
                .filter(l -> breaks(step, l))
                .boxed()
                .toList();
    }

    /** Numbers of the limits whose answer exists in no run that could be ridden, so that nothing keeps or breaks them. */
    public List<Integer> unanswered() {
        boolean ridden = looks().stream().anyMatch(s -> Double.isFinite(s.worth()));
        return IntStream.range(0, method.limits().size())
                .filter(l -> ridden
                        && result.way().stream()
                                .allMatch(s -> Double.isNaN(s.limited().get(l))))
                .boxed()
                .toList();
    }

    /** Numbers of the limits that bind: just beyond the best a run that breaks them comes nearer to what is sought. */
    public List<Integer> binding() {
        if (!keeps()) {
            return List.of();
        }
        SearchRun.Step best = best().orElseThrow();
        return IntStream.range(0, method.limits().size())
                .filter(l -> looks().stream()
                        .anyMatch(s -> breaks(s, l)
                                && method.sought().isBetter(s.worth(), best.worth())
                                && distance(s, best) <= NEAR))
                .boxed()
                .toList();
    }

    private static double distance(SearchRun.Step a, SearchRun.Step b) {
        return IntStream.range(0, a.shares().length)
                .mapToDouble(d -> Math.abs(a.shares()[d] - b.shares()[d]))
                .max()
                .orElse(0);
    }

    /** The run that would be best if no limit had to be kept; absent if that is the same. */
    public Optional<SearchRun.Step> bestWithoutLimits() {
        Optional<SearchRun.Step> free = looks().stream()
                .filter(s -> Double.isFinite(s.worth()))
                .reduce((a, b) -> method.sought().isBetter(b.worth(), a.worth()) ? b : a);
        return free.filter(f -> keeps()
                && method.sought().isBetter(f.worth(), best().orElseThrow().worth()));
    }

    /** Whether the best lies at an end of the range of one of the values. */
    public boolean isAtEnd(int factor) {
        double share = best().orElseThrow().shares()[factor];
        return share < END || share > 1 - END;
    }

    /**
     * Values between which the answer is hardly less good than at the best.
     *
     * @param low lower end, as on the factor's axis
     * @param high upper end
     */
    public record Span(double low, double high) {}

    /**
     * Where the answer is within {@value #ALIKE} of the best one. Of one value: around the best, in proportion between runs and as far as the limits are
     * kept; of several: the least and the greatest of the runs that are so good.
     */
    public Span alike(int factor) {
        SearchRun.Step best = best().orElseThrow();
        Factor axis = method.factors().get(factor);
        if (method.factors().size() > 1) {
            double[] shares = looks().stream()
                    .filter(s -> s.keeps() && isAlike(s, best))
                    .mapToDouble(s -> s.shares()[factor])
                    .sorted()
                    .toArray();
            return shares.length == 0
                    ? span(axis, best.shares()[factor], best.shares()[factor])
                    : span(axis, shares[0], shares[shares.length - 1]);
        }
        List<SearchRun.Step> row = row();
        int at = row.indexOf(best);
        return span(axis, end(row, at, -1), end(row, at, 1));
    }

    /** Whether the answer is within {@value #ALIKE} of the best one over so much of the range that it hardly depends on the value. */
    public boolean isBroad(int factor) {
        return share(alike(factor), factor) > BROAD;
    }

    /** Whether it is so over the whole of the range. */
    public boolean isFlat(int factor) {
        return share(alike(factor), factor) > 1 - 2 * END;
    }

    /** Which part of the range a span is. */
    private double share(Span span, int factor) {
        Factor axis = method.factors().get(factor);
        double from = axis.shown(axis.at(0));
        double to = axis.shown(axis.at(1));
        return axis.isByRatio()
                ? Math.log(span.high() / span.low()) / Math.log(to / from)
                : (span.high() - span.low()) / (to - from);
    }

    private static Span span(Factor axis, double from, double to) {
        double a = axis.shown(axis.at(from));
        double b = axis.shown(axis.at(to));
        return new Span(Math.min(a, b), Math.max(a, b));
    }

    private double worse(SearchRun.Step step, SearchRun.Step best) {
        double by = step.worth() - best.worth();
        return method.sought().target().isPresent()
                ? Math.abs(by)
                : method.sought().least() ? by : -by;
    }

    private boolean isAlike(SearchRun.Step step, SearchRun.Step best) {
        return worse(step, best) <= ALIKE * Math.abs(best.worth());
    }

    private double end(List<SearchRun.Step> row, int at, int way) {
        SearchRun.Step best = row.get(at);
        SearchRun.Step last = best;
        for (int i = at + way; i >= 0 && i < row.size(); i += way) {
            SearchRun.Step next = row.get(i);
            if (!next.keeps()) {
                break;
            } else if (!isAlike(next, best)) {
                double from = worse(last, best);
                double share = (ALIKE * Math.abs(best.worth()) - from) / (worse(next, best) - from);
                return last.shares()[0] + share * (next.shares()[0] - last.shares()[0]);
            }
            last = next;
        }
        return last.shares()[0];
    }

    /** Runs in order of the one value, without those that lie at the same place as another. */
    public List<SearchRun.Step> row() {
        List<SearchRun.Step> row = new ArrayList<>();
        looks().stream().sorted(Comparator.comparingDouble(s -> s.shares()[0])).forEach(row::add);
        return row;
    }

    /**
     * How many hollows the answer has along the one value, as far as the runs show, in stretches that keep the limits: each lower than what lies on either
     * side of it, or the end of the stretch, by more than {@value #ALIKE} of the best. Of a search for the greatest, summits.
     */
    public int hollows() {
        double sign = method.sought().least() ? 1 : -1;
        double depth = ALIKE * Math.abs(best().orElseThrow().worth());
        int hollows = 0;
        List<Double> stretch = new ArrayList<>();
        for (SearchRun.Step step : row()) {
            if (step.keeps()) {
                stretch.add(sign * step.worth());
            } else {
                hollows += hollows(stretch, depth);
                stretch.clear();
            }
        }
        return hollows + hollows(stretch, depth);
    }

    static int hollows(List<Double> values, double depth) {
        int hollows = 0;
        boolean falling = true;
        double turn = Double.POSITIVE_INFINITY;
        for (double value : values) {
            if (falling ? value < turn : value > turn) {
                turn = value;
            } else if (Math.abs(value - turn) > depth) {
                hollows += falling ? 1 : 0;
                falling = !falling;
                turn = value;
            }
        }
        return hollows + (falling && !values.isEmpty() ? 1 : 0);
    }
}
