/** Road profiles: what height the ground has at a station. */
package org.ridewright.road;
