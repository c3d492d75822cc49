package org.ridewright.narrowing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.Provenance;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.Vehicle;

class NarrowingTest {
    private static final Path VEHICLES = Path.of("..", "scenarios", "vehicles");

    /** An answer that is a plain function of the sprung mass, here a stand-in for any value. */
    private record Made(List<ToDoubleFunction<Vehicle>> functions) implements Answer {
        @Override
        public List<Figure> figures() {
            return functions.stream().map(f -> new Figure("figure", "1")).toList();
        }

        @Override
        public String asked() {
            return "a sum";
        }

        @Override
        public List<Double> of(Vehicle vehicle) {
            return functions.stream().map(f -> f.applyAsDouble(vehicle)).toList();
        }
    }

    private static Vehicle phaeton() {
        return VehicleDocument.read(VEHICLES.resolve("phaeton.yaml")).asWritten();
    }

    /** A value x of which the vehicle's name carries the number of standard deviations: {@code name = z}. */
    private static UncertainValue value(String path, double tolerance, UncertainValue.Knowledge knowledge) {
        Measure measure = new Measure(QuantityKind.LENGTH, 1, tolerance, Provenance.ESTIMATED, "1 m");
        Vehicle vehicle = phaeton();
        return new UncertainValue(
                path,
                measure,
                knowledge,
                false,
                z -> vehicle.seated(path + "=" + (1 + tolerance * z), vehicle.seats()));
    }

    /** The value that a vehicle was given under a path; 1 where it was given another. */
    private static double of(Vehicle vehicle, String path) {
        return vehicle.name().startsWith(path + "=")
                ? Double.parseDouble(vehicle.name().substring(path.length() + 1))
                : 1;
    }

    @Test
    void theOrderIsSensitivityTimesTolerance() {
        // y = 3 a + b + 10 c with tolerances 0.2, 1 and 0.01: contributions 0.6, 1 and 0.1
        Answer answer = new Made(List.of(v -> 3 * of(v, "a") + of(v, "b") + 10 * of(v, "c")));
        List<UncertainValue> values = List.of(
                value("a", 0.2, UncertainValue.Knowledge.ESTIMATED),
                value("b", 1, UncertainValue.Knowledge.STATED),
                value("c", 0.01, UncertainValue.Knowledge.LEFT_OUT));
        Narrowing narrowing = Narrowing.of(phaeton(), values, answer);
        assertThat(narrowing.rows()).extracting(r -> r.value().path()).containsExactly("b", "a", "c");
        double total = 0.36 + 1 + 0.01;
        assertThat(narrowing.uncertainty().get(0)).isCloseTo(Math.sqrt(total), within(1e-9));
        assertThat(narrowing.rows()).extracting(Narrowing.Row::share).satisfies(shares -> {
            assertThat(shares.get(0)).isCloseTo(1 / total, within(1e-9));
            assertThat(shares.get(1)).isCloseTo(0.36 / total, within(1e-9));
            assertThat(shares.get(2)).isCloseTo(0.01 / total, within(1e-9));
        });
    }

    @Test
    void figuresOfUnlikeSizesCountAlike() {
        Answer answer = new Made(List.of(v -> 1000 * of(v, "a"), v -> 1e-3 * of(v, "b"), v -> 7));
        List<UncertainValue> values = List.of(
                value("a", 0.1, UncertainValue.Knowledge.ESTIMATED),
                value("b", 0.1, UncertainValue.Knowledge.ESTIMATED));
        Narrowing narrowing = Narrowing.of(phaeton(), values, answer);
        assertThat(narrowing.rows())
                .extracting(Narrowing.Row::share)
                .allSatisfy(s -> assertThat(s).isCloseTo(0.5, within(1e-9)));
    }

    @Test
    void aFigureAtItsLowestStillTellsOfTheValue() {
        // both sides rise alike, so that their difference says nothing
        Answer answer = new Made(List.of(v -> Math.pow(of(v, "a") - 1, 2)));
        Narrowing narrowing =
                Narrowing.of(phaeton(), List.of(value("a", 0.5, UncertainValue.Knowledge.ESTIMATED)), answer);
        assertThat(narrowing.rows().get(0).contribution().get(0)).isCloseTo(0.25, within(1e-9));
    }

