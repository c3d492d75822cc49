package org.ridewright.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample with every fact, damaged in one place: the damage is named with its place, and with a remedy. */
class DamagedMeasurementsTest {
    private static final String WHOLE = SampleFiles.text(SampleFiles.at("measurements/every-fact.yaml"));

    @TempDir
    private Path folder;

    /** What is replaced by what, and pieces of the message. */
    static Stream<Arguments> damages() {
        return Stream.of(
                damage("measurements: Everything at once", "measurments: Everything", "write measurements"),
                damage("../vehicles/dray.yaml", "../vehicles/drey.yaml", "is not there", "write ../vehicles/dray.yaml"),
                damage("vehicle: ../vehicles/dray.yaml", "vehicle: ../vehicles", "is a folder"),
                damage("everything estimated", "[axles]", "unknowns[0]", "no single value of the file"),
                damage("everything estimated", "[layout]", "unknowns[0]", "no single value"),
                damage("everything estimated", "[vehicle]", "unknowns[0]", "is no value that a measurement could find"),
                damage("everything estimated", "\n  - axles[fore].springs[0].rates", "write axles[0].springs[0].rate"),
                damage("  - weights:", "  - wieghts:", "write weights"),
                damage(
                        "{with: empty, lifted: fore",
                        "{with: emty, lifted: fore",
                        "not the name of a load case",
                        "write empty"),
                damage("{axle: fore, shows: 500 kg}", "{axle: front, shows: 500 kg}", "not the name of an axle"),
                damage("shows: 500 kg", "shows: 500", "facts[0].weights.scales[0].shows", "has no unit"),
                damage("shows: 500 kg", "shows: 500 mm", "mass expected, got a length"),
                damage("shows: 500 kg", "shows: -500 kg", "is negative"),
                damage("{axle: fore, shows: 500 kg}", "{hitch: pole, shows: 50 kg}", "no hitch"),
                damage("hind, side: right", "hind, side: left", "was weighed already"),
                damage("hind, side: right", "hind, side: offside", "is not a side", "left or right"),
                damage("by: 30 in", "by: 30 m", "more than the axles' distance allows"),
                damage("other axle then: 520 kg", "other axle then: 1520 kg", "is not less than the mass of all"),
                damage(
                        "{with: empty, lifted: fore, by: 30 in, other axle level: 429 kg, ",
                        "{with: laden, lifted: fore, by: 30 in, ",
                        "other axle level: is missing",
                        "a fact 'weights' of all axles with the same load"),
                damage("springs: free", "springs: soft", "blocked or free"),
                damage(", springs: free", "", "springs: is missing"),
                damage("in: 27 s", "in: 20 s", "even a point at the end of that arm takes longer"),
                damage("hung: pendulum, arm: 1.2 m", "hung: pendulum, wire: 1.2 m", "is no length of a part hung on"),
                damage("about: pitch", "about: spin", "is an axis of a wheel"),
                damage("wire: 2 m, apart: 1 m", "wire: 2 cm, apart: 1 m", "does not reach"),
                damage("swings: 10, in: 27 s", "swings: 10.5, in: 27 s", "is not a count"),
                damage("spring: fore springs\n", "spring: for springs\n", "write fore springs"),
                damage("[100 kg, 12 mm], [200 kg, 24 mm]", "[100 kg, 12 mm, 3 mm], [200 kg, 24 mm]", "has 3 values"),
                damage("[100 kg, 12 mm], [200 kg, 24 mm]", "[100 kg, 12], [200 kg, 24 mm]", "12 has no unit"),
                damage(
                        "[300 kg, 36 mm], [200 kg, 26 mm], [100 kg, 14 mm], [0 kg, 1 mm]]",
                        "[300 kg, 36 mm]]",
                        "3 steps of loading and 0 of unloading"),
                damage(
                        "[100 kg, 12 mm], [200 kg, 24 mm], [300 kg, 36 mm], [200 kg, 26 mm], [100 kg, 14 mm]",
                        "[100 kg, -12 mm], [200 kg, -24 mm], [300 kg, -36 mm], [200 kg, -26 mm], [100 kg, -14 mm]",
                        "deflection does not grow with load"),
                damage("[200 kg, 24 mm]", "[200 kg, 24 m]", "is more than 1 m"),
                damage("heights: [900 mm, 901 mm, 1010 mm]", "heights: [900 mm, 901 mm]", "2 heights for 3 marks"),
                damage("heights: [900 mm, 901 mm, 1010 mm]", "height: [900 mm]", "write heights"),
                damage(
                        "[{axle: fore, side: left}, {axle: fore, side: right}",
                        "[{axle: fore, side: left}, {axle: fore, side: left}",
                        "is marked already"),
                damage("900 mm, 901 mm", "900 m, 901 mm", "is more than 5 m"),
                damage(
                        "at: [{axle: fore, side: left}, {axle: fore, side: right}, {name: tail, place: {behind front axle: 2.6 m, right of centre: 0.2 m}}]",
                        "at: all corners",
                        "stands where a list should"),
                damage(
                        "settled from above: [893 mm, 892 mm",
                        "settled from above: [853 mm, 852 mm",
                        "is lower than settled from below",
                        "exchange the two"),
                damage(
                        "loaded: 150 mm, load: 400 kg",
                        "loaded: 250 mm, load: 400 kg",
                        "is not less than the free camber"),
                damage("load: 400 kg}", "load: 400 kg, with: laden}", "is given beside 'load'"),
                damage("cycles: 5, in: 2.4 s", "cycles: 5, in: 24 min", "Hz of 5 cycles"),
                damage("cycles: 5, in: 2.4 s", "cycles: 0, in: 2.4 s", "is zero"),
                damage("cycles to rest: 6", "cycles to rest: 3", "less than the cycles that were counted"),
                damage("test: front", "test: sideways", "is not a bounce test"),
                damage("keep back: yes", "keep back: perhaps", "is not a yes or no"),
                damage("file: dray-phone.csv, axle: hind", "file: dray-phon.csv, axle: hind", "write dray-phone.csv"),
                damage("from: 1 s, to: 20 s", "from: 21 s, to: 20 s", "is not after the beginning"),
                damage(
                        "file: dray-phone.csv, axle: hind",
                        "file: dray-phone.csv, z: up, axle: hind",
                        "dray-phone.csv:"),
                damage("seat: driver's place, gravity", "seat: drivers seat, gravity", "is not the name of a seat"),
                damage(
                        "file: dray-phone.csv, axle: hind, side: left",
                        "file: dray-phone.csv, seat: driver's place, side: left",
                        "stands without 'axle'"),
                damage("road: yard", "road: lane", "is not the name of a road", "yard"),
                damage("speed: 9 km/h ± 0.2 km/h", "speed: 9 Hz", "speed expected, got a frequency"),
                damage("step frequency: 1.6 Hz", "step frequency: 16 Hz", "is more than 6"),
                damage("{step frequency: 1.6 Hz}", "{}", "step frequency: is missing"),
                damage("with: empty, seat: driver's place", "with: empty, seat: mate's place", "is empty with 'empty'"),
                damage("said: \"soft as a bed\", ", "", "said: is missing"),
                damage("name: rocked by two, ", "name: rocked by two, nmae: x, ", "is not a key of"));
    }

