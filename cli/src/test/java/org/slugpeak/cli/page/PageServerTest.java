package org.slugpeak.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Sessions;
import org.slugpeak.core.peak.Seek;
import org.slugpeak.core.peak.Trend;
import org.slugpeak.core.session.Adjuster;
import org.slugpeak.core.session.EndReason;
import org.slugpeak.core.session.Passed;
import org.slugpeak.core.session.SessionEnd;

/** The page over HTTP, without a browser. */
class PageServerTest {

    /** A beat comes every second: what has not come after so many does not come. */
    private static final int MOST_LINES = 15;

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private static HttpResponse<String> get(String url) throws IOException, InterruptedException {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(url)).build(), BodyHandlers.ofString());
    }

    private static int press(PageBench bench, String word, String origin) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(bench.url() + "keys"))
                .header("Origin", origin)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString("\"" + word + "\""))
                .build();
        return CLIENT.send(request, BodyHandlers.discarding()).statusCode();
    }

    private static String origin(PageBench bench) {
        return "http://127.0.0.1:" + bench.port;
    }

    private static Iterator<String> events(PageBench bench) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(bench.url() + "events")).build();
        HttpResponse<Stream<String>> response = CLIENT.send(request, BodyHandlers.ofLines());
        assertEquals(200, response.statusCode());
        return response.body().filter(line -> line.startsWith("data: ")).iterator();
    }

    private static String awaitLine(Iterator<String> lines, String part) {
        for (int i = 0; i < MOST_LINES && lines.hasNext(); i++) {
            String line = lines.next();
            if (line.contains(part)) {
                return line;
            }
        }
        throw new AssertionError("no line with " + part);
    }

    @Test
    void aSessionIsSeenAsItGoesOnAndWhoComesLateSeesItToo() throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            Iterator<String> early = events(bench);
            awaitLine(early, "\"act\":\"WAIT\"");
            bench.take(
                    Sessions.start(Seek.PEAK),
                    new Adjuster(0, "T1 top", Adjuster.Action.DONE, 0.2, 0.4, 6.02),
                    Sessions.reading(0, 0.5, 0.5, Trend.RISING),
                    new Passed(Sessions.seconds(1), 0.5, 0, 0.3));
            for (Iterator<String> lines : List.of(early, events(bench))) {
                String state = awaitLine(lines, "\"act\":\"BACK\"");
                assertTrue(state.contains("\"word\":\"BACK 0.0\""), state);
                assertTrue(state.contains("\"call\":\"BACK\""), state);
                assertTrue(state.contains("\"event\":\"PASSED\""), state);
            }
            awaitLine(events(bench), "[[\"T1 top\",\"+6.0\"]]");
            awaitLine(events(bench), "[[0.0,0.5]]");
        }
    }

    @Test
    void theEndIsToldBeforeTheConnectionIsClosed() throws Exception {
        Iterator<String> lines;
        try (PageBench bench = PageBench.toLookAt()) {
            lines = events(bench);
            awaitLine(lines, "\"act\":\"WAIT\"");
            bench.take(new SessionEnd(0, 0, EndReason.Known.QUIT));
        }
        awaitLine(lines, "\"act\":\"END\"");
    }

    @Test
    void everyButtonAsksForWhatItsKeyAsksForTheLevelKeysToo() throws Exception {
        try (PageBench bench = PageBench.withKeys()) {
            List<KeyAction> buttons = List.of(
                    KeyAction.NEXT,
                    KeyAction.MARK,
                    KeyAction.AGAIN,
                    KeyAction.SKIP,
                    KeyAction.REST,
                    KeyAction.LEVEL,
                    KeyAction.CUT,
                    KeyAction.CHECK,
                    KeyAction.DONE,
                    KeyAction.DROP,
                    KeyAction.REPAIRED);
            String page = get(bench.url()).body();
            for (KeyAction action : buttons) {
                assertTrue(page.contains("data-key=\"" + action.word() + "\""), action + " has no button");
                press(bench, action.word(), origin(bench));
                assertEquals(Optional.of(action), bench.showing.keys().poll());
            }
        }
    }

    @Test
    void aButtonIsTakenFromThePageAloneAndOnlyWhatHasAButton() throws Exception {
        try (PageBench bench = PageBench.withKeys()) {
            assertEquals(204, press(bench, "mark", origin(bench)));
            assertEquals(403, press(bench, "next", "http://evil.example"));
            assertEquals(403, press(bench, "quit", origin(bench)));
            assertEquals(403, press(bench, "x".repeat(100_000), origin(bench)));
            assertEquals(Optional.of(KeyAction.MARK), bench.showing.keys().poll());
            assertEquals(Optional.empty(), bench.showing.keys().poll());
        }
    }

    @Test
    void withoutPermissionNoButtonIsThereAndNoneIsTaken() throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            assertEquals(403, press(bench, "next", origin(bench)));
            assertFalse(get(bench.url()).body().contains("<button"));
            assertEquals(Optional.empty(), bench.showing.keys().poll());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "page.html",
                "PageFiles.class",
                "../page.css",
                "..%2fpage.css",
                "%2e%2e/words/english.properties",
                "/etc/passwd",
                "page.css/",
                "page.css%00",
                "..\\page.css"
            })
    void nothingIsServedButTheFilesOfThePage(String name) throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            String answer =
                    raw(bench, "GET /" + bench.token.text() + "/" + name + " HTTP/1.1", "127.0.0.1:" + bench.port);
            assertTrue(answer.matches("HTTP/1.1 40[04] .*"), answer);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "page.css", "page.js", "plot.js", "sound.js", "icon.svg", "score.json"})
    void everyFileForbidsWhatThePageDoesNotNeed(String name) throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            HttpResponse<String> answer = get(bench.url() + name);
            assertEquals(200, answer.statusCode());
            assertFalse(answer.body().isEmpty());
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElse("");
            assertTrue(policy.startsWith("default-src 'none'; script-src 'self';"), policy);
            assertFalse(policy.contains("unsafe"), policy);
            assertEquals(
                    "nosniff",
                    answer.headers().firstValue("X-Content-Type-Options").orElse(""));
            assertEquals(
                    "no-store", answer.headers().firstValue("Cache-Control").orElse(""));
            assertEquals(Optional.empty(), answer.headers().firstValue("Access-Control-Allow-Origin"));
        }
    }

    @Test
    void aNameThatLeadsHereByFraudIsRefused() throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            String line = "GET /" + bench.token.text() + "/events HTTP/1.1";
            assertTrue(raw(bench, line, "evil.example:" + bench.port).startsWith("HTTP/1.1 403 "));
        }
    }

    @Test
    void aWrongAddressIsAnsweredLateAndToldWithTheTokenOfNobody() throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            assertEquals(
                    404, get("http://127.0.0.1:" + bench.port + "/guess/events").statusCode());
            assertEquals(
                    "second screen: 127.0.0.1 asked for an address that is not that of the page (1 times in all)\n",
                    bench.said());
        }
    }

    @Test
    void whileWrongAddressesAreTriedThePageIsSeen() throws Exception {
        try (PageBench bench = PageBench.toLookAt()) {
            List<Socket> guessing = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                guessing.add(ask(bench, "GET /guess" + i + "/ HTTP/1.1", "127.0.0.1:" + bench.port));
            }
            awaitLine(events(bench), "\"act\":\"WAIT\"");
            for (Socket each : guessing) {
                each.close();
            }
        }
    }

    private static String raw(PageBench bench, String line, String host) throws IOException {
        try (Socket socket = ask(bench, line, host)) {
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII))
                    .readLine();
        }
    }

    private static Socket ask(PageBench bench, String line, String host) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), bench.port);
        socket.getOutputStream().write((line + "\r\nHost: " + host + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        return socket;
    }
}
