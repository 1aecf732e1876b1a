package org.slugpeak.cli.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slugpeak.bridge.log.LogEntry;
import org.slugpeak.cli.words.ReportPhrase;
import org.slugpeak.core.level.CheckKind;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.Caution;
import org.slugpeak.core.session.Drift;
import org.slugpeak.core.session.FamilyListener;
import org.slugpeak.core.session.Finding;
import org.slugpeak.core.session.Link;
import org.slugpeak.core.session.NoPeak;
import org.slugpeak.core.session.Overload;
import org.slugpeak.core.session.OverloadCleared;
import org.slugpeak.core.session.TwoPeaks;
import org.slugpeak.core.session.Weak;
import org.slugpeak.core.session.Work;

/** What was warned of and not put right by the end of a session, in plain words. One thread at a time. */
final class Remaining {

    /** More is no list that anybody reads. */
    private static final int MOST = 12;

    private final Map<String, String> warnings = new LinkedHashMap<>();

    /** The next line of the log, with the words that the report has for it. */
    void take(LogEntry entry, Optional<String> words) {
        entry.record().tellFamily(new Hearing(words));
    }

    /** In the order in which they came up. */
    List<String> warnings() {
        return warnings.values().stream().limit(MOST).toList();
    }

    /** Looks at one line. */
    private final class Hearing implements FamilyListener {

        private final Optional<String> words;

        private Hearing(Optional<String> words) {
            this.words = words;
        }

        private void stands(String key) {
            words.ifPresent(text -> warnings.put(key, text));
        }

        @Override
        public void caution(Caution it) {
            if (it instanceof Overload) {
                stands("overload");
            } else if (it instanceof OverloadCleared) {
                warnings.remove("overload");
            } else if (it instanceof Drift) {
                stands("drift");
            } else if (it instanceof Caution.Settled) {
                warnings.remove("drift");
            } else if (it instanceof Weak) {
                stands("weak");
            } else if (it instanceof Caution.Suspected suspected) {
                stands("suspected " + suspected.suspicion());
            } else if (it instanceof Caution.NoLongerSuspected over) {
                warnings.remove("suspected " + over.suspicion());
            } else if (it instanceof Caution.RestMissing) {
                stands("rest");
            } else if (it instanceof Caution.Checked checked && checked.check() == CheckKind.REST) {
                warnings.remove("rest");
            }
        }

        @Override
        public void finding(Finding it) {
            if (it instanceof TwoPeaks) {
                stands("two-peaks");
            } else if (it instanceof NoPeak) {
                stands("no-peak");
            }
        }

        /** What an adjuster was warned of is put right when it is set after all. */
        @Override
        public void work(Work it) {
            if (it instanceof Adjuster adjuster && adjuster.action() != Adjuster.Action.BEGIN) {
                String skipped = "skipped " + adjuster.name();
                if (adjuster.action() == Adjuster.Action.SKIP) {
                    warnings.put(skipped, ReportPhrase.WAS_SKIPPED.of(adjuster.name()));
                } else {
                    List.of(skipped, "two-peaks", "no-peak", "weak").forEach(warnings::remove);
                }
            }
        }

        @Override
        public void link(Link it) {
            if (it instanceof Link.Changed changed) {
                if (changed.state() == Link.State.LOST) {
                    stands("link");
                } else if (changed.state() == Link.State.RESUMED) {
                    warnings.remove("link");
                }
            }
        }
    }
}
