package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Spread;

/** What is uncertain in a scenario: blocks of values that are known together, such as those of one vehicle file. */
public final class Uncertain {
    private final List<Block> blocks;
    private final Map<String, Integer> places = new LinkedHashMap<>();

    /** @param blocks those of one source are drawn alike, others each by itself */
    public Uncertain(List<Block> blocks) {
        this.blocks = List.copyOf(blocks);
        for (Block block : blocks) {
            block.keys().forEach(key -> places.putIfAbsent(key, places.size()));
        }
    }

    /**
     * Values known together.
     *
     * @param source file in which they stand
     * @param prefix what stands before each path
     * @param joint spreads and correlation
     * @param chosen paths of the block that vary; the others stay as written
     */
    public record Block(String source, String prefix, JointSpread joint, Set<String> chosen) {
        public Block {
            chosen = Set.copyOf(chosen);
        }

        private List<Integer> varying() {
            return IntStream.range(0, joint.size())
                    .filter(i -> chosen.contains(joint.paths().get(i)))
                    .boxed()
                    .toList();
        }

        private List<String> keys() {
            return joint.paths().stream().map(path -> source + " " + path).toList();
        }
    }

    /**
     * A value that was drawn.
     *
     * @param path with counted items
     * @param value (SI unit of the spread's kind)
     */
    public record Drawn(String path, Spread spread, double value) {}

    /** The blocks. */
    public List<Block> blocks() {
        return blocks;
    }

    /** What each number of a draw decides: a value of a file, whatever vehicles are of that file. */
    public List<String> keys() {
        return List.copyOf(places.keySet());
    }

    /** What varies, each value of a file once, whatever vehicles are of that file. */
    public Set<String> varying() {
        Set<String> varying = new LinkedHashSet<>();
        for (Block block : blocks) {
            block.varying().forEach(i -> varying.add(block.keys().get(i)));
        }
        return varying;
    }

    /** How many numbers a draw takes. */
    public int dimensions() {
        return places.size();
    }

    /** The path of each value that varies, in order. */
    public List<String> paths() {
        List<String> paths = new ArrayList<>();
        for (Block block : blocks) {
            block.varying()
                    .forEach(i ->
                            paths.add(block.prefix() + block.joint().paths().get(i)));
        }
        return paths;
    }

    /** The spread of each value that varies. */
    public List<Spread> spreads() {
        List<Spread> spreads = new ArrayList<>();
        for (Block block : blocks) {
            block.varying().forEach(i -> spreads.add(block.joint().spreads().get(i)));
        }
        return spreads;
    }

    /** Each value that varies by itself, its correlation with others left out. */
    public List<Factor> factors() {
        Map<String, Set<String>> paths = new LinkedHashMap<>();
        Map<String, Spread> spreads = new LinkedHashMap<>();
        for (Block block : blocks) {
            for (int i : block.varying()) {
                String key = block.keys().get(i);
                paths.computeIfAbsent(key, k -> new LinkedHashSet<>())
                        .add(block.prefix() + block.joint().paths().get(i));
                spreads.put(key, block.joint().spreads().get(i));
            }
        }
        List<Factor> factors = new ArrayList<>();
        paths.forEach((key, all) ->
                factors.add(new Factor.Tolerated(all.iterator().next(), List.copyOf(all), spreads.get(key))));
        return factors;
    }

    /** Pairs of values that vary and whose correlation is at least {@code least} in size. */
    public List<Correlated> correlated(double least) {
        List<Correlated> pairs = new ArrayList<>();
        for (Block block : blocks) {
            List<Integer> varying = block.varying();
            for (int i : varying) {
                for (int j : varying) {
                    double r = i < j ? block.joint().correlation(i, j) : 0;
                    if (i < j && Math.abs(r) >= least) {
                        pairs.add(new Correlated(
                                block.prefix() + block.joint().paths().get(i),
                                block.prefix() + block.joint().paths().get(j),
                                r));
                    }
                }
            }
        }
        return pairs;
    }

    /**
     * The values of a draw, in the order of {@link #paths}.
     *
     * @param share point of the unit cube, {@link #dimensions} coordinates
     */
    public List<Drawn> drawn(double[] share) {
        List<Drawn> drawn = new ArrayList<>();
        double[] normal = Arrays.stream(share).map(Normal::quantile).toArray();
        for (Block block : blocks) {
            double[] w = block.keys().stream()
                    .mapToDouble(key -> normal[places.get(key)])
                    .toArray();
            List<Double> all = block.joint().values(w);
            block.varying()
                    .forEach(i -> drawn.add(new Drawn(
                            block.prefix() + block.joint().paths().get(i),
                            block.joint().spreads().get(i),
                            all.get(i))));
        }
        return drawn;
    }
}