    private static Arguments damage(String whole, String damaged, String... said) {
        return arguments(whole, damaged, List.of(said));
    }

    @Test
    void aVehicleThatIsNotThereIsTheOnlyFaultEvenOfFourCorners() throws IOException {
        Path file = Files.writeString(folder.resolve("yard.yaml"), """
                measurements: Yard
                vehicle: nowhere.yaml
                facts:
                  - heights:
                      at: four corners
                      steps: [{with: empty, heights: [800 mm, 801 mm, 802 mm, 803 mm]}]
                """);

        InputException refusal = catchThrowableOfType(InputException.class, () -> MeasurementsFile.read(file));

        assertThat(refusal.problems()).hasSize(1);
        assertThat(refusal.problems().get(0).toString()).contains("nowhere.yaml");
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource("damages")
    void isRefusedWithPlaceAndRemedy(String whole, String damaged, List<String> said) throws IOException {
        assertThat(WHOLE).contains(whole);
        Path file = MeasurementsSample.in(folder, WHOLE.replace(whole, damaged));

        InputException refusal = catchThrowableOfType(InputException.class, () -> MeasurementsFile.read(file));

        assertThat(refusal).as("nothing was found wrong").isNotNull();
        assertThat(refusal.getMessage()).contains(said);
        assertThat(refusal.problems()).allSatisfy(problem -> {
            assertThat(problem.line()).as(problem.render()).isPositive();
            assertThat(problem.fix()).as(problem.render()).isNotEmpty();
        });
    }

    @Test
    void everythingWrongIsToldAtOnce() throws IOException {
        Path file = MeasurementsSample.in(
                folder,
                WHOLE.replace("by: 30 in", "by: 30 m")
                        .replace("cycles: 5", "cycles: none")
                        .replace("yard\n", "lane\n"));

        InputException refusal = catchThrowableOfType(InputException.class, () -> MeasurementsFile.read(file));

        assertThat(refusal.problems()).hasSize(3);
    }

    @Test
    void aFileWithoutFactsIsRefused() throws IOException {
        Path file = MeasurementsSample.in(folder, "measurements: Nothing yet\nvehicle: ../vehicles/dray.yaml\n");

        InputException refusal = catchThrowableOfType(InputException.class, () -> MeasurementsFile.read(file));

        assertThat(refusal).hasMessageContaining("facts: is missing");
        assertThat(refusal.problems()).hasSize(1);
    }
}
