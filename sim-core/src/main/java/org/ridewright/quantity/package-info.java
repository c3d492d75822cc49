/** Values with unit, tolerance and provenance, and the trade's ways of writing them. */
package org.ridewright.quantity;
