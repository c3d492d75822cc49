/** Finds what no vehicle can be in a description that was read without a fault. */
package org.ridewright.vehicle.check;
