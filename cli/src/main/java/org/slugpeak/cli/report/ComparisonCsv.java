package org.slugpeak.cli.report;

import java.util.Optional;
import org.slugpeak.core.curve.Estimate;
import org.slugpeak.core.word.Coded;

/** A comparison as lines of figures (RFC 4180); what could not be compared stands in lines whose part is {@code note}. All methods are pure. */
public final class ComparisonCsv {

    /** What every such file begins with. */
    static final String OPENING = "part,name,quantity,unit,then,now,change,uncertainty,verdict\n";

    private ComparisonCsv() {}

    /**
     * The lines.
     *
     * @param comparison of two sessions
     * @return with a line of headings; changes and uncertainties in the unit of the line, the latter two sigma
     */
    public static String of(Comparison comparison) {
        StringBuilder text = new StringBuilder(OPENING);
        comparison.figures().forEach(each -> text.append(line(each)));
        comparison
                .left()
                .forEach(why ->
                        text.append("note,").append(CsvExport.quoted(why)).append(",,,,,,,\n"));
        return text.toString();
    }

    private static String line(Compared it) {
        return String.join(
                        ",",
                        Coded.of(it.part()),
                        CsvExport.quoted(it.name()),
                        CsvExport.quoted(it.quantity()),
                        CsvExport.quoted(it.unit()),
                        number(it.then()),
                        number(it.now()),
                        CsvExport.number(it.change().orElse(Double.NaN)),
                        CsvExport.number(it.uncertainty()),
                        Coded.of(it.verdict()))
                + "\n";
    }

    private static String number(Optional<Estimate> figure) {
        return CsvExport.number(figure.map(Estimate::value).orElse(Double.NaN));
    }
}
