package org.ridewright.fieldwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The weights are made by turning the vehicle's points about the wheel that stays down and taking moments. */
class CentreHeightTest {
    @ParameterizedTest(name = "L {0} m, rise {1} m, radii {3} and {4} m, centre {6} m up and {5} m away")
    @CsvSource({
        "1.65, 0.45, 330, 0.65, 0.55, 0.755, 0.82",
        "1.65, 0.45, 330, 0.55, 0.65, 0.755, 0.82",
        "2.60, 0.80, 1400, 0.30, 0.30, 1.25, 0.55",
        "2.60, 0.05, 1400, 0.30, 0.30, 1.25, 0.25",
        "1.98, 1.20, 900, 0.56, 0.46, 0.90, 1.30"
    })
    void comesBackFromTheWeightsThatItMakes(
            double distance, double rise, double mass, double other, double lifted, double from, double height) {
        double tilt = tilt(distance, rise, other, lifted);
        double level = mass * (1 - from / distance);
        double[] centre = turned(from, height - other, tilt);
        double[] axle = turned(distance, lifted - other, tilt);
        double raised = mass * (1 - centre[0] / axle[0]);

        assertThat(CentreHeight.height(distance, rise, level, raised, mass, other, lifted))
                .isCloseTo(height, offset(1e-9));
    }

    /** {@code z = r + L Δm/(m tan θ)}, from memory. */
    @Test
    void isTheHandbooksOfEqualWheels() {
        double tangent = Math.tan(Math.asin(0.5 / 2.5));

        assertThat(CentreHeight.height(2.5, 0.5, 600, 640, 1200, 0.3, 0.3))
                .isCloseTo(0.3 + 2.5 * 40 / (1200 * tangent), offset(1e-12));
    }

    /** By bisection of the height to which the turned wheel centre has risen. */
    private static double tilt(double distance, double rise, double other, double lifted) {
        double low = 0;
        double high = 1.2;
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            double risen = turned(distance, lifted - other, middle)[1] - (lifted - other);
            if (risen < rise) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[] turned(double along, double up, double tilt) {
        return new double[] {along * Math.cos(tilt) - up * Math.sin(tilt), along * Math.sin(tilt) + up * Math.cos(tilt)
        };
    }
}
