/** Benchmarks of the regime solver; built and run by the profile {@code benchmark} only. */
package org.ridewright.solver;
