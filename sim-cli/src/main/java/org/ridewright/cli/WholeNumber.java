package org.ridewright.cli;

import java.math.BigInteger;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads options that count things, and says in plain words what is none. */
final class WholeNumber implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String written) {
        BigInteger number;
        try {
            number = new BigInteger(written.strip());
        } catch (NumberFormatException none) {
            throw new TypeConversionException("'" + written + "' is not a whole number");
        }
        if (number.bitLength() >= Integer.SIZE) {
            throw new TypeConversionException("'" + written + "' is too far from zero");
        }
        return number.intValue();
    }
}
