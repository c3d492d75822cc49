package org.ridewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What people write is read as they mean it. */
class MeasuresTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            LENGTH       | 1.12 m               | 1.12
            LENGTH       | 1120mm               | 1.12
            LENGTH       | -0.4 m               | -0.4
            LENGTH       | +0.4 m               | 0.4
            LENGTH       | 1e3 mm               | 1
            LENGTH       | 44 1/2 in            | 1.1303
            LENGTH       | 44-1/2 in.           | 1.1303
            LENGTH       | 44½ in               | 1.1303
            LENGTH       | 7/8 in               | 0.022225
            LENGTH       | ⅞ in                 | 0.022225
            LENGTH       | 7⁄8 in               | 0.022225
            LENGTH       | 3 ft 8 in            | 1.1176
            LENGTH       | 3 ft 8 1/2 in        | 1.1303
            LENGTH       | 3ft8in               | 1.1176
            LENGTH       | 3' 8"                | 1.1176
            LENGTH       | 3′8½″                | 1.1303
            LENGTH       | -3 ft 6 in           | -1.0668
            LENGTH       | 1 m 20 cm            | 1.2
            LENGTH       | 0                    | 0
            AREA         | 32 cm²               | 0.0032
            AREA         | 32 cm2               | 0.0032
            AREA         | 32 cm^2              | 0.0032
            AREA         | 5 sq in              | 0.0032258
            VOLUME       | 1.2 litre            | 0.0012
            VOLUME       | 21 cu. in            | 3.44128344e-4
            MASS         | 500 g                | 0.5
            MASS         | 12 st 4 lb           | 78.01788764
            MASS         | 2 cwt 1 qr 14 lb     | 120.65557042
            MASS         | 1 ton                | 1016.0469088
            MASS         | 1 t                  | 1000
            TIME         | 1 min 30 s           | 90
            SPEED        | 90 km/h              | 25
            SPEED        | 90 kph               | 25
            SPEED        | 30 mph               | 13.4112
            SPEED        | 30 miles per hour    | 13.4112
            ACCELERATION | 1 g                  | 9.80665
            ACCELERATION | 10 m s⁻²             | 10
            FREQUENCY    | 90 1/min             | 1.5
            FREQUENCY    | 90 cycles/min        | 1.5
            FREQUENCY    | 90 rpm               | 1.5
            ANGLE        | 180°                 | 3.141592653589793
            ANGLE        | 44 mrad              | 0.044
            FORCE        | 410 kg               | 4020.7265
            FORCE        | 1 tonf               | 9964.01641818352
            FORCE        | 1 cwt 1 qr           | 622.75102613647
            TORQUE       | 120 Nm               | 120
            TORQUE       | 120 N*m              | 120
            TORQUE       | 12 kgf m             | 117.6798
            PRESSURE     | 2.2 bar              | 220000
            PRESSURE     | 1200 N/mm²           | 1.2e9
            RATE         | 21 N/mm              | 21000
            RATE         | 2 kg/mm              | 19613.3
            RATE         | 20 kg/cm             | 19613.3
            ROLL_RATE    | 20 kN m/rad          | 20000
            ROLL_RATE    | 1 N m/deg            | 57.29577951308232
            DAMPING      | 1500 N·s/m           | 1500
            DAMPING      | 1500 Ns/m            | 1500
            DAMPING      | 1.5 N/(mm/s)         | 1500
            ROLL_DAMPING | 900 N m/(rad/s)      | 900
            INERTIA      | 1800 kgm²            | 1800
            INERTIA      | 1 lb ft²             | 0.0421401100938048
            RATIO        | 6 %                  | 0.06
            RATIO        | 0.06                 | 0.06
            RATIO        | 7/8                  | 0.875
            """)
    void anAmountIsReadInSi(QuantityKind kind, String text, double expected) {
        Measure measure = Measures.parse(text, kind);
        assertThat(measure.value()).isCloseTo(expected, within(1e-12 * Math.abs(expected)));
        assertThat(measure.tolerance()).isZero();
        assertThat(measure.provenance()).isEqualTo(Provenance.NOT_STATED);
        assertThat(measure.written()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            LENGTH | 1.12 m ± 5 mm                | 1.12    | 0.005  | NOT_STATED
            LENGTH | 1.12 m +/- 5 mm (measured)   | 1.12    | 0.005  | MEASURED
            LENGTH | 1.12 m +- 5 mm, Measured     | 1.12    | 0.005  | MEASURED
            LENGTH | 1.12 m ± 10 % (drawing)      | 1.12    | 0.112  | DRAWING
            LENGTH | -1.12 m ± 10 %               | -1.12   | 0.112  | NOT_STATED
            LENGTH | 0.1 m ± 0.2 m                | 0.1     | 0.2    | NOT_STATED
            LENGTH | 3' 8" ± ¼"                   | 1.1176  | 0.00635| NOT_STATED
            LENGTH | 3 ft 8 ± 1/2 in              | 1.1176  | 0.0127 | NOT_STATED
            LENGTH | 0 ± 5 mm                     | 0       | 0.005  | NOT_STATED
            MASS   | 410 kg ± 5 kg (weighed)      | 410     | 5      | WEIGHED
            RATE   | 21 ± 2 N/mm (calibrated)     | 21000   | 2000   | CALIBRATED
            RATE   | 21 N/mm ± 2                  | 21000   | 2000   | NOT_STATED
            DAMPING| 1.5 N/(mm/s) (handbook)      | 1500    | 0      | HANDBOOK
            FORCE  | 410 kg ± 10 kg               | 4020.7265 | 98.0665 | NOT_STATED
            RATIO  | 0.06 ± 10 % (estimated)      | 0.06    | 0.006  | ESTIMATED
            RATIO  | 6 % ± 1                      | 0.06    | 0.01   | NOT_STATED
            RATIO  | 12, counted                  | 12      | 0      | COUNTED
            """)
    void toleranceAndProvenanceFollow(
            QuantityKind kind, String text, double value, double tolerance, Provenance provenance) {
        Measure measure = Measures.parse(text, kind);
        assertThat(measure.value()).isCloseTo(value, within(1e-12 * Math.abs(value)));
        assertThat(measure.tolerance()).isCloseTo(tolerance, within(1e-12 * tolerance));
        assertThat(measure.provenance()).isEqualTo(provenance);
    }

    @ParameterizedTest
    @EnumSource
    void everyFormAndUnitOfferedIsAccepted(QuantityKind kind) {
        assertThat(Measures.acceptedForms(kind)).hasSizeGreaterThanOrEqualTo(3);
        for (String form : Measures.acceptedForms(kind)) {
            assertThat(Measures.parse(form, kind).value()).as(form).isPositive();
        }
        for (String unit : Measures.acceptedUnits(kind)) {
            assertThat(Measures.parse("2 " + unit, kind).value())
                    .as(unit)
                    .isEqualTo(2 * Measures.parse("1 " + unit, kind).value());
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSiUnitOfAKindIsWorthOne(QuantityKind kind) {
        String unit = kind == QuantityKind.RATIO ? "" : " " + kind.siUnit();
        assertThat(Measures.parse("1" + unit, kind).value()).isEqualTo(1);
    }

    @Test
    void aSumEqualsTheSameLengthInOneUnitToTheLastBit() {
        assertThat(Measures.parse("3 ft 8 1/2 in", QuantityKind.LENGTH).value())
                .isEqualTo(Measures.parse("44.5 in", QuantityKind.LENGTH).value());
    }

    @Test
    void massInAForceIsItsWeight() {
        assertThat(Measures.parse("120 lb/in", QuantityKind.RATE).value())
                .isEqualTo(Measures.parse("120 lbf/in", QuantityKind.RATE).value());
        assertThat(Measures.parse("32 lb/in²", QuantityKind.PRESSURE).value())
                .isEqualTo(Measures.parse("32 psi", QuantityKind.PRESSURE).value());
        assertThat(Measures.parse("90 lb ft", QuantityKind.TORQUE).value())
                .isEqualTo(Measures.parse("90 lbf ft", QuantityKind.TORQUE).value());
    }

    @Test
    void massPerTimeIsADampingAsItStands() {
        assertThat(Measures.parse("5 kg/s", QuantityKind.DAMPING).value()).isEqualTo(5);
    }
}
