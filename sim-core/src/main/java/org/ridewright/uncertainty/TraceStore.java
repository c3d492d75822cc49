package org.ridewright.uncertainty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ridewright.signal.Channel;

/** Traces of many draws, in single precision, thinned where they would fill more memory than they may. */
final class TraceStore {
    private final List<Channel> like;
    private final float[][][] kept;
    private final int step;
    private int length;

    /**
     * @param like traces of the ride as written
     * @param draws number of draws
     * @param mostBytes that may be used
     */
    TraceStore(List<Channel> like, int draws, double mostBytes) {
        this.like = like;
        kept = new float[draws][][];
        double whole = like.stream().mapToDouble(Channel::size).sum() * draws * Float.BYTES;
        step = (int) Math.max(1, Math.ceil(whole / mostBytes));
        length = like.stream().mapToInt(c -> 1 + (c.size() - 1) / step).min().orElse(0);
    }

    /** Takes the traces of a draw: those of the same places, of the same instants; others end the bands. */
    void put(int draw, List<Channel> traces) {
        float[][] own = new float[like.size()][];
        for (int c = 0; c < own.length; c++) {
            Channel channel = c < traces.size() ? traces.get(c) : null;
            boolean same = channel != null
                    && channel.name().equals(like.get(c).name())
                    && channel.start() == like.get(c).start()
                    && channel.sampleRate() == like.get(c).sampleRate();
            if (!same) {
                shorten(0);
                return;
            }
            own[c] = new float[1 + (channel.size() - 1) / step];
            for (int i = 0; i < own[c].length; i++) {
                own[c][i] = (float) channel.sample(i * step);
            }
            shorten(own[c].length);
        }
        kept[draw] = own;
    }

    private synchronized void shorten(int most) {
        length = Math.min(length, most);
    }

    /** The bands over the time that all draws have; none where they have none in common. */
    synchronized List<TraceBand> bands() {
        List<TraceBand> bands = new ArrayList<>();
        for (int c = 0; c < like.size() && length > 1; c++) {
            double[] low = new double[length];
            double[] median = new double[length];
            double[] high = new double[length];
            int of = c;
            for (int i = 0; i < length; i++) {
                int at = i;
                double[] column = Arrays.stream(kept)
                        .filter(Objects::nonNull)
                        .mapToDouble(draw -> draw[of][at])
                        .toArray();
                Interval interval = Interval.of(column);
                low[i] = interval.low();
                median[i] = interval.median();
                high[i] = interval.high();
            }
            bands.add(new TraceBand(band(c, "5 %", low), band(c, "median", median), band(c, "95 %", high)));
        }
        return bands;
    }

    private Channel band(int c, String which, double[] values) {
        Channel own = like.get(c);
        return new Channel(own.name() + ", " + which, own.unit(), own.sampleRate() / step, own.start(), values);
    }
}
