package org.bandtrail.siteinstalls.policies;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One version as people read it: every value with the version that brought it, and what is different from another.
 *
 * @param policy the version
 * @param against the version it is compared with, null if there is none before it
 * @param values in the order of the guides
 * @param differences what changed against the other version
 */
public record PolicyPage(
        CutPolicyView policy, @Nullable Integer against, List<Value> values, List<Difference> differences) {
    /** Keeps its own copies. */
    public PolicyPage {
        values = List.copyOf(values);
        differences = List.copyOf(differences);
    }

    /**
     * One value.
     *
     * @param guide what the trade says about it
     * @param value a whole number in the guide's unit, a word, or true or false
     * @param since the version that brought it
     * @param source where that version has it from
     * @param reason why it was chosen there
     */
    public record Value(ValueGuide guide, Object value, int since, String source, String reason) {}

    /**
     * A value that is not the same in two versions.
     *
     * @param name of the value
     * @param label in words
     * @param unit of both
     * @param was in the other version
     * @param now in this one
     */
    public record Difference(String name, String label, String unit, Object was, Object now) {}

    /**
     * The page of a version.
     *
     * @param all every version
     * @param against the version to compare with, null for the one it replaced
     * @throws CutPolicyRefused.NoSuchVersion if one of them does not exist
     */
    static PolicyPage of(List<CutPolicyView> all, int version, @Nullable Integer against, List<ValueGuide> guides) {
        CutPolicyView policy = find(all, version);
        CutPolicyView other = against == null ? replacedBy(policy, all).orElse(null) : find(all, against);
        Map<String, Object> now = named(policy.values());
        Map<String, Object> was = other == null ? now : named(other.values());
        List<Value> values = new ArrayList<>();
        List<Difference> differences = new ArrayList<>();
        for (ValueGuide guide : guides) {
            Object value = Objects.requireNonNull(now.get(guide.name()), guide.name());
            CutPolicyView brought = brought(policy, guide.name(), value, all);
            values.add(new Value(guide, value, brought.version(), brought.source(), brought.reason()));
            Object before = Objects.requireNonNull(was.get(guide.name()), guide.name());
            if (!before.equals(value)) {
                differences.add(new Difference(guide.name(), guide.label(), guide.unit(), before, value));
            }
        }
        return new PolicyPage(policy, other == null ? null : other.version(), values, differences);
    }

    private static CutPolicyView find(List<CutPolicyView> all, int version) {
        return all.stream()
                .filter(each -> each.version() == version)
                .findFirst()
                .orElseThrow(() -> new CutPolicyRefused.NoSuchVersion(version));
    }

    /** The newest earlier version of the same scope, else of the closest wider one. */
    private static Optional<CutPolicyView> replacedBy(CutPolicyView policy, List<CutPolicyView> all) {
        for (PolicyScope scope : new PolicyScope(policy.programme(), policy.pest()).fromClosest()) {
            Optional<CutPolicyView> before = all.stream()
                    .filter(each -> each.version() < policy.version())
                    .filter(each -> new PolicyScope(each.programme(), each.pest()).equals(scope))
                    .max(Comparator.comparing(CutPolicyView::version));
            if (before.isPresent()) {
                return before;
            }
        }
        return Optional.empty();
    }

    /** The oldest version from which the value came down to this one unchanged. */
    private static CutPolicyView brought(CutPolicyView policy, String name, Object value, List<CutPolicyView> all) {
        CutPolicyView brought = policy;
        Optional<CutPolicyView> before = replacedBy(policy, all);
        while (before.isPresent() && value.equals(named(before.get().values()).get(name))) {
            brought = before.get();
            before = replacedBy(brought, all);
        }
        return brought;
    }

    /** The values by name, in the order of the record. */
    static Map<String, Object> named(CutPolicyView.Values values) {
        Map<String, Object> named = new LinkedHashMap<>();
        for (RecordComponent component : CutPolicyView.Values.class.getRecordComponents()) {
            try {
                Object value = component.getAccessor().invoke(values);
                named.put(component.getName(), value instanceof Integer number ? (Object) number.longValue() : value);
            } catch (ReflectiveOperationException unreadable) {
                throw new IllegalStateException("Value %s cannot be read.".formatted(component), unreadable);
            }
        }
        return named;
    }
}
