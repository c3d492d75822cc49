package org.ridewright.fieldwork;

import org.ridewright.quantity.Measure;

/**
 * What a fact says directly, without a simulation.
 *
 * @param fact from which it comes
 * @param what it is, in words
 * @param value with its standard uncertainty
 * @param remark what to bear in mind; may be empty
 */
public record Finding(Fact fact, String what, Measure value, String remark) {}
