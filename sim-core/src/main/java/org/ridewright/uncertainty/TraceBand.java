package org.ridewright.uncertainty;

import org.ridewright.signal.Channel;

/** A trace's quantiles, instant by instant: 5 %, 50 % and 95 %. */
public record TraceBand(Channel low, Channel median, Channel high) {}
