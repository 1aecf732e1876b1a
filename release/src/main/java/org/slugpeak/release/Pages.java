package org.slugpeak.release;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Turns what is written for users into pages for a browser, in the same folders, and copies the drawings beside them. */
final class Pages {

    private static final List<Extension> EXTENSIONS = List.of(TablesExtension.create());
    private static final String MARKDOWN = ".md";
    private static final String HEAD = "<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\">"
            + "<meta name=\"viewport\" content=\"width=device-width\"><title>slugpeak</title><style>body{max-width:46em;"
            + "margin:2em auto;padding:0 1em;font:1.05em/1.5 serif}table{border-collapse:collapse}td,th{border:1px solid;"
            + "padding:.2em .5em;text-align:left}pre{overflow-x:auto}img{max-width:100%}</style>\n";

    private final Path tree;
    private final Path target;

    private Pages(Path tree, Path target) {
        this.tree = tree;
        this.target = target;
    }

    /**
     * Writes them.
     *
     * @param args the source tree, a folder for the pages, then files and folders in the tree
     * @throws IOException if one cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        Pages pages = new Pages(Path.of(args[0]), Path.of(args[1]));
        for (String given : List.of(args).subList(2, args.length)) {
            try (Stream<Path> files = Files.walk(pages.tree.resolve(given))) {
                for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                    pages.write(file);
                }
            }
        }
    }

    private void write(Path file) throws IOException {
        Path copy = target.resolve(tree.relativize(file).toString());
        Files.createDirectories(copy.toAbsolutePath().getParent());
        if (!file.toString().endsWith(MARKDOWN)) {
            Files.write(copy, Files.readAllBytes(file));
            return;
        }
        Node text = Parser.builder().extensions(EXTENSIONS).build().parse(Files.readString(file));
        text.accept(new LinksToPages());
        String page = HEAD + HtmlRenderer.builder().extensions(EXTENSIONS).build().render(text);
        Files.writeString(Path.of(asPage(copy.toString())), page, StandardCharsets.UTF_8);
    }

    private static String asPage(String name) {
        return name.replaceFirst("\\.md(?=$|#)", ".html");
    }

    /** A link from text to text becomes one from page to page. */
    private static final class LinksToPages extends AbstractVisitor {
        @Override
        public void visit(Link link) {
            if (!link.getDestination().contains(":")) {
                link.setDestination(asPage(link.getDestination()));
            }
            visitChildren(link);
        }
    }
}
