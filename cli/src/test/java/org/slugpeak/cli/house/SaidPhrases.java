package org.slugpeak.cli.house;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Where the keys of sentences stand in the sources, and with how many arguments they are said there. */
final class SaidPhrases extends TreeScanner<Void, Void> {

    /** Said where they stand: by how many arguments. */
    final Map<String, Set<Integer>> said = new TreeMap<>();

    /** Given to somebody else who says them. */
    final Set<String> passedOn = new TreeSet<>();

    private final Set<Tree> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    SaidPhrases(List<CompilationUnitTree> sources) {
        scan(sources, null);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String method = call.getMethodSelect().toString();
        List<? extends ExpressionTree> arguments = call.getArguments();
        if (call.getMethodSelect() instanceof MemberSelectTree select
                && (method.endsWith(".of") || method.endsWith(".inEnglish"))) {
            phrasesIn(select.getExpression()).forEach(phrase -> say(phrase, arguments.size()));
        } else if (method.equals("say") && !arguments.isEmpty()) {
            phrasesIn(arguments.get(0)).forEach(phrase -> say(phrase, arguments.size() - 1));
        }
        return super.visitMethodInvocation(call, null);
    }

    @Override
    public Void visitMemberReference(MemberReferenceTree reference, Void nothing) {
        phrasesIn(reference.getQualifierExpression()).forEach(phrase -> say(phrase, 0));
        return super.visitMemberReference(reference, null);
    }

    @Override
    public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
        if (isPhrase(select) && !seen.contains(select)) {
            passedOn.add(select.toString());
        }
        return super.visitMemberSelect(select, null);
    }

    private void say(MemberSelectTree phrase, int arguments) {
        if (seen.add(phrase)) {
            said.computeIfAbsent(phrase.toString(), key -> new TreeSet<>()).add(arguments);
        }
    }

    /** As {@code CurvePhrase.HIGHEST}; what is said within another sentence's gap is found by itself before. */
    private static List<MemberSelectTree> phrasesIn(Tree expression) {
        List<MemberSelectTree> found = new ArrayList<>();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                return null;
            }

            @Override
            public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
                if (isPhrase(select)) {
                    found.add(select);
                }
                return super.visitMemberSelect(select, null);
            }
        }.scan(expression, null);
        return found;
    }

    private static boolean isPhrase(MemberSelectTree select) {
        return select.getExpression().toString().matches("([A-Z][a-z]+)?Phrase")
                && select.getIdentifier().toString().matches("[A-Z][A-Z0-9_]*");
    }
}
