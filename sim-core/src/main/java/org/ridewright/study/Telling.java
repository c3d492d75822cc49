package org.ridewright.study;

import java.util.List;

/**
 * A piece of a sentence that a study makes from its numbers. Questions, things and levels are meant by their place in the study's lists; a ride
 * test by words of its labels, of which there may be none where there is but one.
 */
public sealed interface Telling {
    /** In place of a level: the one whose answer is best, or worst. */
    int BEST = -1;

    int WORST = -2;

    /** Number of the question. */
    int question();

    /** Labels of the ride test. */
    List<String> on();

    /** An answer. */
    record Value(int question, int of, List<String> on) implements Telling {
        public Value {
            on = List.copyOf(on);
        }
    }

    /**
     * How an answer changes from one thing or level to another.
     *
     * @param inUnits whether as a difference rather than in per cent
     */
    record Change(int question, int from, int to, boolean inUnits, List<String> on) implements Telling {
        public Change {
            on = List.copyOf(on);
        }
    }

    /** At which level an answer is best. */
    record Best(int question, List<String> on) implements Telling {
        public Best {
            on = List.copyOf(on);
        }
    }

    /** From which level on an answer is above, or below, a bound (unit of the answer). */
    record First(int question, boolean above, double bound, List<String> on) implements Telling {
        public First {
            on = List.copyOf(on);
        }
    }

    /** All things from the least answer to the greatest. */
    record Order(int question, List<String> on) implements Telling {
        public Order {
            on = List.copyOf(on);
        }
    }

    /** In which ride tests one thing is told apart from another; {@link #on} narrows them. */
    record Where(int question, int of, int against, List<String> on) implements Telling {
        public Where {
            on = List.copyOf(on);
        }
    }

    /** The value that a search found for one of those that it varies, and between which values the answer is hardly less good. */
    record Found(int factor) implements Telling {
        @Override
        public int question() {
            return -1;
        }

        @Override
        public List<String> on() {
            return List.of();
        }
    }

    /** Which limits of a search bind. */
    record Binding() implements Telling {
        @Override
        public int question() {
            return -1;
        }

        @Override
        public List<String> on() {
            return List.of();
        }
    }

    /**
     * At which frequencies an answer in third octaves changes from one thing or level to another.
     *
     * @param questions numbers of the bands' questions, lowest band first
     */
    record Bands(List<Integer> questions, int from, int to, List<String> on) implements Telling {
        public Bands {
            questions = List.copyOf(questions);
            on = List.copyOf(on);
        }

        @Override
        public int question() {
            return questions.get(0);
        }
    }
}
