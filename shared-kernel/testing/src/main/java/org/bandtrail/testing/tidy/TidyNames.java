package org.bandtrail.testing.tidy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Names that something depends on: of tests, of packages with their text, of migrations. */
final class TidyNames {
    private static final Pattern TEST =
            Pattern.compile("^\\s*@(Test|ParameterizedTest|RepeatedTest|TestFactory)\\b", Pattern.MULTILINE);
    /** A suite that others inherit under a name of their own. */
    private static final Pattern SUITE =
            Pattern.compile("^(public )?(abstract class|(sealed )?interface) ", Pattern.MULTILINE);

    private static final Pattern JAVADOC = Pattern.compile("/\\*\\*(.*?)\\*/\\s*@NullMarked", Pattern.DOTALL);
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?](?=\\s|$|</)");
    private static final Pattern INCLUDED = Pattern.compile("<include>\\*\\*/\\*(\\w+)\\.java</include>");
    private static final Pattern MIGRATION = Pattern.compile("V(\\d+)__[a-z0-9_]+\\.sql");
    private static final int SENTENCES = 3;

    private TidyNames() {}

    /** The build runs only classes whose names end as it knows; the rest would be skipped without a word. */
    static List<Complaint> testsNobodyRuns(SourceTree tree) {
        Set<String> suffixes = suffixesOfTheBuild(tree);
        List<Complaint> complaints = new ArrayList<>();
        for (SourceFile file : tree.files()) {
            boolean test = file.isJava()
                    && file.path().contains("src/test/java/")
                    && TEST.matcher(file.text()).find()
                    && !SUITE.matcher(file.text()).find();
            String name = file.name().replace(".java", "");
            if (test && suffixes.stream().noneMatch(name::endsWith)) {
                complaints.add(new Complaint(
                        "test-name", file.path(), "has tests and is never run. End its name in " + suffixes));
            }
        }
        return complaints;
    }

    private static Set<String> suffixesOfTheBuild(SourceTree tree) {
        Set<String> suffixes = new TreeSet<>();
        for (SourceFile file : tree.files()) {
            if (file.path().equals("pom.xml")) {
                INCLUDED.matcher(file.text()).results().forEach(include -> suffixes.add(include.group(1)));
            }
        }
        return suffixes;
    }

    /** Every package says in three sentences what it is; tests in a package of the shipped code are part of that. */
    static List<Complaint> packagesWithoutText(SourceTree tree) {
        Map<String, String> texts = new HashMap<>();
        Set<String> packages = new TreeSet<>();
        for (SourceFile file : tree.files()) {
            if (file.isJava() && file.path().contains("/java/")) {
                packages.add(file.folder());
                if (file.name().equals("package-info.java")) {
                    texts.put(file.folder(), file.text());
                }
            }
        }
        List<Complaint> complaints = new ArrayList<>();
        for (String folder : packages) {
            String text = texts.get(folder);
            if (text == null) {
                if (!packages.contains(folder.replace("/src/test/java/", "/src/main/java/"))
                        || folder.contains("src/main")) {
                    complaints.add(new Complaint("package-info", folder, "has no package-info.java"));
                }
            } else {
                Matcher javadoc = JAVADOC.matcher(text);
                long sentences = javadoc.find()
                        ? SENTENCE_END.matcher(javadoc.group(1)).results().count()
                        : 0;
                if (sentences < SENTENCES) {
                    complaints.add(new Complaint(
                            "package-info",
                            folder,
                            "says %d sentences above @NullMarked. Three say what it is".formatted(sentences)));
                }
            }
        }
        return complaints;
    }

    /** Flyway of one service sees several folders, so a number belongs to one migration in the whole house. */
    static List<Complaint> migrationsOfOneNumber(SourceTree tree) {
        Map<Integer, List<SourceFile>> byNumber = tree.files().stream()
                .filter(file -> file.path().contains("src/main/resources/db/")
                        && file.ending().equals("sql"))
                .collect(Collectors.groupingBy(TidyNames::number));
        List<Complaint> complaints = new ArrayList<>();
        byNumber.forEach((number, files) -> {
            if (number < 0 || files.size() > 1) {
                files.forEach(file -> complaints.add(new Complaint(
                        "migration", file.path(), "is not V<number of its own>__<name>.sql in small letters")));
            }
        });
        return complaints;
    }

    private static int number(SourceFile file) {
        Matcher matcher = MIGRATION.matcher(file.name());
        return matcher.matches() ? Integer.parseInt(matcher.group(1)) : -1;
    }
}
