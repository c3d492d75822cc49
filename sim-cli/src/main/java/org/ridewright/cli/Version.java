package org.ridewright.cli;

import picocli.CommandLine.IVersionProvider;

/** Version of the program, from its jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Main.class.getPackage().getImplementationVersion();
        return new String[] {"Ridewright " + (version == null ? "(built from source)" : version)};
    }
}
