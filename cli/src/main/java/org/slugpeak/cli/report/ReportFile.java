package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slugpeak.bridge.source.BadInput;

/**
 * A report takes the place of an older report and of nothing else: whatever the name, what is in the file tells what it is. All
 * methods may be called by any thread.
 */
public final class ReportFile {

    private static final List<String> PLAIN_OPENINGS = List.of(
            MarkdownReport.OPENING, CsvExport.READINGS, CsvExport.DIALS, FigureLines.FIGURES, ComparisonCsv.OPENING);

    private ReportFile() {}

    /**
     * Refuses a place where something else is.
     *
     * @param file where a report is to be
     * @throws BadInput unless nothing is there, or an empty file, or a report that slugpeak made
     */
    public static void refuseUnlessReplaceable(Path file) throws BadInput {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Optional<String> opening = opening(file);
        if (opening.isEmpty() || !(isReport(opening.get()) || isPrintedHere(file))) {
            throw new BadInput(file + " is there already and is no report of slugpeak: nothing else is ever replaced;"
                    + " choose another name with --out");
        }
    }

    private static boolean isPrintedHere(Path file) {
        int length = PdfPrinter.MARK.length();
        try (SeekableByteChannel in = Files.newByteChannel(file)) {
            in.position(Math.max(0, in.size() - length));
            byte[] end = Channels.newInputStream(in).readNBytes(length);
            return PdfPrinter.MARK.equals(new String(end, StandardCharsets.US_ASCII));
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean isReport(String opening) {
        return opening.isEmpty() || openings().anyMatch(opening::startsWith);
    }

    private static Stream<String> openings() {
        return Stream.of(HtmlReport.openings(), PLAIN_OPENINGS).flatMap(List::stream);
    }

    /** Empty for what is no file that can be read. */
    private static Optional<String> opening(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        int longest = openings()
                .mapToInt(each -> each.getBytes(StandardCharsets.UTF_8).length)
                .max()
                .orElse(0);
        try (InputStream in = Files.newInputStream(file)) {
            return Optional.of(new String(in.readNBytes(longest), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
