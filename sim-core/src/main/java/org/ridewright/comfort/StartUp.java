package org.ridewright.comfort;

/** What a signal is taken to have been before its first sample. Filters remember it for a while. */
public enum StartUp {
    /** Nothing moved: a run that starts from rest, a record whose offset was taken off. */
    AT_REST,
    /** The first sample's value, always: an offset such as gravity then never enters a weighting at all. */
    FIRST_SAMPLE_HELD
}
