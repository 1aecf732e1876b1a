package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every public double and long of core and bridge says its unit, in its name or in what is written about it. */
final class UnitsTest {

    private static final int FEWEST = 80;
    private static final Set<String> NUMBERS =
            Set.of("double", "long", "double[]", "long[]", "OptionalDouble", "OptionalLong");

    /** One of the words that a name is made of. */
    private static final Pattern IN_NAME = Pattern.compile("(?:^|(?<=[a-z0-9_]))"
            + "(?i:nanos|millis|seconds?|minutes?|volts|amperes?|ohms?|siemens|watts|milliwatts|hz|khz|hertz|db|degrees|metres|turns?"
            + "|farads?|henry|kelvin|ratio|fraction|percent|factor|coefficient|count|index|steps|bits|fs)(?![a-z])");

    private static final Pattern IN_WORDS =
            Pattern.compile("\\b(?:(?i:nanoseconds?|milliseconds?|seconds?|minutes?|volts?|amperes?|ohms?"
                    + "|siemens|watts?|milliwatts?|hertz|kelvin|degrees|metres?|turns?|farads?|henr(?:y|ies)|ratio|fraction|coefficient|factor|times|per cent"
                    + "|percent|how many|how often|number of|decibels|index|counted|steps?|bytes?|bits|any number|version|full scale|full-scale|units?|without unit)"
                    + "|ms|s|m|V|mV|W|mW|Hz|kHz|MHz|dB|Q)\\b");

    @ParameterizedTest
    @ValueSource(strings = {"core", "bridge"})
    void everyPublicNumberSaysItsUnit(String module) throws IOException {
        Numbers numbers = numbers(Sources.of(module));
        assertTrue(numbers.seen > FEWEST, "only " + numbers.seen + " numbers were looked at");
        assertEquals(List.of(), numbers.bare);
    }

    @Test
    void aWordThatIsNoUnitDoesNotCount() {
        assertFalse(IN_NAME.matcher("value").find());
        assertFalse(IN_WORDS.matcher("the value that was read, not negative").find());
        assertFalse(IN_NAME.matcher("seconded").find());
        assertFalse(IN_NAME.matcher("best").find());
        assertTrue(IN_NAME.matcher("levelVolts").find());
        assertTrue(IN_NAME.matcher("secondsSinceCold").find());
        assertTrue(IN_WORDS.matcher("as read, in the unit of the readings").find());
    }

    private static Numbers numbers(List<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            Numbers numbers = new Numbers(DocTrees.instance(task));
            for (CompilationUnitTree unit : task.parse()) {
                numbers.scan(new TreePath(unit), null);
            }
            return numbers;
        }
    }

    private static final class Numbers extends TreePathScanner<Void, Void> {

        private final DocTrees docs;
        private final List<String> bare = new ArrayList<>();
        private int seen;

        Numbers(DocTrees docs) {
            this.docs = docs;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            if (!isVisible(type.getModifiers()) && !isIn(Tree.Kind.INTERFACE)) {
                return null;
            }
            return super.visitClass(type, null);
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            boolean overrides = method.getModifiers().getAnnotations().stream()
                    .anyMatch(each -> each.getAnnotationType().toString().equals("Override"));
            boolean constructor = method.getName().contentEquals("<init>");
            if (overrides
                    || (constructor && isIn(Tree.Kind.RECORD))
                    || !(isVisible(method.getModifiers()) || isIn(Tree.Kind.INTERFACE))) {
                return null;
            }
            method.getParameters()
                    .forEach(each -> look(
                            each,
                            each.getName().toString(),
                            param(each.getName().toString())));
            if (method.getReturnType() != null && isNumber(method.getReturnType())) {
                look(method.getName().toString(), comment());
            }
            return null;
        }

        @Override
        public Void visitVariable(VariableTree field, Void nothing) {
            String name = field.getName().toString();
            boolean component =
                    isIn(Tree.Kind.RECORD) && !field.getModifiers().getFlags().contains(Modifier.STATIC);
            if (component) {
                look(field, name, ofRecord(name));
            } else if (isVisible(field.getModifiers())) {
                look(field, name, comment());
            }
            return null;
        }

        private void look(VariableTree variable, String name, String words) {
            if (isNumber(variable.getType())) {
                look(name, words);
            }
        }

        private void look(String name, String words) {
            seen++;
            if (!IN_NAME.matcher(name).find() && !IN_WORDS.matcher(words).find()) {
                bare.add(Sources.ROOT.relativize(Path.of(getCurrentPath()
                                .getCompilationUnit()
                                .getSourceFile()
                                .toUri())) + ": " + name + ": " + words.strip());
            }
        }

        private static boolean isNumber(Tree type) {
            return NUMBERS.contains(type.toString());
        }

        private String comment() {
            return words(getCurrentPath(), "");
        }

        private String param(String name) {
            return words(getCurrentPath(), name);
        }

        private String ofRecord(String name) {
            return words(getCurrentPath().getParentPath(), name);
        }

        /** What is written of a parameter; where it has no name, of the thing itself and of what it returns. */
        private String words(TreePath path, String name) {
            DocCommentTree comment = docs.getDocCommentTree(path);
            if (comment == null) {
                return "";
            }
            return name.isEmpty()
                    ? comment.getFullBody() + " " + text(comment, ReturnTree.class)
                    : comment.getBlockTags().stream()
                            .filter(tag -> tag instanceof ParamTree param
                                    && param.getName().getName().contentEquals(name))
                            .map(tag -> ((ParamTree) tag).getDescription().toString())
                            .collect(Collectors.joining(" "));
        }

        private static String text(DocCommentTree comment, Class<? extends DocTree> kind) {
            return comment.getBlockTags().stream()
                    .filter(kind::isInstance)
                    .map(DocTree::toString)
                    .collect(Collectors.joining(" "));
        }

        private boolean isIn(Tree.Kind kind) {
            TreePath parent = getCurrentPath().getParentPath();
            return parent != null && parent.getLeaf().getKind() == kind;
        }

        private static boolean isVisible(ModifiersTree modifiers) {
            return modifiers.getFlags().contains(Modifier.PUBLIC)
                    || modifiers.getFlags().contains(Modifier.PROTECTED);
        }
    }
}
