package org.slugpeak.cli.cue;

import java.util.Optional;
import org.slugpeak.core.session.Request;

/** What asks for something must be read by the eyes; what begins an adjuster or follows its end has been heard already. Immutable. */
final class RequestCues implements Request.Matcher<Optional<Event>> {

    @Override
    public Optional<Event> asked(Request.Asked it) {
        return Optional.of(Event.LOOK);
    }

    @Override
    public Optional<Event> cutGenerator(Request.CutGenerator it) {
        return Optional.of(Event.LOOK);
    }

    @Override
    public Optional<Event> generatorChanged(Request.GeneratorChanged it) {
        return Optional.empty();
    }

    @Override
    public Optional<Event> generatorUnchanged(Request.GeneratorUnchanged it) {
        return Optional.empty();
    }

    @Override
    public Optional<Event> checkOver(Request.CheckOver it) {
        return Optional.of(Event.BEGIN);
    }

    @Override
    public Optional<Event> checkDropped(Request.CheckDropped it) {
        return Optional.of(Event.LOOK);
    }

    @Override
    public Optional<Event> setUp(Request.SetUp it) {
        return Optional.of(Event.LOOK);
    }

    @Override
    public Optional<Event> undamp(Request.Undamp it) {
        return Optional.of(Event.LOOK);
    }

    @Override
    public Optional<Event> turn(Request.Turn it) {
        return Optional.empty();
    }

    @Override
    public Optional<Event> handsOff(Request.HandsOff it) {
        return Optional.empty();
    }

    @Override
    public Optional<Event> setGenerator(Request.SetGenerator it) {
        return Optional.empty();
    }
}
