package org.ridewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.ridewright.quantity.JointSpread;
import org.ridewright.quantity.Spread;

/**
 * What is uncertain in a scenario: blocks of values that are known together, such as those of one vehicle file.
 *
 * @param blocks each drawn by itself
 */
public record Uncertain(List<Block> blocks) {
    public Uncertain {
        blocks = List.copyOf(blocks);
    }

    /**
     * Values known together.
     *
     * @param prefix what stands before each path
     * @param joint spreads and correlation
     * @param chosen paths of the block that vary; the others stay as written
     */
    public record Block(String prefix, JointSpread joint, Set<String> chosen) {
        public Block {
            chosen = Set.copyOf(chosen);
        }

        private List<Integer> varying() {
            return IntStream.range(0, joint.size())
                    .filter(i -> chosen.contains(joint.paths().get(i)))
                    .boxed()
                    .toList();
        }
    }

    /** How many numbers a draw takes. */
    public int dimensions() {
        return blocks.stream().mapToInt(b -> b.joint().size()).sum();
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
        List<Factor> factors = new ArrayList<>();
        for (Block block : blocks) {
            for (int i : block.varying()) {
                String path = block.prefix() + block.joint().paths().get(i);
                factors.add(new Factor.Tolerated(
                        path, List.of(path), block.joint().spreads().get(i)));
            }
        }
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
     * The values of a draw (SI units), in the order of {@link #paths}.
     *
     * @param share point of the unit cube, {@link #dimensions} coordinates
     */
    public List<Double> values(double[] share) {
        List<Double> values = new ArrayList<>();
        int next = 0;
        for (Block block : blocks) {
            double[] w = Arrays.stream(share, next, next + block.joint().size())
                    .map(Normal::quantile)
                    .toArray();
            List<Double> all = block.joint().values(w);
            block.varying().forEach(i -> values.add(all.get(i)));
            next += block.joint().size();
        }
        return values;
    }

    /** The same as words by path. */
    public Map<String, String> texts(List<Double> values) {
        Map<String, String> texts = new LinkedHashMap<>();
        int next = 0;
        for (Block block : blocks) {
            for (int i : block.varying()) {
                String text = Spread.written(block.joint().spreads().get(i).kind(), values.get(next++));
                texts.put(block.prefix() + block.joint().paths().get(i), text);
            }
        }
        return texts;
    }
}
