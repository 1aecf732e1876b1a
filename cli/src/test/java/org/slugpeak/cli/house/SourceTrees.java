package org.slugpeak.cli.house;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The project's own text as the compiler reads it. */
final class SourceTrees {

    private SourceTrees() {}

    static List<CompilationUnitTree> of(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            List<CompilationUnitTree> trees = new ArrayList<>();
            task.parse().forEach(trees::add);
            return trees;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
