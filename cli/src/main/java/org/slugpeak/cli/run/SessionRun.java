package org.slugpeak.cli.run;

import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slugpeak.bridge.source.BridgeException;
import org.slugpeak.bridge.source.ReadingSource;
import org.slugpeak.bridge.source.ReadingSource.Progress;
import org.slugpeak.bridge.source.TypedWord;
import org.slugpeak.core.peak.PeakSettings;
import org.slugpeak.core.session.Analysis;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Instruction;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.SessionStart;

/**
 * One session: polls the source, analyses, hands every record to the outputs, until the source ends or somebody quits. One
 * thread runs it; any thread may {@link #request} something of it.
 */
public final class SessionRun implements SessionControl {

    private static final long WAIT_NANOS = 40_000_000;

    private final ReadingSource source;
    private final List<SessionOutput> outputs;
    private final Analysis analysis;
    private final Guide guide;
    private final AnalysisFeed feed;
    private final Queue<Consumer<SessionControl>> requests = new ConcurrentLinkedQueue<>();
    private Progress progress = Progress.IDLE;
    private List<Instruction> opening = List.of();
    private Optional<EndReason> endReason = Optional.empty();
    private boolean stopped;

    /**
     * A session that has not begun.
     *
     * @param source where readings come from
     * @param settings what to seek
     * @param guide says which adjuster is at hand
     * @param start makes the first record, when the source knows what it measures
     * @param outputs take every record, in this order
     */
    public SessionRun(
            ReadingSource source,
            PeakSettings settings,
            Guide guide,
            Supplier<SessionStart> start,
            List<SessionOutput> outputs) {
        this.source = source;
        this.outputs = List.copyOf(outputs);
        this.guide = guide;
        this.analysis = new Analysis(settings, this::give);
        this.feed = new AnalysisFeed(analysis, () -> begin(start), this::lead, this::typed);
    }

    /**
     * Gives instructions right at the beginning, so that they stand in the log and a replay repeats them.
     *
     * @param instructions in order
     * @return this
     */
    public SessionRun openedWith(List<Instruction> instructions) {
        opening = List.copyOf(instructions);
        return this;
    }

    private void begin(Supplier<SessionStart> start) {
        analysis.start(start.get());
        opening.forEach(analysis::command);
        guide.begin(analysis);
    }

    private void give(SessionRecord record) {
        guide.take(record);
        Optional<SessionRecord> passed = guide.passedOn(record);
        if (passed.isEmpty()) {
            return;
        }
        boolean full = false;
        for (SessionOutput output : outputs) {
            output.take(passed.get());
            full |= output.isFull();
        }
        if (full) {
            outputs.forEach(SessionOutput::flush);
        }
    }

    private void lead() {
        guide.lead(analysis, this);
    }

    private void typed(TypedWord word) {
        switch (word) {
            case UNDO -> command(new Instruction.TakeBack());
            case NEXT -> nextAdjuster();
            case AGAIN -> sameAdjuster();
            case SKIP -> skipAdjuster();
            case QUIT -> quit(EndReason.Known.QUIT);
        }
    }

    /**
     * Asks for something to be done between two passes of the source.
     *
     * @param request gets the session's controls, in the session's thread
     */
    public void request(Consumer<SessionControl> request) {
        requests.add(request);
    }

    /**
     * Whether somebody ended the session, rather than its source.
     *
     * @return true after {@link #quit}
     */
    public boolean isStopped() {
        return stopped;
    }

    /**
     * Whether every output kept what it was to keep; to be asked after {@link #run}.
     *
     * @return false where records were lost, which has been said
     */
    public boolean isWhole() {
        return outputs.stream().allMatch(SessionOutput::isWhole);
    }

    /**
     * Runs to the end, then writes the {@code end} record and closes source and outputs.
     *
     * @return why it ended, as in the {@code end} record
     * @throws BridgeException where the source fails for good; the session is closed properly all the same
     */
    public EndReason run() throws BridgeException {
        try {
            while (endReason.isEmpty()) {
                pass();
            }
            return endReason.get();
        } catch (BridgeException failure) {
            endReason = Optional.of(EndReason.Known.FAILED);
            throw failure;
        } finally {
            finish();
        }
    }

    /** While there is more at once nothing waits; before anything waits, the outputs let go of what they hold back. */
    private void pass() throws BridgeException {
        progress = source.poll(progress == Progress.MORE ? 0 : WAIT_NANOS, feed);
        for (Consumer<SessionControl> request = requests.poll(); request != null; request = requests.poll()) {
            feed.begin();
            request.accept(this);
        }
        if (progress == Progress.ENDED && endReason.isEmpty()) {
            EndReason told = source.endReason();
            endReason = Optional.of(told.code().isEmpty() ? EndReason.Known.SOURCE_ENDED : told);
        }
        if (progress != Progress.MORE) {
            outputs.forEach(SessionOutput::flush);
        }
        outputs.forEach(output -> output.serve(this));
        lead();
    }

    private void finish() {
        try {
            feed.begin();
            feed.summarise();
            analysis.end(endReason.orElse(EndReason.Known.FAILED));
            outputs.forEach(SessionOutput::flush);
        } finally {
            try {
                SessionOutput.closeAll(outputs);
            } finally {
                source.close();
            }
        }
    }

    @Override
    public void note(String text) {
        analysis.note(text);
    }

    @Override
    public void command(Instruction instruction) {
        analysis.command(instruction);
    }

    @Override
    public void counting(boolean underWay) {
        guide.counting(underWay);
    }

    @Override
    public void counted(double hz) {
        guide.counted(analysis, hz);
    }

    @Override
    public void nextAdjuster() {
        guide.next(analysis);
    }

    @Override
    public void sameAdjuster() {
        guide.again(analysis);
    }

    @Override
    public void previousAdjuster() {
        guide.back(analysis);
    }

    @Override
    public void skipAdjuster() {
        guide.skip(analysis);
    }

    @Override
    public void quit(EndReason reason) {
        stopped = true;
        endReason = Optional.of(reason);
    }
}
