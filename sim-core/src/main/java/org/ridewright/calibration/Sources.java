package org.ridewright.calibration;

import java.util.function.Function;
import org.ridewright.fieldwork.LogReference;
import org.ridewright.fieldwork.RoadReference;
import org.ridewright.measurement.Recording;
import org.ridewright.road.Road;

/**
 * Where roads and logs that facts name are read.
 *
 * @param roads by reference
 * @param recordings by reference
 */
public record Sources(Function<RoadReference, Road> roads, Function<LogReference, Recording> recordings) {}
