package org.slugpeak.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.cli.cue.CueOptions;
import org.slugpeak.cli.display.DisplayOptions;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.cli.outlet.StandardOutput;
import org.slugpeak.cli.page.PageOptions;
import org.slugpeak.cli.page.SecondScreen;
import org.slugpeak.cli.run.CueOutput;
import org.slugpeak.cli.run.JsonOutput;
import org.slugpeak.cli.run.LogOutput;
import org.slugpeak.cli.run.Notices;
import org.slugpeak.cli.run.PageOutput;
import org.slugpeak.cli.run.Prompt;
import org.slugpeak.cli.run.SessionOutput;
import org.slugpeak.cli.run.ShowingOutput;
import org.slugpeak.cli.run.VoiceOutput;
import org.slugpeak.cli.voice.SystemVoice;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where the records of a session go: file, other program, screen, ear. */
public final class OutputOptions {

    /** Asks for a voice. */
    public static final String SPEAK = "--speak";

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--log", paramLabel = "FILE")
    private Optional<Path> log = Optional.empty();

    @Option(names = SPEAK)
    private boolean speak;

    private Optional<SystemVoice> voice = Optional.empty();

    /** Who tells of the voice's troubles: standard error, until there is a screen. */
    private Consumer<String> teller = System.err::println;

    @Mixin
    private DisplayOptions display = new DisplayOptions();

    @Mixin
    private CueOptions cueOptions = new CueOptions();

    /** Whether standard output belongs to records for another program. */
    public boolean isJson() {
        return json;
    }

    /** The voice that was asked for, found when it is asked for first. */
    public SystemVoice voice() {
        SystemVoice found =
                voice.orElseGet(() -> speak ? SystemVoice.open(words -> teller.accept(words)) : SystemVoice.silent());
        voice = Optional.of(found);
        return found;
    }

    /** Where the session is kept; empty where it is not. */
    public Optional<Path> logFile() {
        return log;
    }

    /** Opens everything that was asked for, for readings that come faster than they can be heard. */
    public List<SessionOutput> open() throws BridgeException {
        return open(new PageOptions(), Set.of(KeyAction.AGAIN), Map.of(), false, Optional.empty());
    }

    /** Opens everything that was asked for, for readings of a real set that come as they happen. */
    public List<SessionOutput> openLive(PageOptions page, KeyAction... more) throws BridgeException {
        Set<KeyAction> keys = EnumSet.copyOf(ShowingOutput.LEVEL_KEYS);
        keys.addAll(List.of(more));
        return open(page, keys, Map.of(), true, Optional.empty());
    }

    /** Opens everything that was asked for, for readings of a simulated set with keys of its own, and what is told first. */
    public List<SessionOutput> openLive(
            PageOptions page, Set<KeyAction> more, Map<KeyAction, Runnable> keys, Optional<String> first)
            throws BridgeException {
        Set<KeyAction> useful = EnumSet.of(KeyAction.AGAIN);
        useful.addAll(more);
        return open(page, useful, keys, true, first);
    }

    /** Opens everything that was asked for, for a response curve, in which nothing is turned; a generator that a hand sets may be counted. */
    public List<SessionOutput> openCurve(PageOptions page, boolean byHand) throws BridgeException {
        return opened(outputs -> {
            Set<KeyAction> useful = useful(page, ShowingOutput.CURVE_KEYS, Map.of(), true);
            if (byHand) {
                useful.add(KeyAction.COUNTER);
            }
            Optional<SecondScreen> second = second(page, useful, outputs);
            Showing showing = display.openCurve(System.err, json, useful);
            second.ifPresent(it -> it.join(showing));
            show(outputs, showing, new ShowingOutput(showing, useful), true);
        });
    }

