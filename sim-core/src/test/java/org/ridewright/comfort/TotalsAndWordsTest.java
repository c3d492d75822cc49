package org.ridewright.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.ridewright.comfort.Discomfort.A_LITTLE_UNCOMFORTABLE;
import static org.ridewright.comfort.Discomfort.EXTREMELY_UNCOMFORTABLE;
import static org.ridewright.comfort.Discomfort.FAIRLY_UNCOMFORTABLE;
import static org.ridewright.comfort.Discomfort.NOT_UNCOMFORTABLE;
import static org.ridewright.comfort.Discomfort.UNCOMFORTABLE;
import static org.ridewright.comfort.Discomfort.VERY_UNCOMFORTABLE;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Constants: ISO 2631-1:1997, clause named in each row of criteria.csv; rows marked memory are from memory. */
class TotalsAndWordsTest {
    private static final Map<String, Axis> AXES =
            Map.of("x", Axis.X, "y", Axis.Y, "z", Axis.Z, "rx", Axis.ROLL, "ry", Axis.PITCH, "rz", Axis.YAW);
    private static final Map<String, Position> POSITIONS =
            Map.of("seat", Position.SEAT, "back", Position.BACKREST, "feet", Position.FEET);

    static Stream<List<String>> group(String name) {
        return Iso2631Tables.rows("criteria.csv").stream()
                .filter(row -> row.get(0).startsWith(name));
    }

    static Stream<List<String>> factors() {
        // the 1.4 for seats whose backrest is not measured is no factor of an axis alone
        return group("comfort_k").filter(row -> !row.get(1).contains("when"));
    }

    static Stream<List<String>> bands() {
        return group("comfort_band");
    }

    @ParameterizedTest
    @MethodSource("factors")
    void everyPositionAndAxisHasTheStandardsWeightingAndFactor(List<String> row) {
        String[] parts = row.get(1).split("_", -1);
        Position position = POSITIONS.get(parts[0]);
        Axis axis = AXES.get(parts[1]);
        assertThat(position.weighting(axis).symbol()).isEqualTo(parts[2]);
        assertThat(position.factor(axis)).isEqualTo(Double.parseDouble(row.get(2)));
    }

    @Test
    void thereAreTwelveFactorsAndNoMore() {
        assertThat(factors()).hasSize(12);
        long rules = Stream.of(Position.values())
                .flatMap(p -> Stream.of(Axis.values()).filter(a -> p.rule(a).isPresent()))
                .count();
        assertThat(rules).isEqualTo(12);
        assertThatThrownBy(() -> Position.FEET.factor(Axis.ROLL)).hasMessageContaining("axis ROLL at position FEET");
    }

    @ParameterizedTest
    @MethodSource("bands")
    void bandEndsAreTheStandards(List<String> row) {
        Discomfort word = Discomfort.valueOf(row.get(1).toUpperCase(Locale.ROOT));
        double end = row.get(0).endsWith("upper") ? word.upper() : word.lower();
        assertThat(end).isEqualTo(Double.parseDouble(row.get(2)));
        assertThat(word.label()).isEqualTo(row.get(1).replace('_', ' '));
    }

    @Test
    void limitsOfTheFurtherValuesAreTheStandards() {
        Map<String, Double> limits = group("additional_eval")
                .collect(java.util.stream.Collectors.toMap(r -> r.get(1), r -> Double.parseDouble(r.get(2))));
        assertThat(VibrationMetrics.CREST_FACTOR_LIMIT).isEqualTo(limits.get("crest_factor_limit"));
        assertThat(VibrationMetrics.MTVV_RATIO_LIMIT).isEqualTo(limits.get("MTVV_over_aw"));
        assertThat(VibrationMetrics.VDV_RATIO_LIMIT).isEqualTo(limits.get("VDV_over_aw_T^(1/4)"));
        assertThat(RunningRms.INTEGRATION_TIME).isEqualTo(limits.get("MTVV_integration_time"));
        assertThat(VibrationMetrics.ESTIMATED_VDV_FACTOR)
                .isEqualTo(limits.get("eVDV_coefficient_(eVDV=1.4*aw*T^(1/4))"));
    }

    static Stream<List<String>> healthFactors() {
        return group("health_k");
    }

    @ParameterizedTest
    @MethodSource("healthFactors")
    void factorsForHealthAreTheStandards(List<String> row) {
        String[] parts = row.get(1).split("_", -1);
        Axis axis = AXES.get(parts[1]);
        assertThat(Position.SEAT.weighting(axis).symbol()).isEqualTo(parts[2]);
        assertThat(DailyExposure.factor(axis)).isEqualTo(Double.parseDouble(row.get(2)));
    }

    @Test
    void thresholdsAndDurationAreTheDirectives() {
        Map<String, Double> directive = values("eu_2002_44");
        assertThat(ExposureThreshold.DIRECTIVE_ACTION.eightHours()).isEqualTo(directive.get("wbv_action_A8"));
        assertThat(ExposureThreshold.DIRECTIVE_LIMIT.eightHours()).isEqualTo(directive.get("wbv_limit_A8"));
        assertThat(ExposureThreshold.DIRECTIVE_ACTION.dose()).isEqualTo(directive.get("wbv_action_VDV"));
        assertThat(ExposureThreshold.DIRECTIVE_LIMIT.dose()).isEqualTo(directive.get("wbv_limit_VDV"));
        assertThat(DailyExposure.REFERENCE_DURATION).isEqualTo(directive.get("reference_duration"));
        assertThat(DailyExposure.factor(Axis.X)).isEqualTo(directive.get("k_x_y"));
        assertThat(DailyExposure.factor(Axis.Y)).isEqualTo(directive.get("k_x_y"));
        assertThat(DailyExposure.factor(Axis.Z)).isEqualTo(directive.get("k_z"));
    }

