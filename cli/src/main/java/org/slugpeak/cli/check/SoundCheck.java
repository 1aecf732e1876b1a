package org.slugpeak.cli.check;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.InstantSource;
import org.slugpeak.bridge.sound.Calibrating;
import org.slugpeak.bridge.sound.SoundCalibration;
import org.slugpeak.bridge.sound.SoundOptions;
import org.slugpeak.bridge.sound.SoundSource;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.SourceAddress;
import org.slugpeak.bridge.source.SourceListener;
import org.slugpeak.cli.open.SourceOpener;
import org.slugpeak.cli.run.Interruption;
import org.slugpeak.cli.words.CheckPhrase;
import org.slugpeak.core.decibel.Decibels;
import org.slugpeak.core.reading.Reading;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.LinkDetail;

/** Calibrates a sound input against a known voltage. */
public final class SoundCheck {

    private static final long WAIT_NANOS = 50_000_000;

    private final SourceAddress address;
    private final SoundOptions options;

    public SoundCheck(SourceAddress address, SoundOptions options) {
        this.address = address;
        this.options = options;
    }

    public void calibrate(double volts, PrintWriter out) throws BridgeException {
        if (!(volts > 0 && volts < Double.POSITIVE_INFINITY)) {
            throw new BadInput("--volts takes the RMS voltage at the input, above 0, not " + volts);
        }
        Calibrating calibrating = new Calibrating(volts);
        String device = measure(calibrating);
        Calibrating.Outcome outcome = calibrating.outcome();
        if (!outcome.isGood()) {
            throw new BadInput(address.text() + ": " + outcome.problem());
        }
        Path file = SourceOpener.calibrations()
                .save(new SoundCalibration(
                        device,
                        options.channel(),
                        outcome.voltsPerFullScale(),
                        volts,
                        InstantSource.system().instant()));
        out.println(CheckPhrase.FULL_SCALE.of(
                device, outcome.voltsPerFullScale(), Decibels.of(outcome.levelFs()), outcome.spreadDb()));
        out.println(CheckPhrase.KEPT.of(file));
        out.flush();
    }

    private String measure(Calibrating calibrating) throws BridgeException {
        SoundSource source = SourceOpener.sounds().openInput(address.name(), options.withVoltsPerFullScale(1));
        try {
            Progress progress = Progress.MORE;
            while (progress != Progress.ENDED && !calibrating.enough() && !Interruption.isRequested()) {
                progress = source.poll(WAIT_NANOS, new Taking(calibrating));
            }
            return source.device();
        } finally {
            source.close();
        }
    }

    private record Taking(Calibrating calibrating) implements SourceListener {

        @Override
        public void reading(Reading reading) {
            calibrating.take(reading);
        }

        @Override
        public void link(long tNanos, Link.State state, LinkDetail detail) {}

        @Override
        public void garbled(String where, String problem) {}
    }
}
