package org.slugpeak.cli.quantity;

import java.util.Locale;
import org.slugpeak.core.scale.LowEndPart;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What sets the low end of a receiver's oscillator, as typed: {@code padder} or {@code slug}. */
public final class LowEnd implements ITypeConverter<LowEndPart> {

    /** Called by the command-line library. */
    public LowEnd() {}

    @Override
    public LowEndPart convert(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "padder" -> LowEndPart.PADDER;
            case "slug" -> LowEndPart.SLUG;
            default -> throw new TypeConversionException("'" + text + "' is neither padder nor slug");
        };
    }
}