    @Test
    void healthGuidanceZonePerceptionAndSicknessAreTheStandards() {
        Map<String, Double> zone = values("health_zone");
        assertThat(ExposureThreshold.GUIDANCE_LOWER.eightHours()).isEqualTo(zone.get("A8_lower_8h"));
        assertThat(ExposureThreshold.GUIDANCE_UPPER.eightHours()).isEqualTo(zone.get("A8_upper_8h"));
        assertThat(ExposureThreshold.GUIDANCE_LOWER.dose()).isEqualTo(zone.get("VDV_lower"));
        assertThat(ExposureThreshold.GUIDANCE_UPPER.dose()).isEqualTo(zone.get("VDV_upper"));
        assertThat(VibrationMetrics.PERCEPTION_THRESHOLD)
                .isEqualTo(values("perception").get("median_threshold_peak_Wk"));
        assertThat(MotionSickness.KM)
                .isEqualTo(values("motion_sickness").get("Km_(vomit_percent=Km*MSDVz)"), within(5e-5));
        assertThat(VibrationTotal.FACTOR_WITHOUT_BACKREST)
                .isEqualTo(values("comfort_k").get("seat_x_y_when_backrest_not_measured_Wd"));
    }

    private static Map<String, Double> values(String group) {
        return group(group)
                .collect(java.util.stream.Collectors.toMap(r -> r.get(1), r -> Double.parseDouble(r.get(2))));
    }

    @Test
    void likelihoodNamesBothWordsWhereBandsOverlap() {
        assertThat(Discomfort.likely(0.7)).isEqualTo("likely to be called fairly uncomfortable");
        assertThat(Discomfort.likely(0.9))
                .isEqualTo("likely to be called fairly uncomfortable by some, uncomfortable by others");
    }

    @Test
    void aSeatWithoutBackrestCountsTheHorizontalAxesMore() {
        Map<Axis, Double> rms = Map.of(Axis.X, 0.3, Axis.Y, 0.4, Axis.Z, 1.2);
        // 1.96 (0.09 + 0.16) + 1.44
        assertThat(VibrationTotal.ofSeatWithoutBackrest(rms)).isEqualTo(Math.sqrt(1.93), within(1e-12));
    }

    @Test
    void overlappingBandsGiveTwoWords() {
        assertThat(Discomfort.words(0)).containsExactly(NOT_UNCOMFORTABLE);
        assertThat(Discomfort.words(0.315)).containsExactly(A_LITTLE_UNCOMFORTABLE);
        assertThat(Discomfort.words(0.55)).containsExactly(A_LITTLE_UNCOMFORTABLE, FAIRLY_UNCOMFORTABLE);
        assertThat(Discomfort.words(0.7)).containsExactly(FAIRLY_UNCOMFORTABLE);
        assertThat(Discomfort.words(0.9)).containsExactly(FAIRLY_UNCOMFORTABLE, UNCOMFORTABLE);
        assertThat(Discomfort.words(1.4)).containsExactly(UNCOMFORTABLE, VERY_UNCOMFORTABLE);
        assertThat(Discomfort.words(2)).containsExactly(VERY_UNCOMFORTABLE);
        assertThat(Discomfort.words(2.2)).containsExactly(VERY_UNCOMFORTABLE, EXTREMELY_UNCOMFORTABLE);
        assertThat(Discomfort.words(40)).containsExactly(EXTREMELY_UNCOMFORTABLE);
        assertThatThrownBy(() -> Discomfort.words(-1)).hasMessageContaining("a_v must be ≥ 0 m/s²");
    }

    @Test
    void everyValueHasAWord() {
        for (double a = 0; a < 4; a += 0.001) {
            assertThat(Discomfort.words(a)).isNotEmpty();
        }
    }

    @Test
    void totalsAddSquaresWithTheirFactors() {
        Map<Axis, Double> rms = Map.of(Axis.X, 0.3, Axis.Y, 0.4, Axis.Z, 1.2);
        // 0.09 + 0.16 + 1.44 = 1.3²
        assertThat(VibrationTotal.ofPoint(Position.SEAT, rms)).isEqualTo(1.3, within(1e-12));
        // (0.25·0.3)² + (0.25·0.4)² + (0.4·1.2)² = 0.015625 + 0.2304
        double feet = VibrationTotal.ofPoint(Position.FEET, rms);
        assertThat(feet).isEqualTo(Math.sqrt(0.246025), within(1e-12));
        assertThat(VibrationTotal.overall(List.of(1.3, feet))).isEqualTo(Math.sqrt(1.69 + 0.246025), within(1e-12));
        assertThatThrownBy(() -> VibrationTotal.ofPoint(Position.SEAT, Map.of(Axis.X, -1.0)))
                .hasMessageContaining("a_w must be ≥ 0")
                .hasMessageContaining("axis X");
        assertThatThrownBy(() -> VibrationTotal.overall(List.of())).hasMessageContaining("at least 1 point");
    }
}
