package org.slugpeak.bridge.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import javax.sound.sampled.TargetDataLine;
import org.slugpeak.bridge.source.PortUnavailable;

/** The sound inputs of this computer, as the Java runtime shows them: the one class that touches {@code javax.sound}. */
final class JavaSound implements SoundLine.Device {

    private static final int[] RATES_HZ = {48_000, 44_100, 96_000, 192_000};
    private static final double BUFFER_SECONDS = 0.25;

    private final String wanted;
    private final SoundOptions options;
    private String name;

    JavaSound(String wanted, SoundOptions options) {
        this.wanted = wanted;
        this.options = options;
        this.name = wanted.isEmpty() ? "sound" : wanted;
    }

    /** The inputs that can be captured from. */
    static List<SoundInput> inputs() {
        return capturing().stream()
                .map(mixer -> new SoundInput(mixer.getName(), mixer.getDescription()))
                .toList();
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public SoundLine open() throws PortUnavailable {
        Mixer.Info chosen = choose();
        name = chosen.getName();
        String trouble = "it offers no PCM of 16 or 24 bits";
        for (AudioFormat format : formats()) {
            try {
                return open(AudioSystem.getMixer(chosen), format);
            } catch (IllegalArgumentException e) {
                // This format is none of its own: the next may be.
            } catch (LineUnavailableException | SecurityException e) {
                trouble = String.valueOf(e.getMessage());
            }
        }
        throw new PortUnavailable("sound input '" + name + "' cannot be opened (" + trouble
                + "); close what else uses it, or choose another: slugpeak ports");
    }

    private Mixer.Info choose() throws PortUnavailable {
        List<Mixer.Info> all = capturing();
        if (all.isEmpty()) {
            throw new PortUnavailable("this computer has no sound input; plug one in and try again");
        }
        if (wanted.isEmpty()) {
            return all.get(0);
        }
        List<Mixer.Info> exact =
                all.stream().filter(m -> m.getName().equals(wanted)).toList();
        List<Mixer.Info> matching =
                exact.isEmpty() ? all.stream().filter(this::resembles).toList() : exact;
        if (matching.size() == 1) {
            return matching.get(0);
        }
        throw new PortUnavailable((matching.isEmpty()
                        ? "no sound input is called '" + wanted + "'; there are: "
                        : "'" + wanted + "' fits several sound inputs; say which: ")
                + names(matching.isEmpty() ? all : matching));
    }

    private boolean resembles(Mixer.Info mixer) {
        return mixer.getName().toLowerCase(Locale.ROOT).contains(wanted.toLowerCase(Locale.ROOT));
    }

    private static String names(List<Mixer.Info> mixers) {
        return mixers.stream().map(Mixer.Info::getName).collect(Collectors.joining(", "));
    }

    private static List<Mixer.Info> capturing() {
        List<Mixer.Info> found = new ArrayList<>();
        for (Mixer.Info info : AudioSystem.getMixerInfo()) {
            for (Line.Info line : AudioSystem.getMixer(info).getTargetLineInfo()) {
                if (TargetDataLine.class.isAssignableFrom(line.getLineClass())) {
                    found.add(info);
                    break;
                }
            }
        }
        return found;
    }

    /** What to ask for, best first. Many cards only do stereo: the channel is picked here, not there. */
    private List<AudioFormat> formats() {
        int[] rates = options.rateHz().isPresent() ? new int[] {options.rateHz().getAsInt()} : RATES_HZ;
        int[] sizes = options.bits().isPresent() ? new int[] {options.bits().getAsInt()} : new int[] {16, 24};
        List<AudioFormat> formats = new ArrayList<>();
        for (int rate : rates) {
            for (int bits : sizes) {
                for (int channels : new int[] {2, 1}) {
                    formats.add(new AudioFormat(rate, bits, channels, true, false));
                }
            }
        }
        return formats;
    }

    private static SoundLine open(Mixer mixer, AudioFormat format) throws LineUnavailableException {
        TargetDataLine line = (TargetDataLine) mixer.getLine(new DataLine.Info(TargetDataLine.class, format));
        int frames = (int) (BUFFER_SECONDS * format.getSampleRate());
        line.open(format, frames * format.getFrameSize());
        line.start();
        return new OpenLine(line);
    }

    private record OpenLine(TargetDataLine line) implements SoundLine {

        @Override
        public SampleFormat format() {
            AudioFormat format = line.getFormat();
            Encoding encoding = format.getSampleSizeInBits() == 16 ? Encoding.SIGNED_16 : Encoding.SIGNED_24;
            return new SampleFormat((int) format.getSampleRate(), format.getChannels(), encoding);
        }

        @Override
        public int read(byte[] into) {
            return line.read(into, 0, into.length);
        }

        @Override
        public void close() {
            line.stop();
            line.close();
        }
    }
}