    @Test
    void aValueThatCannotBeOnOneSideCountsByTheOther() {
        UncertainValue free = value("a", 0.5, UncertainValue.Knowledge.ESTIMATED);
        UncertainValue bounded = new UncertainValue("a", free.measure(), free.knowledge(), false, z -> {
            if (z < -0.1) {
                throw new UnfitValueException("too low");
            }
            return free.at().apply(z);
        });
        Answer answer = new Made(List.of(v -> 2 * of(v, "a")));
        Narrowing narrowing = Narrowing.of(phaeton(), List.of(bounded), answer);
        assertThat(narrowing.rows().get(0).contribution().get(0)).isCloseTo(1, within(1e-9));
        assertThat(narrowing.rows().get(0).refused()).contains("too low");
    }

    @Test
    void scatterThatNoValueCausesIsNobodysShare() {
        // any change at all throws the figure one way: the bounce of a hard wheel
        Answer answer = new Made(List.of(v -> v.name().contains("=") ? 1.0 : 0.0));
        Narrowing narrowing =
                Narrowing.of(phaeton(), List.of(value("a", 0.5, UncertainValue.Knowledge.ESTIMATED)), answer);
        assertThat(narrowing.scatter().get(0)).isCloseTo(1, within(1e-9));
        assertThat(narrowing.rows().get(0).share()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"phaeton", "dray", "lorry", "van", "saloon", "trailer"})
    void everyEstimatedValueOfAFileIsListed(String name) {
        VehicleDocument document = VehicleDocument.read(VEHICLES.resolve(name + ".yaml"));
        List<String> estimated = document.values().stream()
                .filter(v -> v.measure()
                        .filter(m -> m.provenance() == Provenance.ESTIMATED)
                        .isPresent())
                .map(v -> v.path())
                .toList();
        List<UncertainValue> values = UncertainValues.of(document);
        assertThat(values)
                .filteredOn(v -> v.knowledge() == UncertainValue.Knowledge.ESTIMATED)
                .extracting(UncertainValue::path)
                .containsAll(estimated);
        assertThat(values).extracting(UncertainValue::path).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(strings = {"phaeton", "dray", "lorry", "van", "saloon", "trailer"})
    void everyUncertainValueCanBeMovedALittle(String name) {
        VehicleDocument document = VehicleDocument.read(VEHICLES.resolve(name + ".yaml"));
        List<String> stuck = new ArrayList<>();
        for (UncertainValue value : UncertainValues.of(document)) {
            if (value.at().apply(0.2).equals(document.asWritten())) {
                stuck.add(value.path());
            }
        }
        assertThat(stuck).isEmpty();
    }

    @Test
    void whatAFileLeavesOutStandsUnderTheKeyThatWouldGiveIt() {
        List<UncertainValue> values = UncertainValues.of(VehicleDocument.read(VEHICLES.resolve("phaeton.yaml")));
        assertThat(values)
                .filteredOn(v -> v.knowledge() == UncertainValue.Knowledge.LEFT_OUT)
                .extracting(UncertainValue::path)
                .contains(
                        "body.pitch inertia", "body.roll inertia", "seats[0].cushion.rate", "axles[0].roll axis height")
                .doesNotContain("axles[0].wheels.contact rate", "body.centre of mass.above ground");
    }

    @Test
    void aStifferBounceComesFromStifferSprings() {
        VehicleDocument document = VehicleDocument.read(VEHICLES.resolve("phaeton.yaml"));
        StandardRide ride = new StandardRide(document.asWritten());
        UncertainValue rate = UncertainValues.of(document).stream()
                .filter(v -> v.path().equals("axles[0].springs[0].rate"))
                .findFirst()
                .orElseThrow();
        List<Double> central = ride.of(document.asWritten());
        assertThat(central).allSatisfy(figure -> assertThat(figure).isPositive());
        assertThat(ride.of(rate.at().apply(1)).get(2)).isGreaterThan(central.get(2));
        assertThat(ride.of(rate.at().apply(-1)).get(2)).isLessThan(central.get(2));
    }
}
