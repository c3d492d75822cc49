package org.ridewright.measurement;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.Axis;
import org.ridewright.comfort.AxisMeter;
import org.ridewright.comfort.AxisVibration;
import org.ridewright.comfort.Position;
import org.ridewright.comfort.StartUp;
import org.ridewright.comfort.VibrationMetrics;
import org.ridewright.comfort.VibrationTotal;
import org.ridewright.signal.Channel;

/**
 * What ISO 2631-1 says of a recorded ride.
 *
 * @param position where it was recorded
 * @param axes z, and x and y if it is known which is which
 * @param horizontal length of the weighted horizontal acceleration where x and y are some two horizontal directions: at the seat and at the
 *     feet both have one weighting and one factor, so that a_w of the two together does not depend on how the logger was turned
 * @param total a_v of the point over the axes recorded, as a simulated ride states it (m/s²)
 * @param comfortTotal what the standard's words are for: at the seat, whose backrest no log of it holds, a_v with 1.4 on x and y
 *     (ISO 2631-1:1997, 8.2.3); elsewhere the total (m/s²)
 */
public record LogVibration(
        Position position,
        Map<Axis, AxisVibration> axes,
        Optional<VibrationMetrics> horizontal,
        double total,
        double comfortTotal) {
    public LogVibration {
        axes = new EnumMap<>(axes);
    }

    /** @throws UnusableLogException if the position weights x and y unlike and it is not known which is which */
    public static LogVibration of(RecordedRide ride) {
        Position position = ride.options().position();
        boolean apart = ride.mounting().forwardKnown();
        boolean level = ride.recording().columns().size() > 1;
        if (level && !apart && position == Position.BACKREST) {
            throw new UnusableLogException(LogFault.whole(
                    "",
                    "",
                    "the backrest weights fore-and-aft and lateral motion unlike, and it is not known which column is which",
                    "the direction of the logger",
                    "state which of its axes pointed forward, as in --forward x"));
        }
        Map<Axis, AxisVibration> axes = new EnumMap<>(Axis.class);
        Map<Axis, Double> rms = new EnumMap<>(Axis.class);
        for (LogAxis logged : ride.recording().columns().keySet()) {
            if (logged == LogAxis.Z || apart) {
                Axis axis = RecordedRide.axis(logged);
                AxisVibration vibration = axis(ride, position, logged);
                axes.put(axis, vibration);
                rms.put(axis, vibration.metrics().rms());
            }
        }
        Optional<VibrationMetrics> horizontal =
                level && !apart ? Optional.of(horizontal(ride, position)) : Optional.empty();
        horizontal.ifPresent(h -> rms.put(Axis.X, h.rms()));
        double total = VibrationTotal.ofPoint(position, rms);
        return new LogVibration(
                position,
                axes,
                horizontal,
                total,
                position == Position.SEAT ? VibrationTotal.ofSeatWithoutBackrest(rms) : total);
    }

    @Override
    public Map<Axis, AxisVibration> axes() {
        return new EnumMap<>(axes);
    }

    /** The vertical axis. */
    public AxisVibration vertical() {
        return axes.get(Axis.Z);
    }

    private static AxisVibration axis(RecordedRide ride, Position position, LogAxis logged) {
        List<AxisVibration> pieces = new ArrayList<>();
        for (Piece piece : ride.pieces()) {
            Channel channel = piece.channels().get(logged);
            AxisMeter meter = new AxisMeter(
                    position,
                    RecordedRide.axis(logged),
                    piece.window(),
                    channel.sampleRate(),
                    channel.start(),
                    StartUp.AT_REST);
            for (int i = 0; i < channel.size(); i++) {
                meter.accept(channel.sample(i));
            }
            pieces.add(meter.result());
        }
        return JoinedPieces.axis(pieces);
    }

    private static VibrationMetrics horizontal(RecordedRide ride, Position position) {
        List<VibrationMetrics> pieces = new ArrayList<>();
        for (Piece piece : ride.pieces()) {
            List<Channel> raw = new ArrayList<>();
            List<Channel> weighted = new ArrayList<>();
            for (LogAxis logged : List.of(LogAxis.X, LogAxis.Y)) {
                Channel channel = piece.channels().get(logged);
                if (channel != null) {
                    raw.add(channel);
                    weighted.add(position.weighting(RecordedRide.axis(logged)).apply(channel));
                }
            }
            pieces.add(VibrationMetrics.of(size(raw), size(weighted), piece.window()));
        }
        return JoinedPieces.metrics(pieces);
    }

    private static Channel size(List<Channel> parts) {
        double[] sizes = new double[parts.get(0).size()];
        for (int i = 0; i < sizes.length; i++) {
            double square = 0;
            for (Channel part : parts) {
                square += part.sample(i) * part.sample(i);
            }
            sizes[i] = Math.sqrt(square);
        }
        return parts.get(0).with("horizontal", parts.get(0).unit(), sizes);
    }
}
