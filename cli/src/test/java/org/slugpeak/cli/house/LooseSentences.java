package org.slugpeak.cli.house;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.util.TreeScanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Strings in the sources that read like a sentence: two words of small letters beside each other. What is handed to an exception, or
 * to a method that makes or throws one, or tells of what is no reading, is an error text, and what an assertion or a logger is told is for programmers; both
 * are left out.
 */
final class LooseSentences extends TreeScanner<Void, String> {

    private static final Pattern SENTENCE = Pattern.compile("\\b[a-z]{2,} [a-z]{2,}\\b");

    private static final Pattern ERROR = Pattern.compile(
            "\\w*Exception|Refused|BadInput|BadConfiguration|BadLog|PortUnavailable|PortLost|BadLine|NewerVersion");

    /** Makes or throws an exception, tells of what is no reading or was refused, or writes for programmers. */
    private static final Pattern MAKES_ERRORS = Pattern.compile(
            "(.*\\.)?(wrong|require|refuse\\w*|garbled|impossible|setOtherwise" + "|debug|info|warn|requireNonNull)");

    private final List<String> found = new ArrayList<>();

    static List<String> in(List<CompilationUnitTree> sources) {
        LooseSentences hunt = new LooseSentences();
        for (CompilationUnitTree each : sources) {
            Path file = Path.of(each.getSourceFile().toUri()).getFileName();
            hunt.scan(each, file.toString().replace(".java", ""));
        }
        return hunt.found;
    }

    @Override
    public Void visitLiteral(LiteralTree literal, String file) {
        if (literal.getValue() instanceof String text && SENTENCE.matcher(text).find()) {
            found.add(file + ": " + text);
        }
        return null;
    }

    @Override
    public Void visitThrow(ThrowTree thrown, String file) {
        return null;
    }

    @Override
    public Void visitNewClass(NewClassTree made, String file) {
        return ERROR.matcher(made.getIdentifier().toString()).matches() ? null : super.visitNewClass(made, file);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, String file) {
        return MAKES_ERRORS.matcher(call.getMethodSelect().toString()).matches()
                ? scan(call.getMethodSelect(), file)
                : super.visitMethodInvocation(call, file);
    }

    @Override
    public Void visitAnnotation(AnnotationTree annotation, String file) {
        return annotation.getAnnotationType().toString().equals("SuppressWarnings")
                ? null
                : super.visitAnnotation(annotation, file);
    }
}
