package org.ridewright.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ChannelTest {
    @Test
    void sampleInstantsFollowFromStartAndRate() {
        Channel channel = new Channel("seat z", "m/s²", 200, 3, new double[] {1, 2, 4});
        assertThat(channel.time(1)).isEqualTo(3.005);
        assertThat(channel.end()).isEqualTo(3.01);
        assertThat(channel.sample(2)).isEqualTo(4);
    }

    @Test
    void neitherTheGivenNorTheReturnedArrayCanChangeIt() {
        double[] given = {1, 2};
        Channel channel = new Channel("seat z", "m/s²", 200, 0, given);
        given[0] = 9;
        channel.samples()[1] = 9;
        assertThat(channel.samples()).containsExactly(1, 2);
        assertThat(channel).isEqualTo(new Channel("seat z", "m/s²", 200, 0, new double[] {1, 2}));
    }

    @Test
    void impossibleChannelsAreRefusedWithTheirPlace() {
        assertThatThrownBy(() -> new Channel("seat z", "m/s²", 0, 0, new double[] {1}))
                .hasMessageContaining("> 0 Hz")
                .hasMessageContaining("seat z");
        assertThatThrownBy(() -> new Channel("seat z", "m/s²", 10, 0, new double[0]))
                .hasMessageContaining("at least 1 sample");
        assertThatThrownBy(() -> new Channel("seat z", "m/s²", 10, 5, new double[] {1, Double.NaN}))
                .hasMessageContaining("NaN m/s² at 5.1 s")
                .hasMessageContaining("sample 1");
        Channel two = new Channel("seat z", "m/s²", 10, 5, new double[] {1, 2});
        assertThatThrownBy(() -> two.with("b", "m", new double[] {1})).hasMessageContaining("need 2 samples, got 1");
    }
}
