/** Numerical pieces without any knowledge of vehicles: piecewise polynomials, their fits, first crossings and
 * extremes. */
package org.ridewright.math;
