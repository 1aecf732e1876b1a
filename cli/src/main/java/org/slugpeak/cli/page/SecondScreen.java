package org.slugpeak.cli.page;

import com.sun.net.httpserver.HttpServer;
import java.io.PrintStream;
import java.util.Optional;
import java.util.Set;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.cue.Overheard;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.PageAddress;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.cli.moment.MomentKeeper;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.ReadingTaken;
import org.slugpeak.core.session.RecordSink;
import org.slugpeak.core.session.SessionRecord;

/**
 * What browsers see of a session. It takes the records that the terminal takes, in the same thread, and makes of them the same moment; the rest
 * is done in the threads of the browsers. One thread feeds it; any thread may close it.
 */
public final class SecondScreen implements RecordSink, AutoCloseable {

    private final MomentKeeper keeper = new MomentKeeper();
    private final Overheard overheard = new Overheard();
    private final LastMinute minute = new LastMinute();
    private final Screens screens;
    private final PageServer server;
    private final PageKeys keys;
    private final PrintStream err;
    private final PageAddress address;
    private volatile Optional<Showing> beside = Optional.empty();
    private PageState sight;

    private SecondScreen(
            HttpServer server, Door door, PageAddress address, PageKeys keys, PrintStream err, Ticker ticker) {
        this.keys = keys;
        this.address = address;
        this.err = err;
        sight = new PageState(0, told(), PageState.Spot.NONE, WorkDone.NONE);
        screens = new Screens(sight, () -> PageEvents.past(minute.spots()), ticker);
        PageFiles files = new PageFiles(keys.allowed());
        this.server = PageServer.start(server, new PageServer.House(door, files, screens, keys, this::tell));
    }

    static SecondScreen serve(
            HttpServer server, Door door, PageAddress address, Set<KeyAction> buttons, PrintStream err, Ticker ticker) {
        return new SecondScreen(server, door, address, new PageKeys(buttons), err, ticker);
    }

    /**
     * Shows what the terminal shows; from now on buttons ask for what its keys ask for, and what is to be said of the page is said there.
     *
     * @param showing of the same session
     */
    public void join(Showing showing) {
        keys.leadTo(showing.keys());
        beside = Optional.of(showing);
        showing.alsoTo(this);
        showing.hasPage(address);
    }

    private void tell(String words) {
        beside.ifPresentOrElse(it -> it.tell(words), () -> err.println(words));
    }

    @Override
    public void take(SessionRecord record) {
        keeper.take(record);
        overheard.take(record);
        Told told = told();
        Optional<PageState.Spot> spot = spot(record, told);
        spot.ifPresent(minute::add);
        sight = new PageState(
                sight.number() + 1,
                told,
                spot.orElse(sight.spot()),
                sight.work().with(record));
        screens.show(sight);
    }

    private Told told() {
        return new Told(keeper.moment(), overheard.tone());
    }

    /** A gap in the trend where nothing can be believed. */
    private static Optional<PageState.Spot> spot(SessionRecord record, Told told) {
        if (record instanceof ReadingTaken taken) {
            boolean trusted = taken.reading().condition().isTrusted();
            return Optional.of(
                    new PageState.Spot(record.tNanos(), trusted ? told.height(taken.smoothed()) : Double.NaN));
        }
        return record instanceof Link.Changed
                ? Optional.of(new PageState.Spot(record.tNanos(), Double.NaN))
                : Optional.empty();
    }

    /** Stops without a last word, as a computer does whose plug is pulled. */
    void breakOff() {
        server.breakOff();
    }

    /** Tells the browsers that it is over. */
    @Override
    public void close() {
        server.close();
    }
}
