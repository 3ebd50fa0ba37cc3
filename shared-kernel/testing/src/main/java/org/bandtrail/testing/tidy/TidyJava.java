package org.bandtrail.testing.tidy;

import com.sun.source.tree.CatchTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * What only a parser sees in Java sources: methods over their budget of 40 lines, and exceptions that are caught and
 * dropped. The compiler's own parser is used, so no pattern has to guess where a method ends.
 */
final class TidyJava {
    static final int METHOD_LINES = 40;

    private TidyJava() {}

    static List<Complaint> complaints(SourceTree tree) {
        List<Complaint> complaints = new ArrayList<>();
        List<JavaFileObject> sources = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            if (file.isJava()) {
                sources.add(new Text(file));
            }
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask) compiler.getTask(null, null, problem -> {}, List.of("-proc:none"), null, sources);
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        try {
            for (CompilationUnitTree unit : task.parse()) {
                new Scanner(unit, positions, complaints).scan(unit, null);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException("The sources cannot be parsed.", failed);
        }
        return complaints;
    }

    private static final class Scanner extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<Complaint> complaints;
        private final String path;

        private Scanner(CompilationUnitTree unit, SourcePositions positions, List<Complaint> complaints) {
            this.unit = unit;
            this.positions = positions;
            this.complaints = complaints;
            // The compiler wraps the file object, so the path travels in its address.
            this.path = unit.getSourceFile().toUri().getPath().substring(1);
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            int lines =
                    line(positions.getEndPosition(unit, method)) - line(positions.getStartPosition(unit, method)) + 1;
            if (lines > METHOD_LINES) {
                complaints.add(new Complaint(
                        "method",
                        path,
                        lines,
                        "%s has %d lines, budget %d".formatted(method.getName(), lines, METHOD_LINES)));
            }
            return super.visitMethod(method, nothing);
        }

        @Override
        public Void visitCatch(CatchTree handler, Void nothing) {
            if (handler.getBlock().getStatements().isEmpty()) {
                complaints.add(new Complaint(
                        "catch",
                        path,
                        "line %d catches and drops. Handle it, or tell it".formatted(line(start(handler)))));
            }
            return super.visitCatch(handler, nothing);
        }

        private long start(Tree tree) {
            return positions.getStartPosition(unit, tree);
        }

        private int line(long position) {
            LineMap map = unit.getLineMap();
            return position < 0 ? 0 : (int) map.getLineNumber(position);
        }
    }

    /** A source the compiler reads from memory. */
    private static final class Text extends SimpleJavaFileObject {
        private final String text;

        private Text(SourceFile file) {
            super(URI.create("tidy:///" + file.path().replace(" ", "%20")), Kind.SOURCE);
            this.text = file.text();
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
