package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What stands side by side was ridden alike. */
class SameTestsTest {
    private static Variant variant(String name, Map<String, String> texts) {
        return new Variant(name, new NoScenario(), texts);
    }

    private static List<String> test(String vehicle, String load, String road, String speed) {
        return List.of(vehicle, load, road, speed);
    }

    @Test
    void vehiclesWithUnlikeSpeedsMeetAtTheSpeedsThatBothHave() {
        SameTests same = new SameTests(
                Method.By.VEHICLES,
                List.of(variant("as written", Map.of())),
                List.of(List.of(
                        test("dray", "laden", "low", "8 km/h"),
                        test("dray", "laden", "high", "8 km/h"),
                        test("saloon", "driver", "low", "8 km/h"),
                        test("saloon", "driver", "low", "20 km/h"),
                        test("saloon", "driver", "high", "8 km/h"),
                        test("saloon", "driver", "high", "20 km/h"))));

        assertThat(same.rows()).containsExactly(test("", "", "low", "8 km/h"), test("", "", "high", "8 km/h"));
        assertThat(same.place(0, 1)).containsExactly(0, 1);
        assertThat(same.place(0, 4))
                .as("the saloon on the high road beside the dray on it")
                .containsExactly(1, 1);
        assertThat(same.place(0, 3)).isNull();
        assertThat(same.leftOut())
                .containsExactly(
                        test("saloon", "driver", "low", "20 km/h"), test("saloon", "driver", "high", "20 km/h"));
    }

    @Test
    void loadCasesOfOneVehicleAreNotPutBesideThoseOfAnother() {
        SameTests same = new SameTests(
                Method.By.LOAD_CASES,
                List.of(variant("as written", Map.of())),
                List.of(List.of(
                        test("dray", "empty", "lane", "8 km/h"),
                        test("dray", "laden", "lane", "8 km/h"),
                        test("saloon", "driver", "lane", "8 km/h"))));

        assertThat(same.rows()).containsExactly(test("dray", "", "lane", "8 km/h"));
        assertThat(same.leftOut()).containsExactly(test("saloon", "driver", "lane", "8 km/h"));
    }

    @Test
    void variantsOfTheSpeedAreComparedAcrossIt() {
        SameTests same = new SameTests(
                Method.By.VARIANTS,
                List.of(
                        variant("slow", Map.of("vehicles[*].speeds[0]", "8 km/h")),
                        variant("fast", Map.of("vehicles[*].speeds[0]", "12 km/h"))),
                List.of(
                        List.of(test("dray", "laden", "lane", "8 km/h"), test("dray", "laden", "lane", "16 km/h")),
                        List.of(test("dray", "laden", "lane", "12 km/h"), test("dray", "laden", "lane", "16 km/h"))));

        assertThat(same.rows()).hasSize(2);
        assertThat(same.place(1, 0)).containsExactly(1, 0);
        assertThat(same.leftOut()).isEmpty();
    }

    @Test
    void aVariantWithFewerLoadCasesIsComparedInThoseThatItHas() {
        SameTests same = new SameTests(
                Method.By.VARIANTS,
                List.of(variant("both", Map.of()), variant("one", Map.of("vehicles[0].load cases", "[laden]"))),
                List.of(
                        List.of(test("dray", "empty", "lane", "8 km/h"), test("dray", "laden", "lane", "8 km/h")),
                        List.of(test("dray", "laden", "lane", "8 km/h"))));

        assertThat(same.rows()).hasSize(1);
        assertThat(same.place(0, 1)).containsExactly(0, 0);
        assertThat(same.place(1, 0)).containsExactly(1, 0);
        assertThat(same.leftOut()).containsExactly(test("dray", "empty", "lane", "8 km/h"));
    }

    @Test
    void variantsOfAnotherVehicleAreComparedWhateverItIsCalled() {
        SameTests same = new SameTests(
                Method.By.VARIANTS,
                List.of(variant("old", Map.of()), variant("new", Map.of())),
                List.of(
                        List.of(test("dray", "laden", "lane", "8 km/h")),
                        List.of(test("van", "driver", "lane", "8 km/h"))));

        assertThat(same.rows()).containsExactly(test("", "", "lane", "8 km/h"));
    }
}
