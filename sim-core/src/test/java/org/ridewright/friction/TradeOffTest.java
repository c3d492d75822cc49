package org.ridewright.friction;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ridewright.io.VehicleDocument;

class TradeOffTest {
    /** One wheel under a body, of which every value is known exactly. */
    private static final String QUARTER = """
            vehicle: Quarter
            layout: quarter
            body: {mass: 300 kg}
            axles:
              - unsprung mass: 40 kg
                wheels: {diameter: 0.6 m, tyre: pneumatic, path: disc, contact rate: 180 kN/m, contact damping: 300 N s/m}
                springs: [{name: leaf, kind: half-elliptic leaf, rate: 20 kN/m, friction: {share of load: 0.06}}]
            load cases: [{name: empty, aboard: []}]
            """;

    private static TradeOff traded(Path file) {
        VehicleDocument document = VehicleDocument.read(file);
        return TradeOff.of(new VehicleDraws(document, document.spread()), "empty", List.of(4.0), 2, (done, of) -> {});
    }

    @Test
    void theNumbersAreTheSameToTheLastBitOnOneThreadAndOnSeveral(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("quarter.yaml"), QUARTER);
        TradeOff one = new ForkJoinPool(1).submit(() -> traded(file)).get();
        TradeOff several = new ForkJoinPool(4).submit(() -> traded(file)).get();
        assertThat(several.lines()).hasSameSizeAs(one.lines()).isNotEmpty();
        for (int i = 0; i < one.lines().size(); i++) {
            assertThat(several.lines().get(i).values())
                    .isDeepEqualTo(one.lines().get(i).values());
        }
    }

    @Test
    void drawsOfAVehicleKnownExactlyDifferByTheirRandomRoadsAlone(@TempDir Path folder) throws Exception {
        TradeOff trade = traded(Files.writeString(folder.resolve("quarter.yaml"), QUARTER));
        assertThat(trade.uncertain()).isZero();
        double[][] plank = trade.lines(Criterion.PLANK_PEAK, "plank").get(0).values();
        assertThat(plank[1]).isEqualTo(plank[0]);
        double[][] gravel = trade.lines(Criterion.WEIGHTED, "gravel").get(0).values();
        for (int f = 0; f < gravel[0].length; f++) {
            assertThat(gravel[1][f]).isNotEqualTo(gravel[0][f]);
        }
    }
}
