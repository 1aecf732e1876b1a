package org.slugpeak.bridge.meter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slugpeak.bridge.instrument.InstrumentDescription;
import org.slugpeak.bridge.instrument.MeterSetting;
import org.slugpeak.bridge.source.BadConfiguration;

/**
 * The families of meters that send frames and have no name to be asked for: each tries to understand all that comes, and one is
 * found only where several frames in a row leave no other. One thread at a time.
 */
final class HeardFamilies {

    /** By chance, or by a frame of another family, so many in a row do not happen. */
    private static final int FRAMES_ENOUGH = 4;

    private final List<Family> all;

    /** One family and its try. */
    private record Family(InstrumentDescription description, Candidate candidate) {

        boolean mayBe(int frames) {
            return 2 * candidate.readings() >= frames && candidate.soundEnough();
        }
    }

    private HeardFamilies(List<Family> all) {
        this.all = all;
    }

    static HeardFamilies of(List<InstrumentDescription> descriptions, MeterSetting setting) throws BadConfiguration {
        List<Family> all = new java.util.ArrayList<>();
        for (InstrumentDescription each : descriptions) {
            all.add(new Family(each, new Candidate(each.decoders().create(setting))));
        }
        return new HeardFamilies(List.copyOf(all));
    }

    /** To be fed with what comes. */
    List<Candidate> candidates() {
        return all.stream().map(Family::candidate).toList();
    }

    /** Whether some family has understood something, so that nobody else should be taken in a hurry. */
    boolean understandSome() {
        return all.stream().anyMatch(each -> each.mayBe(1) && each.candidate.readings() > 0);
    }

    /** The only family that is left. */
    Optional<Candidate> found() {
        List<Family> left = left();
        return left.size() == 1 ? Optional.of(left.get(0).candidate) : Optional.empty();
    }

    /** The families that cannot be told apart, as a question to the user; empty where there is nothing to ask. */
    Optional<String> question() {
        List<Family> left = left();
        if (left.size() < 2) {
            return Optional.empty();
        }
        String names = left.stream().map(each -> each.description.title()).collect(Collectors.joining(", "));
        String options =
                left.stream().map(each -> "--meter " + each.description.name()).collect(Collectors.joining(" or "));
        return Optional.of("this may be " + names + ", which the same bytes do not tell apart: which chip or kind is"
                + " your meter? Start again with " + options);
    }

    private List<Family> left() {
        int most = all.stream()
                .filter(each -> each.candidate.soundEnough())
                .mapToInt(each -> each.candidate.readings())
                .max()
                .orElse(0);
        return most < FRAMES_ENOUGH
                ? List.of()
                : all.stream().filter(each -> each.mayBe(most)).toList();
    }
}
