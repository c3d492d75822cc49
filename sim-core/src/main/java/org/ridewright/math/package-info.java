/** Numerical pieces without any knowledge of vehicles: polynomials, roots, small dense systems. */
package org.ridewright.math;
