package org.slugpeak.cli.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.slugpeak.bridge.disk.Draft;
import org.slugpeak.bridge.source.BadInput;
import org.slugpeak.cli.program.ProgramFolders;

/**
 * Prints a report to PDF with a browser that is installed already; it is run without a window, without its user's profile and without a
 * network. One thread at a time.
 */
public final class PdfPrinter {

    /** Stands at the end of what was printed here, as a comment of PDF (ISO 32000-1, 7.2.4), so that it is known again. */
    static final String MARK = "%slugpeak report\n";

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge");

    /** Where the installers of Windows and macOS put such a browser, which is on no path there. */
    private static final List<String> PLACES = List.of(
            "/Applications/Chromium.app/Contents/MacOS/Chromium",
            "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
            "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
            "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe");

    private static final long PATIENCE_SECONDS = 120;

    private final Path browser;

    private PdfPrinter(Path browser) {
        this.browser = browser;
    }

    /**
     * Looks for a browser.
     *
     * @param environment of the process, for its PATH
     * @return empty where there is none
     */
    public static Optional<PdfPrinter> find(Map<String, String> environment) {
        Stream<Path> onPath = ProgramFolders.of(environment)
                .flatMap(folder -> NAMES.stream()
                        .flatMap(name -> Stream.of(name, name + ".exe"))
                        .map(folder::resolve));
        return Stream.concat(onPath, PLACES.stream().map(Path::of))
                .filter(Files::isExecutable)
                .findFirst()
                .map(PdfPrinter::new);
    }

    /**
     * Prints a page.
     *
     * @param page an HTML file
     * @param pdf what to write; what is there is replaced as a whole, or stays as it was
     * @throws BadInput where the browser or the disk failed
     */
    public void print(Path page, Path pdf) throws BadInput {
        try {
            Path room = Files.createTempDirectory("slugpeak-print");
            try {
                Path printed = room.resolve("report.pdf");
                run(page, printed, room);
                keep(printed, pdf);
            } finally {
                delete(room);
            }
        } catch (IOException e) {
            throw new BadInput(
                    "no PDF (" + browser + ": " + e.getMessage() + "): " + page
                            + " is there; open it in a browser and print it to a file",
                    e);
        }
    }

    private void run(Path page, Path printed, Path room) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                browser.toString(),
                "--headless",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--no-pdf-header-footer",
                "--user-data-dir=" + room.resolve("profile"),
                "--print-to-pdf=" + printed));
        if (System.getProperty("user.name", "").equals("root")) {
            command.add("--no-sandbox"); // it refuses to start otherwise; the page is our own and has no script
        }
        command.add(page.toAbsolutePath().toUri().toString());
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(room.resolve("browser.log").toFile())
                .start();
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IOException("the browser did not end in " + PATIENCE_SECONDS + " s");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        } finally {
            process.destroyForcibly();
        }
        if (!Files.exists(printed)) {
            throw new IOException("the browser ended with " + process.exitValue() + " and printed nothing");
        }
    }

    private static void keep(Path printed, Path pdf) throws IOException {
        try (Draft draft = Draft.of(pdf)) {
            OutputStream out = draft.out();
            Files.copy(printed, out);
            out.write(MARK.getBytes(StandardCharsets.US_ASCII));
            draft.replace();
        }
    }

    private static void delete(Path room) throws IOException {
        try (Stream<Path> all = Files.walk(room)) {
            for (Path each : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
