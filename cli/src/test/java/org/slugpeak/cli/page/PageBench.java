package org.slugpeak.cli.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;
import org.slugpeak.bridge.time.Ticker;
import org.slugpeak.cli.display.DisplayOptions;
import org.slugpeak.cli.display.KeyAction;
import org.slugpeak.cli.display.Showing;
import org.slugpeak.cli.run.ShowingOutput;
import org.slugpeak.core.session.SessionRecord;

/** A page that is served on this machine, on any free port, and what was said of it. */
final class PageBench implements AutoCloseable {

    final PageToken token;
    final int port;
    final SecondScreen screen;
    final Showing showing;
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();

    private PageBench(int port, PageToken token, Set<KeyAction> buttons) throws IOException {
        this.token = token;
        PagePlace place = PagePlace.here(port);
        PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
        com.sun.net.httpserver.HttpServer server = PageServer.bind(place.socket());
        this.port = server.getAddress().getPort();
        Door door = new Door(token, place.hosts(this.port));
        screen =
                SecondScreen.serve(server, door, QrRows.of(place.url(this.port, token)), buttons, err, Ticker.system());
        showing = new DisplayOptions().open(err, err, true, Set.of());
        screen.join(showing);
    }

    static PageBench withKeys() throws IOException {
        Set<KeyAction> buttons = new java.util.HashSet<>(ShowingOutput.USUAL_KEYS);
        buttons.addAll(ShowingOutput.LEVEL_KEYS);
        buttons.add(KeyAction.AGAIN);
        return new PageBench(0, PageToken.fresh(), buttons);
    }

    static PageBench toLookAt() throws IOException {
        return new PageBench(0, PageToken.fresh(), Set.of());
    }

    /** Another session that happens to have the same address, as none really has: the browser finds it again. */
    PageBench again() throws IOException {
        return new PageBench(port, token, Set.of());
    }

    String url() {
        return PagePlace.here(port).url(port, token);
    }

    PageBench take(SessionRecord... records) {
        Arrays.stream(records).forEach(screen::take);
        return this;
    }

    String said() {
        return said.toString(StandardCharsets.UTF_8);
    }

    /** What the server answers to a plain request, with any more headers, two by two. */
    int code(String path, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return HttpClient.newHttpClient()
                .send(request.build(), BodyHandlers.discarding())
                .statusCode();
    }

    @Override
    public void close() {
        screen.close();
        showing.close();
    }
}
