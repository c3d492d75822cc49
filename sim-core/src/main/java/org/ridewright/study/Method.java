package org.ridewright.study;

import java.util.List;
import java.util.Optional;

/** What a study does with its scenario. */
public sealed interface Method {
    /** Its name at the top of study files. */
    String word();

    /** Every combination of one or two values. */
    record Sweep(List<Swept> swept) implements Method {
        public Sweep {
            swept = List.copyOf(swept);
        }

        @Override
        public String word() {
            return "sweep";
        }
    }

    /**
     * A value and the coordinates that it takes in turn.
     *
     * @param coordinates at least one
     */
    record Swept(Factor factor, List<Double> coordinates) {
        public Swept {
            coordinates = List.copyOf(coordinates);
        }
    }

    /**
     * Things side by side.
     *
     * @param by what is compared
     * @param draws from tolerances, the same ones for all; 0: as written only
     * @param uncertain of each variant, in their order; used by draws
     * @param ranges values drawn besides, evenly likely between two ends, the same for all variants
     */
    record Compare(By by, int draws, Draws.Kind kind, long seed, List<Uncertain> uncertain, List<Factor> ranges)
            implements Method {
        public Compare {
            uncertain = List.copyOf(uncertain);
            ranges = List.copyOf(ranges);
        }

        /** What each number of a draw decides, ranges left out. */
        List<String> keys() {
            return uncertain.stream().flatMap(u -> u.keys().stream()).distinct().toList();
        }

        /** How many numbers a draw takes. */
        public int dimensions() {
            return keys().size() + ranges.size();
        }

        @Override
        public String word() {
            return "compare";
        }
    }

    /** What a comparison puts side by side. */
    enum By {
        /** The vehicles of the scenario. */
        VEHICLES,
        /** Load cases of its vehicles. */
        LOAD_CASES,
        /** Variants of the scenario, or other scenarios. */
        VARIANTS
    }

    /**
     * Draws from tolerances, once or at each of some values.
     *
     * @param along value in whose steps the draws are repeated, the same ones at each
     * @param ranges values drawn besides, evenly likely between two ends
     */
    record Uncertainty(
            Optional<Swept> along, int draws, Draws.Kind kind, long seed, Uncertain uncertain, List<Factor> ranges)
            implements Method {
        public Uncertainty {
            ranges = List.copyOf(ranges);
        }

        @Override
        public String word() {
            return "uncertainty";
        }
    }

    /**
     * Morris screening.
     *
     * @param factors at least one
     * @param correlated values whose correlation is left out of account
     * @param trajectories number of ways through the cube of values, at least 2
     * @param levels values that each takes, even, at least 4
     */
    record Screening(List<Factor> factors, List<Correlated> correlated, int trajectories, int levels, long seed)
            implements Method {
        public Screening {
            factors = List.copyOf(factors);
            correlated = List.copyOf(correlated);
        }

        @Override
        public String word() {
            return "sensitivity";
        }

        /** Its points. */
        public MorrisDesign design() {
            return new MorrisDesign(factors.size(), trajectories, levels, seed);
        }
    }

    /**
     * Sobol' indices.
     *
     * @param factors at least one
     * @param correlated values whose correlation is left out of account
     * @param draws number of points of each of the two samples; runs are {@code draws (k + 2)}
     */
    record Indices(List<Factor> factors, List<Correlated> correlated, int draws, long seed) implements Method {
        public Indices {
            factors = List.copyOf(factors);
            correlated = List.copyOf(correlated);
        }

        @Override
        public String word() {
            return "sensitivity";
        }

        /** Its points. */
        public SaltelliDesign design() {
            return new SaltelliDesign(factors.size(), draws, seed);
        }
    }

    /**
     * The values that meet a target, or make an answer as good as it can be, while limits are kept.
     *
     * @param factors one, sought by {@link LineSearch}, or several, by CMA-ES; ranges or multiples
     * @param limits may be none
     * @param looks at equal distances over the range of one value
     * @param runs at most
     */
    record Search(List<Factor> factors, Sought sought, List<Limit> limits, int looks, int runs, long seed)
            implements Method {
        public Search {
            factors = List.copyOf(factors);
            limits = List.copyOf(limits);
        }

        @Override
        public String word() {
            return "search";
        }
    }
}
