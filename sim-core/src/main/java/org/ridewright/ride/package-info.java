/** Ride tests: from a scenario to runs, read-offs and metrics. */
package org.ridewright.ride;
