/** One class per command, exit codes, progress; no numerics. */
package org.ridewright.cli;
