package org.slugpeak.cli.page;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Speaks HTTP: asks the door, answers. The server is the JDK's own. What takes long has a thread elsewhere ({@link Screens}), so that the few
 * threads here are always free soon. Any thread may close it.
 */
final class PageServer implements AutoCloseable {

    private static final int THREADS = 4;
    private static final int BACKLOG = 32;
    private static final int LONGEST_KEY = 32;

    /** What a browser must not do with the page, whatever got into it; nothing comes from elsewhere and nothing in the page runs. */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
            + " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none';"
            + " require-trusted-types-for 'script'; trusted-types 'none'";

    private static final int OK = 200;
    private static final int TAKEN = 204;
    private static final int MOVED = 308;
    private static final int REFUSED = 403;
    private static final int NOT_FOUND = 404;
    private static final int WRONG_METHOD = 405;
    private static final int TOO_MANY = 503;

    private final HttpServer server;
    private final ThreadPoolExecutor workers;
    private final ScheduledExecutorService later;
    private final Door door;
    private final PageFiles files;
    private final Screens screens;
    private final Wishes wishes;
    private final Turnstile turnstile;
    private final ScheduledFuture<?> watch;

    /** Takes what a button sent. */
    @FunctionalInterface
    interface Wishes {

        /**
         * Takes one.
         *
         * @param word of an action
         * @return whether it was taken
         */
        boolean take(String word);
    }

    /**
     * Who is served what.
     *
     * @param door decides who gets in
     * @param files that are served
     * @param screens where the sights come from
     * @param wishes where the buttons' words go
     * @param tell says something to the person at the terminal
     */
    record House(
            Door door, PageFiles files, Screens screens, Wishes wishes, java.util.function.Consumer<String> tell) {}

    private PageServer(HttpServer server, House house) {
        this.server = server;
        door = house.door();
        files = house.files();
        screens = house.screens();
        wishes = house.wishes();
        workers = new ThreadPoolExecutor(
                THREADS, THREADS, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(), named("page-server"));
        later = Executors.newSingleThreadScheduledExecutor(named("page-later"));
        turnstile = new Turnstile(workers, house.tell());
        watch = later.scheduleWithFixedDelay(screens::dropStuck, 1, 1, TimeUnit.SECONDS);
    }

    /**
     * Begins to serve.
     *
     * @param server bound, not started
     * @param house who is served what
     * @return to be closed
     */
    static PageServer start(HttpServer server, House house) {
        PageServer page = new PageServer(server, house);
        server.createContext("/", page::answer);
        server.setExecutor(page.workers);
        server.start();
        return page;
    }

    /**
     * A server at an address.
     *
     * @param at port 0 for any
     * @return bound, not started
     * @throws IOException where the port is taken
     */
    static HttpServer bind(InetSocketAddress at) throws IOException {
        // Read once by the JDK, when the first server is made: small answers go out at once; who does not finish a
        // request is let go.
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", "10");
        System.setProperty("jdk.httpserver.maxConnections", "64");
        return HttpServer.create(at, BACKLOG);
    }

    private static ThreadFactory named(String name) {
        AtomicInteger count = new AtomicInteger();
        return work -> {
            Thread thread = new Thread(work, name + "-" + count.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        };
    }

    private void answer(HttpExchange exchange) throws IOException {
        Asked asked = asked(exchange);
        headers(exchange.getResponseHeaders());
        switch (door.entry(asked)) {
            case PAGE -> send(exchange, OK, files.page());
            case FILE -> file(exchange, Door.name(asked));
            case EVENTS -> join(exchange);
            case KEY -> key(exchange);
            case TO_PAGE -> {
                exchange.getResponseHeaders().set("Location", asked.path() + "/");
                finish(exchange, MOVED);
            }
            case WRONG_TOKEN -> turnAway(exchange);
            case FOREIGN -> send(exchange, REFUSED, PageFiles.nothing());
            case WRONG_METHOD -> finish(exchange, WRONG_METHOD);
        }
    }

    private static Asked asked(HttpExchange exchange) {
        Headers headers = exchange.getRequestHeaders();
        return new Asked(
                exchange.getRequestMethod(),
                exchange.getRequestURI().getRawPath(),
                one(headers, "Host"),
                one(headers, "Origin"),
                one(headers, "Sec-Fetch-Site"),
                one(headers, "Sec-Fetch-Dest"),
                one(headers, "Content-Type").orElse(""));
    }

    /** A header that comes twice is as good as a wrong one. */
    private static Optional<String> one(Headers headers, String name) {
        return Optional.ofNullable(headers.get(name)).map(values -> String.join(", ", values));
    }

    private static void headers(Headers headers) {
        headers.set("Content-Security-Policy", POLICY);
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("X-Frame-Options", "DENY");
        headers.set("Referrer-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cache-Control", "no-store");
    }

    private void file(HttpExchange exchange, String name) throws IOException {
        Optional<PageFiles.Served> found = files.find(name);
        send(exchange, found.isPresent() ? OK : NOT_FOUND, found.orElseGet(PageFiles::nothing));
    }

    /** The answer goes on for as long as somebody looks; its thread is not one of ours. */
    private void join(HttpExchange exchange) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream; charset=utf-8");
        if (screens.count() >= Screens.MOST) {
            finish(exchange, TOO_MANY);
            return;
        }
        exchange.sendResponseHeaders(OK, 0);
        if (!screens.join(exchange.getResponseBody())) {
            exchange.close();
        }
    }

    private void key(HttpExchange exchange) throws IOException {
        byte[] sent = exchange.getRequestBody().readNBytes(LONGEST_KEY);
        boolean taken = wishes.take(new String(sent, StandardCharsets.UTF_8).replace("\"", ""));
        finish(exchange, taken ? TAKEN : REFUSED);
    }

    private void turnAway(HttpExchange exchange) {
        String who = exchange.getRemoteAddress().getAddress().getHostAddress();
        turnstile.turnAway(who, () -> refuse(exchange), exchange::close);
    }

    private static void refuse(HttpExchange exchange) {
        try {
            send(exchange, NOT_FOUND, PageFiles.nothing());
        } catch (IOException gone) {
            exchange.close();
        }
    }

    private static void send(HttpExchange exchange, int code, PageFiles.Served served) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", served.type());
        byte[] content = served.content().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(code, content.length);
        exchange.getResponseBody().write(content);
        exchange.close();
    }

    private static void finish(HttpExchange exchange, int code) throws IOException {
        exchange.sendResponseHeaders(code, -1);
        exchange.close();
    }

    @Override
    public void close() {
        screens.close();
        breakOff();
    }

    /** Every connection ends where it is. */
    void breakOff() {
        server.stop(0);
        watch.cancel(true);
        later.shutdownNow();
        workers.shutdownNow();
    }
}
