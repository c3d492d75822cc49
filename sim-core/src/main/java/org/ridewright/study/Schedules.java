package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.quantity.Spread;

/** The runs of each method. Run 0 is always the first variant as written. */
final class Schedules {
    private Schedules() {}

    static Schedule of(Study study) {
        Variant first = study.variants().get(0);
        Method method = study.method();
        if (method instanceof Method.Sweep sweep) {
            return new Grid(first, sweep.swept());
        } else if (method instanceof Method.Compare compare) {
            return new Beside(study.variants(), compare);
        } else if (method instanceof Method.Uncertainty uncertainty) {
            return new Drawn(first, uncertainty);
        } else if (method instanceof Method.Screening screening) {
            return new Points(first, screening.factors(), screening.design());
        } else if (method instanceof Method.Indices indices) {
            return new Points(first, indices.factors(), indices.design());
        }
        return new Points(first, ((Method.Search) method).factors(), Design.NONE);
    }

    /** The variant's own changes and those of the run, which prevail. */
    static Map<String, String> texts(Variant variant, Map<String, String> changes) {
        return over(variant.texts(), changes);
    }

    /** Both, those of {@code later} last, since what comes last prevails where a path with a star means the same value. */
    private static Map<String, String> over(Map<String, String> earlier, Map<String, String> later) {
        Map<String, String> all = new LinkedHashMap<>(earlier);
        later.forEach((path, text) -> {
            all.remove(path);
            all.put(path, text);
        });
        return all;
    }

