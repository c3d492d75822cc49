package org.ridewright.fieldwork;

import java.util.List;
import org.ridewright.fieldwork.LogReference.Sensor;
import org.ridewright.vehicle.check.Faults;

/** Judges where logs were taken and what of them counts. */
record LogCheck(Names names, Faults faults) {
    void run(String path, List<LogReference> logs) {
        if (logs.isEmpty()) {
            faults.add(path + ".logs", "", "has none", "at least one", "write {file: , seat: }");
        }
        for (int i = 0; i < logs.size(); i++) {
            log(path + ".logs[" + i + "]", logs.get(i));
        }
    }

    private void log(String path, LogReference log) {
        if (log.sensor() instanceof Sensor.OnSeat seat) {
            names.seat(path + ".seat", seat.seat());
        } else if (log.sensor() instanceof Sensor.OnAxle axle) {
            names.axle(path + ".axle", axle.axle());
            axle.side().ifPresent(side -> names.side(path + ".side", axle.axle()));
        }
        double from = log.options().from();
        double to = log.options().to();
        if (to <= (Double.isNaN(from) ? 0 : from)) {
            faults.add(
                    path + ".to",
                    Faults.plain(to) + " s",
                    "is not after the beginning",
                    "a time after " + (Double.isNaN(from) ? "0" : Faults.plain(from)) + " s",
                    "count both from the first row",
                    path + ".from");
        }
        if (log.columns().rate().isPresent() && !(log.columns().rate().getAsDouble() > 0)) {
            faults.add(
                    path + ".rate",
                    Faults.plain(log.columns().rate().getAsDouble()) + " Hz",
                    "is not above zero",
                    "samples per second, such as 100 Hz",
                    "leave it out if the log has times");
        }
    }
}
