package org.slugpeak.cli.open;

import java.util.List;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.option.AnalysisSettings;
import org.slugpeak.cli.run.Guide;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.core.session.Instruction;

/**
 * What a session is to be made of. Nothing is open yet: {@link SessionRunner} opens it, and it alone closes it.
 *
 * @param address where readings come from, as the user gave it
 * @param source opens it
 * @param outputs open what takes every record, once the source is open
 * @param settings what to seek, and in which readings
 * @param guide says which adjuster is at hand
 * @param opening instructions that are given right at the beginning
 */
public record SessionParts(
        String address,
        SourceOpening source,
        OutputsOpening outputs,
        AnalysisSettings settings,
        Guide guide,
        List<Instruction> opening) {

    /** Opens where readings come from. */
    @FunctionalInterface
    public interface SourceOpening {

        /**
         * Opens it.
         *
         * @return to be closed by whoever asked
         * @throws BridgeException where it cannot be opened
         */
        OpenedSource open() throws BridgeException;
    }

    /** Opens what takes the records. */
    @FunctionalInterface
    public interface OutputsOpening {

        /**
         * Opens all of it, or leaves nothing open.
         *
         * @param source what the readings come from, open
         * @return in the order in which they take a record
         * @throws BridgeException where one is refused
         */
        List<SessionOutput> open(OpenedSource source) throws BridgeException;
    }

    /** Copies the list. */
    public SessionParts {
        opening = List.copyOf(opening);
    }

    /** A session that begins without an instruction. */
    public SessionParts(
            String address, SourceOpening source, OutputsOpening outputs, AnalysisSettings settings, Guide guide) {
        this(address, source, outputs, settings, guide, List.of());
    }
}
