package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources and status of every number: seat_and_occupant.csv. */
class SeatedOccupantTest {
    private static final List<List<String>> ROWS = Iso2631Tables.resource("/reference/seat_and_occupant.csv");

    private static Map<String, Double> values(String model) {
        return ROWS.stream()
                .filter(row -> row.get(0).equals(model))
                .collect(Collectors.toMap(r -> r.get(1), r -> Double.parseDouble(r.get(2))));
    }

    static Stream<SeatedOccupant> models() {
        return SeatedOccupant.published().stream();
    }

    static Stream<String> cushions() {
        return ROWS.stream()
                .map(r -> r.get(0))
                .filter(m -> m.startsWith("seat"))
                .distinct();
    }

    /** Frequency (Hz) at which a function is greatest: a fine search, then one of thousandths. */
    private static double peakFrequency(DoubleUnaryOperator f) {
        double best = 0.5;
        for (double x = 0.5; x < 15; x += 0.01) {
            best = f.applyAsDouble(x) > f.applyAsDouble(best) ? x : best;
        }
        double middle = best;
        for (double x = middle - 0.01; x <= middle + 0.01; x += 1e-4) {
            best = f.applyAsDouble(x) > f.applyAsDouble(best) ? x : best;
        }
        return best;
    }

    @ParameterizedTest
    @MethodSource("models")
    void apparentMassPeaksWhereItWasComputedElsewhere(SeatedOccupant model) {
        Map<String, Double> row = values(model.name());
        double peak = peakFrequency(f -> model.apparentMass(f).norm());
        assertThat(peak).isEqualTo(row.get("AM_peak_frequency"), within(5e-3));
        assertThat(model.apparentMass(peak).norm()).isEqualTo(row.get("AM_peak"), within(1e-3 * row.get("AM_peak")));
    }

    @ParameterizedTest
    @MethodSource("models")
    void apparentMassIsTheMassAtRestAndTheFixedMassFarAbove(SeatedOccupant model) {
        assertThat(model.apparentMass(1e-4).norm()).isEqualTo(model.massOnSeat(), within(1e-4));
        assertThat(model.apparentMass(1e5).norm()).isEqualTo(model.fixedMass(), within(0.05));
    }

    @Test
    void parametersAreThePublishedOnes() {
        Map<String, Double> fg1 = values("FG1");
        OccupantStage body = SeatedOccupant.FG1.stages().get(0);
        assertThat(SeatedOccupant.FG1.fixedMass()).isEqualTo(fg1.get("m_fixed"));
        assertThat(body.mass()).isEqualTo(fg1.get("m_moving"));
        assertThat(body.stiffness()).isEqualTo(fg1.get("k"), within(0.05));
        assertThat(body.damping()).isEqualTo(fg1.get("c"), within(0.005));
        double w = Math.sqrt(body.stiffness() / body.mass());
        assertThat(w / (2 * Math.PI)).isEqualTo(fg1.get("f0"), within(1e-12));
        assertThat(body.damping() / (2 * body.mass() * w)).isEqualTo(fg1.get("zeta"), within(1e-12));
        assertThat(SeatedOccupant.FG1.apparentMass(0.5).norm()).isEqualTo(fg1.get("AM_at_0.5Hz"), within(0.05));

        assertStage(SeatedOccupant.WG1.stages().get(0), values("WG1"), "m_moving", "k", "c");
        assertThat(SeatedOccupant.WG1.fixedMass()).isEqualTo(values("WG1").get("m_fixed"));
        assertStage(SeatedOccupant.WG2.stages().get(0), values("WG2"), "m1", "k1", "c1");
        assertStage(SeatedOccupant.WG2.stages().get(1), values("WG2"), "m2", "k2", "c2");
        assertThat(SeatedOccupant.WG2.fixedMass()).isEqualTo(values("WG2").get("m_fixed"));

        Map<String, Double> iso = values("ISO5982");
        OccupantStage upper = SeatedOccupant.ISO_5982.stages().get(1);
        assertStage(SeatedOccupant.ISO_5982.stages().get(0), iso, "m1", "k1", "c1");
        assertStage(upper, iso, "m3", "k3", "c3");
        assertStage(upper.carried().get(0), iso, "m2_head", "k2", "c2");
        assertThat(SeatedOccupant.ISO_5982.fixedMass()).isEqualTo(iso.get("m0"));
    }