    /** Words by path of values drawn between two ends, whose shares begin at {@code first}; their cells are added. */
    private static Map<String, String> between(List<Factor> ranges, double[] shares, int first, List<String> cells) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int r = 0; r < ranges.size(); r++) {
            double coordinate = ranges.get(r).at(shares[first + r]);
            texts.putAll(ranges.get(r).texts(coordinate));
            cells.add(ranges.get(r).cell(coordinate));
        }
        return texts;
    }

    private static Trial base(int variant, Variant of, int columns) {
        return new Trial(0, variant, "base", of.texts(), blanks(columns));
    }

    private static List<String> blanks(int columns) {
        return Collections.nCopies(columns, "");
    }

    /** The base, then the grid with its last value changing fastest. */
    private record Grid(Variant variant, List<Method.Swept> swept) implements Schedule {
        @Override
        public long size() {
            return 1 + swept.stream().mapToLong(s -> s.coordinates().size()).reduce(1, (a, b) -> a * b);
        }

        @Override
        public List<String> heads() {
            return swept.stream().map(s -> s.factor().head()).toList();
        }

        @Override
        public Trial trial(long run) {
            if (run == 0) {
                return base(0, variant, swept.size());
            }
            long rest = run - 1;
            String[] cells = new String[swept.size()];
            Map<String, String> changes = new LinkedHashMap<>();
            for (int s = swept.size() - 1; s >= 0; s--) {
                Method.Swept each = swept.get(s);
                double coordinate =
                        each.coordinates().get((int) (rest % each.coordinates().size()));
                rest /= each.coordinates().size();
                cells[s] = each.factor().cell(coordinate);
                changes.putAll(each.factor().texts(coordinate));
            }
            return new Trial(run, 0, "level", texts(variant, changes), Arrays.asList(cells));
        }
    }

    /** Each variant as written, then draw by draw each variant; a value of one file gets the same chance in all. */
    private static final class Beside implements Schedule {
        private final List<Variant> variants;
        private final Method.Compare compare;
        private final List<Overlay> overlays;
        private final List<int[]> coordinates = new ArrayList<>();
        private final List<String> columns;
        private final Draws draws;
        private final int dimensions;

        Beside(List<Variant> variants, Method.Compare compare) {
            this.variants = variants;
            this.compare = compare;
            overlays = variants.stream().map(v -> new Overlay(v.scenario())).toList();
            Set<String> paths = new LinkedHashSet<>();
            List<String> keys = compare.keys();
            for (Uncertain uncertain : compare.uncertain()) {
                coordinates.add(
                        uncertain.keys().stream().mapToInt(keys::indexOf).toArray());
                paths.addAll(uncertain.paths());
            }
            columns = List.copyOf(paths);
            dimensions = keys.size();
            draws = new Draws(
                    compare.kind(),
                    Math.max(1, compare.draws()),
                    dimensions + compare.ranges().size(),
                    compare.seed());
        }

        @Override
        public long size() {
            return (1L + compare.draws()) * variants.size();
        }

        @Override
        public List<String> heads() {
            List<String> heads = new ArrayList<>(List.of("variant"));
            for (String path : columns) {
                heads.add(head(path));
            }
            compare.ranges().forEach(r -> heads.add(r.head()));
            return heads;
        }

        @Override
        public long draw(long run) {
            return run / variants.size();
        }

        private String head(String path) {
            for (Uncertain uncertain : compare.uncertain()) {
                int at = uncertain.paths().indexOf(path);
                if (at >= 0) {
                    return Drawn.head(path, uncertain.spreads().get(at));
                }
            }
            return path;
        }

        @Override
        public Trial trial(long run) {
            int v = (int) (run % variants.size());
            long draw = run / variants.size() - 1;
            Variant variant = variants.get(v);
            List<String> cells = new ArrayList<>(List.of(variant.name()));
            if (draw < 0) {
                cells.addAll(blanks(columns.size() + compare.ranges().size()));
                return new Trial(run, v, "as written", variant.texts(), cells);
            }
            double[] shares = draws.point(draw);
            double[] own = Arrays.stream(coordinates.get(v))
                    .mapToDouble(d -> shares[d])
                    .toArray();
            List<String> ranged = new ArrayList<>();
            Map<String, String> changes = over(variant.texts(), between(compare.ranges(), shares, dimensions, ranged));
            Overlay.Result result =
                    overlays.get(v).over(compare.uncertain().get(v).drawn(own), changes);
            columns.forEach(path -> cells.add(result.cells().getOrDefault(path, "")));
            cells.addAll(ranged);
            return new Trial(run, v, "draw", result.texts(), cells);
        }
    }

    /** The base, then level by level all draws. */
    private static final class Drawn implements Schedule {
        private final Variant variant;
        private final Method.Uncertainty method;
        private final Overlay overlay;
        private final Draws draws;

        Drawn(Variant variant, Method.Uncertainty method) {
            this.variant = variant;
            this.method = method;
            overlay = new Overlay(variant.scenario());
            draws = new Draws(
                    method.kind(),
                    method.draws(),
                    method.uncertain().dimensions() + method.ranges().size(),
                    method.seed());
        }

        static String head(String path, Spread spread) {
            return spread.kind().siUnit().equals("1")
                    ? path
                    : path + " (" + spread.kind().siUnit() + ")";
        }

        @Override
        public long draw(long run) {
            return run == 0 ? 0 : (run - 1) % method.draws() + 1;
        }

        private int levels() {
            return method.along().map(a -> a.coordinates().size()).orElse(1);
        }

        @Override
        public long size() {
            return 1L + (long) levels() * method.draws();
        }

        @Override
        public List<String> heads() {
            List<String> heads = new ArrayList<>();
            method.along().ifPresent(a -> heads.add(a.factor().head()));
            List<String> paths = method.uncertain().paths();
            for (int i = 0; i < paths.size(); i++) {
                heads.add(head(paths.get(i), method.uncertain().spreads().get(i)));
            }
            method.ranges().forEach(r -> heads.add(r.head()));
            return heads;
        }

        @Override
        public Trial trial(long run) {
            if (run == 0) {
                return base(0, variant, heads().size());
            }
            int level = (int) ((run - 1) / method.draws());
            double[] shares = draws.point((run - 1) % method.draws());
            int dimensions = method.uncertain().dimensions();
            List<String> cells = new ArrayList<>();
            List<String> ranged = new ArrayList<>();
            Map<String, String> changes = over(variant.texts(), between(method.ranges(), shares, dimensions, ranged));
            if (method.along().isPresent()) {
                Method.Swept along = method.along().get();
                double coordinate = along.coordinates().get(level);
                cells.add(along.factor().cell(coordinate));
                changes = over(changes, along.factor().texts(coordinate));
            }
            Overlay.Result result = overlay.over(method.uncertain().drawn(Arrays.copyOf(shares, dimensions)), changes);
            cells.addAll(result.cells().values());
            cells.addAll(ranged);
            return new Trial(run, 0, "draw", result.texts(), cells);
        }
    }

    /** The base, then the points of a design in shares of the factors' ranges. */
    private record Points(Variant variant, List<Factor> factors, Design design) implements Schedule {
        @Override
        public long size() {
            return 1 + design.size();
        }

        @Override
        public List<String> heads() {
            return factors.stream().map(Factor::head).toList();
        }

        @Override
        public Trial trial(long run) {
            if (run == 0) {
                return base(0, variant, factors.size());
            }
            return at(run, "point", variant, factors, design.point(run - 1));
        }
    }

    /** A run at shares of the factors' ranges. */
    static Trial at(long run, String role, Variant variant, List<Factor> factors, double[] shares) {
        List<Uncertain.Drawn> drawn = new ArrayList<>();
        Map<String, String> changes = new LinkedHashMap<>();
        for (int f = 0; f < factors.size(); f++) {
            double coordinate = factors.get(f).at(shares[f]);
            if (factors.get(f) instanceof Factor.Tolerated tolerated) {
                double value = tolerated.spread().at(coordinate);
                tolerated.paths().forEach(path -> drawn.add(new Uncertain.Drawn(path, tolerated.spread(), value)));
            } else {
                changes.putAll(factors.get(f).texts(coordinate));
            }
        }
        Overlay.Result result = new Overlay(variant.scenario()).over(drawn, over(variant.texts(), changes));
        List<String> cells = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            Factor factor = factors.get(f);
            cells.add(
                    factor instanceof Factor.Tolerated
                            ? result.cells().get(factor.paths().get(0))
                            : factor.cell(factor.at(shares[f])));
        }
        return new Trial(run, 0, role, result.texts(), cells);
    }
}
