package org.slugpeak.cli.words;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What may stand on the first page of a report, in its order. Immutable; any thread may use it. */
public enum ReportFact implements Saying {
    MAKER(false),
    MODEL(false),
    SERIAL(false),
    VALVES(false),
    IF(false),
    OWNER(true),
    JOB(true),
    TECHNICIAN(true),
    PLACE(true),
    GENERATOR(false),
    METER(false),
    CALIBRATION(false),
    REMARKS(false);

    private final boolean personal;

    ReportFact(boolean personal) {
        this.personal = personal;
    }

    /**
     * The fact of a key.
     *
     * @param key as a user writes it, in any case
     * @return empty where there is none of that name
     */
    public static Optional<ReportFact> ofKey(String key) {
        return Stream.of(values())
                .filter(each -> each.key().equals(key.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /**
     * How a user writes it.
     *
     * @return small letters
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether it tells of a person, so that whoever hands the report on should know that it is there.
     *
     * @return true for owner, job, technician and place
     */
    public boolean isPersonal() {
        return personal;
    }

    @Override
    public String kind() {
        return "fact";
    }
}
