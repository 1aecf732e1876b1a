package org.slugpeak.core.progress;

import java.util.List;
import java.util.Optional;
import org.slugpeak.core.generator.GeneratorReach;
import org.slugpeak.core.plan.Plan;
import org.slugpeak.core.plan.Position;
import org.slugpeak.core.session.Guard;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;
import org.slugpeak.core.session.Work;

/**
 * Leads through a plan. It hears every record of the session and gives orders to whoever runs it; the orders come back as
 * records, so that the log alone tells where the work is, and a cut session goes on from its log ({@link #resume}).
 *
 * <pre>
 *   Settling --reading stands--&gt; Turning --held--&gt; HandsOff --one second--&gt; Ending --adjuster done--&gt; next step
 *      ^                            +--two maxima, held--&gt; Choosing --stays, or key--&gt; HandsOff          |
 *      |         or Rocking --sweeps back at the best--&gt; Ending                                         |
 *      +---------------------------------------------------------------------------------------------+
 *   Turning, told to turn back or stop, and nothing moves: the user is told, then the adjuster is begun again
 *   end of a round: again until it changes less than the rule says; then Checking (skirts) where the plan wants it, AwaitingHand
 *   first where a resistor is fitted; then the next stage, or Over
 *   before Turning, where {@link #withRest}, {@link #withHalvings} and {@link #withLaw} were called: Checking (resting reading) at a new
 *   meter point, Halving at the beginning of a stage, with AwaitingHand where gain control has to be held, and Checking (detector's law)
 *   with {@link #withGenerator} the generator is fed before Settling, which waits until it stands; after the rest Levelling brings the reading into its
 *   window, and while an adjuster is turned it is held there
 *   Resuming stands for all of it while a log is heard
 * </pre>
 *
 * <p>One thread at a time.
 */
public final class AlignmentProgress implements RecordSink {

    private final Job job;
    private PlanPhase phase;

    /**
     * Progress at the beginning of a plan.
     *
     * @param plan what is to be done
     */
    public AlignmentProgress(Plan plan) {
        job = new Job(plan);
        phase = Settling.next(job);
    }

    /**
     * Goes on where a log stopped: every adjuster that it has as done or skipped counts, everything else is done again.
     *
     * @param log records of the cut session, in order
     */
    public void resume(List<SessionRecord> log) {
        phase = Resuming.from(job);
        log.stream().filter(AlignmentProgress::movesOn).forEach(this::take);
        job.startAfresh();
        phase = job.route().isOver() ? new Over() : Settling.next(job);
    }

    private static boolean movesOn(SessionRecord record) {
        return record instanceof Work || record instanceof Guard.BegunAgain;
    }

    /** The resting reading, generator off, is taken at each new meter point; to be called before the first record. */
    public void withRest() {
        job.preliminaries().wantRest();
    }

    /**
     * At the beginning of each stage the generator is halved twice, to see whether the reading follows; to be called before the first
     * record.
     */
    public void withHalvings() {
        job.preliminaries().wantHalvings();
    }

    /**
     * At each meter point the detector's law is measured by known steps of the generator, and decibels go by it; to be called before the
     * first record.
     */
    public void withLaw() {
        job.preliminaries().wantLaw();
    }

    /**
     * The generator is set from here: it is ordered where it can do what a step wants, and where its level is, too, the detector's law is measured
     * unasked; to be called before the first record.
     *
     * @param reach what it can do
     */
    public void withGenerator(GeneratorReach reach) {
        job.feeding().by(reach);
        if (reach.setsLevel()) {
            withLaw();
        }
    }

    /**
     * Where the work is.
     *
     * @return the present place; the last one when the plan is through
     */
    public Position position() {
        return job.route().here();
    }

    /**
     * Whether the plan is through.
     *
     * @return true after the last step
     */
    public boolean isOver() {
        return phase instanceof Over;
    }

    /**
     * Takes the next order away; to be asked after each record until there is none.
     *
     * @return what to do
     */
    public Optional<Order> nextOrder() {
        return job.nextOrder();
    }

    /** The user's key: it is set, it is done, it is this one. */
    public void next() {
        phase = phase.next();
    }

    /** The user's key: leave this adjuster as it is, or drop the check that is under way. */
    public void skip() {
        phase = phase.skip();
    }

    /** The user's key: one step back. */
    public void back() {
        phase = phase.back();
    }

    @Override
    public void take(SessionRecord record) {
        job.at(record.tNanos());
        job.hear(record);
        phase = record.matchFamily(new Hearing(job, phase));
    }
}
