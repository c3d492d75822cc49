package org.ridewright.why;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ridewright.io.VehicleDocument;
import org.ridewright.quantity.UnfitValueException;

class UsualSwapsTest {
    private static UsualSwaps of(String vehicle, String load) {
        VehicleDocument document = VehicleDocument.read(Path.of("../scenarios/vehicles/" + vehicle + ".yaml"));
        return UsualSwaps.of(document.asWritten(), document.values(), load);
    }

    private static List<String> names(UsualSwaps swaps) {
        return swaps.swaps().stream().map(Swap::name).toList();
    }

    @Test
    void aDrayHasEverythingButDampers() {
        UsualSwaps dray = of("dray", "laden");
        assertThat(names(dray))
                .containsExactly("friction", "wheel size", "tyres", "frame twist", "cushions", "place of the load");
        assertThat(dray.skipped()).extracting(Skipped::name).containsExactly("dampers");
    }

    @Test
    void aSaloonDoesNotTwistAndALoneDriverIsNoLoadThatCouldLieElsewhere() {
        UsualSwaps saloon = of("saloon", "driver");
        assertThat(names(saloon)).containsExactly("friction", "wheel size", "tyres", "cushions", "dampers");
        assertThat(saloon.skipped())
                .extracting(Skipped::name)
                .containsExactlyInAnyOrder("frame twist", "place of the load");
    }

    @Test
    void whereNobodySitsThereIsNoCushionToExchange() {
        UsualSwaps trailer = of("trailer", "laden");
        assertThat(trailer.skipped()).contains(new Skipped("cushions", "nobody sits on it"));
        assertThat(names(trailer)).contains("friction", "place of the load");
    }

    @Test
    void aUsersOwnAlternativeTakesThePlaceOfTheUsualOne() {
        Swap own =
                Swap.parse("friction: axles[*].springs[*].friction.constant = 0 N; axles[0].springs[0].rate = × 1.1");
        UsualSwaps swaps = of("dray", "laden").with(List.of(own), List.of("cushions"));
        assertThat(swaps.swaps().get(0)).isEqualTo(own);
        assertThat(own.changes())
                .containsExactly(
                        new Change("axles[*].springs[*].friction.constant", "0 N"),
                        new Change("axles[0].springs[0].rate", "× 1.1"));
        assertThat(names(swaps)).doesNotContain("cushions");
    }

    @Test
    void whatIsNoSwapOrNoIngredientIsRefusedWithWhatToWrite() {
        assertThatThrownBy(() -> Swap.parse("friction × 0.3"))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("NAME: PATH = VALUE");
        assertThatThrownBy(() -> of("dray", "laden").with(List.of(), List.of("paint")))
                .isInstanceOf(UnfitValueException.class)
                .hasMessageContaining("place of the load");
    }
}
