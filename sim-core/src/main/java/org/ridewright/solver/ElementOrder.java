package org.ridewright.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.dynamics.Pushes;
import org.ridewright.dynamics.WheelPush;

/**
 * The order in which the series works through the elements, those of one shape next to each other, and the way back to the order in
 * which they were given.
 */
final class ElementOrder {
    private final Equations equations;
    private final int[] given;
    private final int[] place;
    private final int[] sliderGiven;

    /**
     * @param equations with elements as given
     */
    ElementOrder(Equations equations) {
        List<RowShape> shapes = IntStream.range(0, equations.elements().size())
                .mapToObj(e -> RowShape.of(equations, e))
                .toList();
        given = IntStream.range(0, shapes.size())
                .boxed()
                .sorted(Comparator.<Integer, RowShape.Kind>comparing(
                                e -> shapes.get(e).kind())
                        .thenComparing(e -> shapes.get(e).triple()))
                .mapToInt(e -> e)
                .toArray();
        place = new int[given.length];
        List<Element> ordered = new ArrayList<>();
        int[] sliderFrom = new int[given.length + 1];
        for (int e = 0; e < given.length; e++) {
            sliderFrom[e + 1] =
                    sliderFrom[e] + equations.elements().get(e).law().friction().states();
        }
        List<Integer> sliders = new ArrayList<>();
        for (int e = 0; e < given.length; e++) {
            place[given[e]] = e;
            ordered.add(equations.elements().get(given[e]));
            IntStream.range(sliderFrom[given[e]], sliderFrom[given[e] + 1]).forEach(sliders::add);
        }
        sliderGiven = sliders.stream().mapToInt(j -> j).toArray();
        Pushes pushes = equations.pushes();
        List<WheelPush> moved = pushes.wheels().stream()
                .map(push -> new WheelPush(place[push.element()], push.row()))
                .toList();
        this.equations = equations
                .withPushes(Pushes.NONE)
                .withElements(ordered)
                .withPushes(new Pushes(moved, pushes.speed(), pushes.stated()));
    }

    /** The same equations with the elements in the order of the series. */
    Equations equations() {
        return equations;
    }

    /** Index in the series of the element given as number e. */
    int place(int e) {
        return place[e];
    }

    /** Values of elements in the order given, from those in the order of the series. */
    double[] elementsAsGiven(double[] ordered) {
        double[] result = new double[ordered.length];
        for (int e = 0; e < ordered.length; e++) {
            result[given[e]] = ordered[e];
        }
        return result;
    }

    /** Friction states in the order given, from those in the order of the series. */
    double[] slidersAsGiven(double[] ordered) {
        double[] result = new double[ordered.length];
        for (int j = 0; j < ordered.length; j++) {
            result[sliderGiven[j]] = ordered[j];
        }
        return result;
    }

    /** Friction states in the order of the series, from those in the order given. */
    double[] slidersOrdered(double[] asGiven) {
        return IntStream.of(sliderGiven).mapToDouble(j -> asGiven[j]).toArray();
    }
}
