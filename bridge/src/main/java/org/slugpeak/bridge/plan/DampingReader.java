package org.slugpeak.bridge.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.slugpeak.bridge.toml.Section;
import org.slugpeak.core.plan.Damping;
import org.slugpeak.core.plan.Setup;

/** Reads the damping resistor of a step. All methods are pure. */
final class DampingReader {

    private DampingReader() {}

    static Optional<Damping> damping(Section section, Setup setup) {
        Optional<String> winding = section.text("damp");
        OptionalDouble ohms = section.positive("damp-ohm");
        OptionalDouble q = section.positive("q");
        OptionalDouble kappa = section.positive("coupling");
        OptionalDouble picofarad = section.positive("tank-pF");
        boolean highTension = section.flag("damp-ht", true);
        if (winding.isEmpty()) {
            for (String key : List.of("damp-ohm", "damp-ht")) {
                if (section.has(key)) {
                    section.problem(key, "'" + key + "' says nothing without 'damp', the winding that it goes across");
                }
            }
            return Optional.empty();
        }
        if (ohms.isPresent()) {
            return Optional.of(new Damping(winding.get(), ohms.getAsDouble(), highTension));
        }
        boolean known = q.isPresent() && kappa.isPresent() && picofarad.isPresent();
        if (!known || setup.generatorHz().isEmpty() || !(kappa.getAsDouble() > 1)) {
            section.problem(
                    "damp",
                    "'damp' needs 'damp-ohm', or 'q', 'coupling' (above 1 = over-coupled) and 'tank-pF' to"
                            + " work it out from");
            return Optional.empty();
        }
        double reactance = 1 / (2 * Math.PI * setup.generatorHz().getAsDouble() * picofarad.getAsDouble() * 1e-12);
        return Optional.of(Damping.suggested(winding.get(), q.getAsDouble(), kappa.getAsDouble(), reactance)
                .withHighTension(highTension));
    }
}
