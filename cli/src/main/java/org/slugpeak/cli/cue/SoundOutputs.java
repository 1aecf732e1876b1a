package org.slugpeak.cli.cue;

import java.util.Arrays;
import java.util.List;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Line;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.SourceDataLine;

/** The sound outputs of this machine. Stateless; any thread may use it. */
public final class SoundOutputs {

    private static final Line.Info OUTPUT = new Line.Info(SourceDataLine.class);

    private SoundOutputs() {}

    /**
     * What could be heard on now. Nothing is opened.
     *
     * @return their names; may be empty
     */
    public static List<String> names() {
        return Arrays.stream(AudioSystem.getMixerInfo())
                .filter(info -> AudioSystem.getMixer(info).isLineSupported(OUTPUT))
                .map(Mixer.Info::getName)
                .toList();
    }
}
