package org.ridewright.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.ridewright.signal.Channel;

/** How far two recordings of the same channels lie apart. */
final class Likeness {
    /** A channel this much smaller than the greatest of its unit is compared with that one: it may vanish by symmetry. */
    private static final double LEAST_SHARE = 1e-4;

    private Likeness() {}

    /** Greatest over the channels of the r.m.s. difference over the r.m.s.; the second may be a mirror image where told. */
    static double difference(List<Channel> first, List<Channel> second, double... signs) {
        assertThat(second).hasSameSizeAs(first);
        double worst = 0;
        for (int i = 0; i < first.size(); i++) {
            double sign = signs.length == 0 ? 1 : signs[i];
            worst = Math.max(worst, apart(first.get(i), second.get(i), sign) / scale(first, first.get(i)));
        }
        return worst;
    }

    /** What a difference in a channel is held against. */
    static double scale(List<Channel> channels, Channel channel) {
        double greatest = 0;
        for (Channel other : channels) {
            if (other.unit().equals(channel.unit())) {
                greatest = Math.max(greatest, rms(other));
            }
        }
        return Math.max(floor(channel.unit()), Math.max(rms(channel), LEAST_SHARE * greatest));
    }

    /** Where round-off begins to count: a stiff contact makes of 1e-17 m some 1e-11 N and 1e-12 m/s². */
    private static double floor(String unit) {
        return switch (unit) {
            case "m", "rad" -> 1e-8;
            case "m/s", "rad/s" -> 1e-6;
            case "N", "N·m" -> 1e-2;
            default -> 1e-4;
        };
    }

    static double apart(Channel a, Channel b) {
        return apart(a, b, 1);
    }

    private static double apart(Channel a, Channel b, double sign) {
        double sum = 0;
        for (int i = 0; i < a.size(); i++) {
            double d = a.sample(i) - sign * b.sample(i);
            sum += d * d;
        }
        return Math.sqrt(sum / a.size());
    }

    static double rms(Channel channel) {
        double sum = 0;
        for (int i = 0; i < channel.size(); i++) {
            sum += channel.sample(i) * channel.sample(i);
        }
        return Math.sqrt(sum / channel.size());
    }
}
