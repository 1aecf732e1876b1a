package org.slugpeak.cli.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every public type and method of core and bridge is documented. */
final class DocumentationTest {

    @ParameterizedTest
    @ValueSource(strings = {"core", "bridge"})
    void everythingPublicIsDocumented(String module) throws IOException {
        Path sources = Path.of(System.getProperty("slugpeak.shared"), "..", module, "src", "main", "java")
                .normalize();
        List<Path> files;
        try (Stream<Path> walk = Files.walk(sources)) {
            files = walk.filter(path -> path.toString().endsWith(".java")).toList();
        }
        assertTrue(files.size() > 10, "only " + files.size() + " files in " + sources);
        assertEquals(List.of(), undocumented(files));
    }

    private static List<String> undocumented(List<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> missing = new ArrayList<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            DocTrees docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Scanner(docs, unit, missing).scan(unit, null);
            }
        }
        return missing;
    }

    private static final class Scanner extends TreePathScanner<Void, Void> {

        private final DocTrees docs;
        private final CompilationUnitTree unit;
        private final List<String> missing;

        Scanner(DocTrees docs, CompilationUnitTree unit, List<String> missing) {
            this.docs = docs;
            this.unit = unit;
            this.missing = missing;
        }

        @Override
        public Void visitClass(ClassTree type, Void nothing) {
            boolean inInterface = enclosingIsInterface();
            if (!inInterface && !isVisible(type.getModifiers())) {
                return null;
            }
            demand(type.getSimpleName().toString());
            super.visitClass(type, null);
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            boolean overrides = method.getModifiers().getAnnotations().stream()
                    .anyMatch(each -> each.getAnnotationType().toString().equals("Override"));
            boolean isConstructor = method.getName().contentEquals("<init>");
            boolean visible = isVisible(method.getModifiers()) || enclosingIsInterface();
            if (visible && !overrides && !(isConstructor && enclosingIs(Tree.Kind.RECORD))) {
                demand(method.getName().toString());
            }
            return null;
        }

        private void demand(String name) {
            DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
            if (comment == null || comment.getFirstSentence().isEmpty()) {
                missing.add(unit.getSourceFile().getName() + ": " + name);
            }
        }

        private boolean enclosingIsInterface() {
            return enclosingIs(Tree.Kind.INTERFACE);
        }

        private boolean enclosingIs(Tree.Kind kind) {
            return getCurrentPath().getParentPath().getLeaf().getKind() == kind;
        }

        private static boolean isVisible(ModifiersTree modifiers) {
            return modifiers.getFlags().contains(Modifier.PUBLIC)
                    || modifiers.getFlags().contains(Modifier.PROTECTED);
        }
    }
}
