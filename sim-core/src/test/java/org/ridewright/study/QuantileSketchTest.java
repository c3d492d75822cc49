package org.ridewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ridewright.math.Quantiles;

class QuantileSketchTest {
    @Test
    void quantilesOfFewNumbersAreExact() {
        QuantileSketch sketch = new QuantileSketch();
        for (int i = 100; i >= 1; i--) {
            sketch.add(i);
        }

        assertThat(sketch.quantile(0.5)).isEqualTo(50.5);
        assertThat(sketch.quantile(0.05)).isCloseTo(5.05, within(1e-12));
        assertThat(sketch.quantile(0)).isEqualTo(1);
        assertThat(sketch.quantile(1)).isEqualTo(100);
        assertThat(sketch.mean()).isEqualTo(50.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99})
    void quantilesOfAMillionNumbersAreOffByLessThanIsSaid(double share) {
        QuantileSketch sketch = new QuantileSketch();
        int n = 1_000_000;
        for (int i = 0; i < n; i++) {
            sketch.add(Mix.uniform(i, 31));
        }
        double bound = Math.log(n / 4096.0) / Math.log(2) / 4096;

        assertThat(sketch.count()).isEqualTo(n);
        assertThat(sketch.quantile(share)).isCloseTo(share, within(bound + 4 * Math.sqrt(share * (1 - share) / n)));
    }

    @Test
    void quantilesAreThoseOfTheSortedNumbers() {
        for (int n : new int[] {1, 2, 7, 19, 64, 300}) {
            QuantileSketch sketch = new QuantileSketch();
            double[] all = new double[n];
            for (int i = 0; i < n; i++) {
                all[i] = Mix.uniform(i, 5);
                sketch.add(all[i]);
            }
            Arrays.sort(all);
            for (double share : new double[] {0, 0.01, 0.05, 0.3, 0.5, 0.95, 1}) {
                assertThat(sketch.quantile(share)).isCloseTo(Quantiles.of(all, share), within(1e-12));
            }
        }
    }

    @Test
    void fewNumbersTakeLittleRoom() {
        QuantileSketch sketch = new QuantileSketch();
        for (int i = 0; i < 10; i++) {
            sketch.add(i);
        }
        assertThat(sketch.room()).isLessThanOrEqualTo(16);
        for (int i = 0; i < 1_000_000; i++) {
            sketch.add(i);
        }
        assertThat(sketch.room()).isLessThanOrEqualTo(9 * 4096);
    }

    @Test
    void whatIsNoNumberIsLeftOut() {
        QuantileSketch sketch = new QuantileSketch();
        sketch.add(Double.NaN);
        assertThat(sketch.quantile(0.5)).isNaN();
        sketch.add(3);
        assertThat(sketch.quantile(0.5)).isEqualTo(3);
        assertThat(sketch.count()).isEqualTo(1);
    }
}
