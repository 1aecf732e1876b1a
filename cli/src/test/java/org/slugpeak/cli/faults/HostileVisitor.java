package org.slugpeak.cli.faults;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.slugpeak.cli.tool.PackagedTool;
import org.slugpeak.cli.tool.PackagedTool.Result;

/**
 * Mutated requests to the page of the packaged tool, from somebody who knows its address: the session goes on, whoever asks properly
 * afterwards gets the page, and nothing of it is told as a trace.
 */
final class HostileVisitor implements Trial {

    private static final int VISITS = 15;
    private static final int PATIENCE_MILLIS = 100;
    private static final int ANSWER_MILLIS = 20_000;
    private static final int ANSWER_BYTES = 16;
    private static final Pattern ADDRESS = Pattern.compile("http://\\S+");

    @Override
    public String name() {
        return "bytes-over-page";
    }

    @Override
    public int count() {
        return 60;
    }

    @Override
    public String attempt(SplittableRandom random, Path folder) throws Exception {
        String line = "exec $SLUGPEAK watch --from - --json --page 0 --page-keys 2>&1";
        try (PackagedTool tool = PackagedTool.startLine(folder, Map.of(), line)) {
            URI page = address(tool.lineWith("http://"));
            for (int i = 0; i < VISITS; i++) {
                visit(page, Mutation.of(request(page, random), random));
            }
            tool.send("0.5\n");
            tool.lineWith("\"type\":\"reading\"");
            String answer = ask(page, get(page, ""), ANSWER_MILLIS);
            Trial.require(answer.startsWith("HTTP/1.1 200 "), "the page is not served any more: " + answer);
            tool.endInput();
            Result result = tool.finish();
            String all = String.join("\n", result.output());
            Trial.require(result.exitCode() == 0, "ended with " + result.exitCode() + ": " + all);
            Trial.require(!all.contains("\tat "), all);
        }
        return "";
    }

    private static URI address(String line) {
        Matcher found = ADDRESS.matcher(line);
        Trial.require(found.find(), "no address in: " + line);
        return URI.create(found.group());
    }

    private static byte[] request(URI page, SplittableRandom random) {
        String text = switch (random.nextInt(4)) {
            case 0 -> get(page, "");
            case 1 -> get(page, "events");
            case 2 -> get(page, "page.js");
            default ->
                "POST " + page.getPath() + "keys HTTP/1.1\r\nHost: " + page.getAuthority() + "\r\nOrigin: http://"
                        + page.getAuthority()
                        + "\r\nContent-Type: application/json\r\nContent-Length: 6\r\n\r\n\"mark\"";
        };
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static String get(URI page, String file) {
        return "GET " + page.getPath() + file + " HTTP/1.1\r\nHost: " + page.getAuthority() + "\r\n\r\n";
    }

    private static void visit(URI page, byte[] bytes) throws IOException {
        try {
            ask(page, new String(bytes, StandardCharsets.ISO_8859_1), PATIENCE_MILLIS);
        } catch (SocketException cutOff) {
            // It is free to let go of somebody who talks nonsense.
        }
    }

    private static String ask(URI page, String request, int patienceMillis) throws IOException {
        try (Socket socket = new Socket(InetAddress.getByName(page.getHost()), page.getPort())) {
            socket.setSoTimeout(patienceMillis);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readNBytes(ANSWER_BYTES), StandardCharsets.ISO_8859_1);
        } catch (SocketTimeoutException silent) {
            return "";
        }
    }
}