    /** Opens everything that was asked for, for values that are typed at a prompt. */
    public List<SessionOutput> openTyped(PageOptions page) throws BridgeException {
        return opened(outputs -> {
            Optional<SecondScreen> second = second(page, ShowingOutput.USUAL_KEYS, outputs);
            Showing showing = display.openTyped(StandardOutput.text(), System.err, json);
            second.ifPresent(it -> it.join(showing));
            show(outputs, showing, new ShowingOutput(showing, ShowingOutput.USUAL_KEYS), true);
            notices(outputs, showing);
            outputs.add(new Prompt(System.err));
        });
    }

    /**
     * Opens everything that was asked for, the log first, since it may be refused; then what was open before is closed again.
     *
     * @param page for a browser
     * @param more keys that are of use beside the usual ones
     * @param keys keys that the command sees to itself
     * @param live whether the readings come as they happen
     * @param first what is told before anything else
     */
    private List<SessionOutput> open(
            PageOptions page, Set<KeyAction> more, Map<KeyAction, Runnable> keys, boolean live, Optional<String> first)
            throws BridgeException {
        return opened(outputs -> {
            Set<KeyAction> useful = useful(page, more, keys, live);
            Optional<SecondScreen> second = second(page, useful, outputs);
            Showing showing = display.open(StandardOutput.text(), System.err, json, useful);
            second.ifPresent(it -> it.join(showing));
            ShowingOutput shown = new ShowingOutput(showing, useful);
            keys.forEach(shown::onKey);
            first.ifPresent(showing::tell);
            show(outputs, showing, shown, live);
            notices(outputs, showing);
        });
    }

    /** The page is told of before a screen is drawn over it. */
    private static Optional<SecondScreen> second(PageOptions page, Set<KeyAction> useful, List<SessionOutput> outputs)
            throws BridgeException {
        Optional<SecondScreen> second = page.open(useful, System.err);
        second.ifPresent(it -> outputs.add(new PageOutput(it)));
        return second;
    }

    @FunctionalInterface
    private interface More {
        void open(List<SessionOutput> outputs) throws BridgeException;
    }

    private List<SessionOutput> opened(More more) throws BridgeException {
        List<SessionOutput> outputs = new ArrayList<>();
        boolean complete = false;
        try {
            records(outputs);
            more.open(outputs);
            complete = true;
            return outputs;
        } finally {
            if (!complete) {
                SessionOutput.closeAll(outputs);
            }
        }
    }

    private void records(List<SessionOutput> outputs) throws BridgeException {
        if (log.isPresent()) {
            outputs.add(LogOutput.create(log.get(), System.err));
        }
        if (json) {
            outputs.add(new JsonOutput(StandardOutput.bytes()));
        }
    }

    private void show(List<SessionOutput> outputs, Showing showing, ShowingOutput shown, boolean live)
            throws BridgeException {
        teller = showing::tell;
        outputs.add(shown);
        CueOutput heard = hear(showing, shown, live);
        outputs.add(heard);
        if (speak) {
            boolean withTone = live && cueOptions.isHeard();
            outputs.add(new VoiceOutput(voice(), voice().ofSession(withTone, live, heard::giveWay)));
        }
    }

    /** Lines of readings say nothing of the link. */
    private void notices(List<SessionOutput> outputs, Showing showing) {
        if (!showing.isScreen() && !display.isPlain()) {
            outputs.add(new Notices(System.err));
        }
    }

    private Set<KeyAction> useful(PageOptions page, Set<KeyAction> more, Map<KeyAction, Runnable> keys, boolean live) {
        Set<KeyAction> useful = EnumSet.copyOf(ShowingOutput.USUAL_KEYS);
        useful.addAll(more);
        useful.addAll(keys.keySet());
        if (page.isAsked()) {
            useful.add(KeyAction.PAGE);
        }
        if (live && cueOptions.isHeard()) {
            useful.addAll(CueOutput.KEYS);
        }
        return useful;
    }

    private CueOutput hear(Showing showing, ShowingOutput shown, boolean live) throws BridgeException {
        boolean audible = live && (showing.isAttended() || cueOptions.isAsked());
        CueOutput heard = new CueOutput(cueOptions.open(audible, showing::tell, showing::bell), showing);
        heard.bind(shown);
        return heard;
    }
}