    private static void assertStage(OccupantStage stage, Map<String, Double> row, String m, String k, String c) {
        assertThat(List.of(stage.mass(), stage.stiffness(), stage.damping()))
                .containsExactly(row.get(m), row.get(k), row.get(c));
    }

    @Test
    void headOfTheTwoBranchModelMovesMostWhereItWasComputedElsewhere() {
        Map<String, Double> row = values("ISO5982");
        DoubleUnaryOperator head = f -> SeatedOccupant.ISO_5982
                .transmissibilityTo("head", f)
                .orElseThrow()
                .norm();
        double peak = peakFrequency(head);
        assertThat(peak).isEqualTo(row.get("head_T_peak_frequency"), within(5e-3));
        assertThat(head.applyAsDouble(peak)).isEqualTo(row.get("head_T_peak"), within(1.5e-3));
        assertThat(head.applyAsDouble(1e-3)).isEqualTo(1, within(1e-5));
        assertThat(SeatedOccupant.FG1.transmissibilityTo("head", 5)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("cushions")
    void cushionUnderThePersonLetsThroughWhatWasComputedElsewhere(String cushion) {
        Map<String, Double> row = values(cushion);
        DoubleUnaryOperator t = f -> SeatedOccupant.FG1
                .cushionTransmissibility(row.get("k"), row.get("c"), f)
                .norm();
        double peak = peakFrequency(t);
        assertThat(peak).isEqualTo(row.get("T_peak_frequency_with_FG1"), within(5e-3));
        assertThat(t.applyAsDouble(peak)).isEqualTo(row.get("T_peak_with_FG1"), within(1e-3 * 2.5));
        for (String f : List.of("1", "2", "4", "8", "16")) {
            double expected = row.get("T_with_FG1_at_" + f + "Hz");
            assertThat(t.applyAsDouble(Double.parseDouble(f))).isEqualTo(expected, within(1e-3 * expected));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 3.7, 12})
    void aRigidMassOnACushionIsTheTextbookOscillator(double f) {
        double r = f / 4;
        double m = 55;
        double w = 2 * Math.PI * 4;
        double zeta = 0.2;
        double exact =
                Math.sqrt((1 + Math.pow(2 * zeta * r, 2)) / (Math.pow(1 - r * r, 2) + Math.pow(2 * zeta * r, 2)));
        assertThat(SeatedOccupant.rigid(m)
                        .cushionTransmissibility(m * w * w, 2 * zeta * m * w, f)
                        .norm())
                .isEqualTo(exact, within(1e-12));
    }

    @Property(tries = 30)
    void aHeavierPersonOfTheSameBuildHasTheSameFrequencies(
            @ForAll @DoubleRange(min = 10, max = 200) double mass, @ForAll @DoubleRange(min = 0.2, max = 40) double f) {
        for (SeatedOccupant model : SeatedOccupant.published()) {
            SeatedOccupant scaled = model.scaledTo(mass);
            assertThat(scaled.massOnSeat()).isEqualTo(mass, within(1e-9));
            assertThat(scaled.apparentMass(f).norm() / mass)
                    .isEqualTo(model.apparentMass(f).norm() / model.massOnSeat(), within(1e-12));
        }
    }

    @Test
    void onlyWhatWasSeenIsCalledSeen() {
        assertThat(SeatedOccupant.FG1.provenance()).isEqualTo(SeatedOccupant.Provenance.PARTLY_SEEN);
        assertThat(models().skip(1).map(SeatedOccupant::provenance))
                .containsOnly(SeatedOccupant.Provenance.FROM_MEMORY);
    }

    @Test
    void impossiblePeopleAreRefused() {
        assertThatThrownBy(() -> SeatedOccupant.rigid(0)).hasMessageContaining("fixed mass");
        assertThatThrownBy(() -> new OccupantStage("body", -1, 1, 1)).hasMessageContaining("> 0");
        assertThatThrownBy(() -> SeatedOccupant.FG1.scaledTo(0)).hasMessageContaining("> 0 kg");
    }
}
