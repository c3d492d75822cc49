package org.ridewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One of each unit against the published definition; figures from memory. */
class UnitDefinitionsTest {
    /**
     * International yard and pound agreement of 1959, 1 yd = 0.9144 m and 1 lb = 0.45359237 kg; 3rd CGPM (1901), standard
     * gravity 9.80665 m/s²; their exact multiples. BIPM, SI Brochure, 9th ed., table 8: minute, hour, litre, tonne, degree.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            LENGTH       | yd     | 0.9144
            LENGTH       | ft     | 0.3048
            LENGTH       | in     | 0.0254
            LENGTH       | mi     | 1609.344
            LENGTH       | thou   | 2.54e-5
            AREA         | in²    | 6.4516e-4
            AREA         | ft²    | 0.09290304
            VOLUME       | in³    | 1.6387064e-5
            VOLUME       | l      | 0.001
            MASS         | lb     | 0.45359237
            MASS         | oz     | 0.028349523125
            MASS         | st     | 6.35029318
            MASS         | qr     | 12.70058636
            MASS         | cwt    | 50.80234544
            MASS         | ton    | 1016.0469088
            MASS         | t      | 1000
            TIME         | min    | 60
            TIME         | h      | 3600
            SPEED        | mph    | 0.44704
            SPEED        | ft/s   | 0.3048
            ACCELERATION | g      | 9.80665
            ACCELERATION | ft/s²  | 0.3048
            FORCE        | lbf    | 4.4482216152605
            FORCE        | kgf    | 9.80665
            PRESSURE     | bar    | 1e5
            PRESSURE     | kgf/cm²| 98066.5
            RATE         | kgf/mm | 9806.65
            ANGLE        | deg    | 0.017453292519943295
            """)
    void exactDefinitionsHoldToTheLastBit(QuantityKind kind, String unit, double si) {
        assertThat(Measures.parse("1 " + unit, kind).value()).isEqualTo(si);
    }

    /** NIST SP 811 (2008), appendix B.8, seven figures. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PRESSURE | psi    | 6.894757e3
            RATE     | lbf/in | 1.751268e2
            TORQUE   | lbf ft | 1.355818
            TORQUE   | lbf in | 1.129848e-1
            INERTIA  | lb ft² | 4.214011e-2
            INERTIA  | lb in² | 2.926397e-4
            FORCE    | tonf   | 9.964016e3
            SPEED    | km/h   | 2.777778e-1
            """)
    void derivedFactorsAgreeWithTheTable(QuantityKind kind, String unit, double si) {
        assertThat(Measures.parse("1 " + unit, kind).value()).isCloseTo(si, within(5.1e-7 * si));
    }
}
