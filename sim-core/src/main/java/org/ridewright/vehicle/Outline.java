package org.ridewright.vehicle;

import org.ridewright.quantity.Measure;

/** Outer dimensions of a box (m): of a body, for the estimate of its inertias, or of cargo. */
public record Outline(Measure length, Measure width, Measure height) {}
