package depot.optimizer.sweep.spec;

import depot.optimizer.check.NearestKey;
import depot.optimizer.dictionary.BadValueException;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.ValueType.Kind;
import depot.optimizer.read.JsonTree;
import depot.optimizer.read.RawSettings.Shape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The members of one object, matched with what the dictionary declares. Everything wrong is told once; what is asked for then is empty. */
final class Members {
    private final JsonTree object;
    private final String path;
    private final SweepFindings findings;
    private final Set<String> known = new LinkedHashSet<>();

    /**
     * @param path of the object, empty: the file itself
     */
    Members(JsonTree object, String path, SweepFindings findings) {
        this.object = object;
        this.path = path;
        this.findings = findings;
    }

    JsonTree tree() {
        return object;
    }

    /** Path of a member; of the object itself where the name is empty. */
    String path(String member) {
        return path.isEmpty() || member.isEmpty() ? path + member : path + "." + member;
    }

    /** A plain value; that of its default where it is left out. */
    <T> Optional<T> get(Field<T> field) {
        known.add(field.name());
        JsonTree value = object.members().get(field.name());
        if (value == null) {
            if (field.presence() == Presence.REQUIRED) {
                missing(field.name(), field.meaning());
            }
            return field.defaultText().map(text -> parsed(field, text));
        }
        return parse(field, value, path(field.name()));
    }

    /** A value of a list or a member, in the way a field declares it. */
    <T> Optional<T> parse(Field<T> field, JsonTree value, String at) {
        if (value.kind() != JsonTree.Kind.PLAIN) {
            findings.error(value, at, "one plain value is wanted here, not a list or an object", field.meaning());
            return Optional.empty();
        }
        try {
            T result = field.type().parse(value.text().strip());
            Kind kind = field.type().kind();
            boolean number = kind == Kind.MONEY || kind == Kind.INTEGER || kind == Kind.DECIMAL;
            if (value.shape() != (number ? Shape.NUMBER : Shape.TEXT)) {
                boolean quoted = value.shape() == Shape.TEXT;
                findings.error(
                        value,
                        at,
                        quoted ? "a number in quotes" : "not a text",
                        quoted ? "write it without quotes" : "write it in double quotes");
                return Optional.empty();
            }
            return Optional.of(result);
        } catch (BadValueException bad) {
            String hint = field.type().choices().size() > 3
                    ? NearestKey.nearest(value.text(), field.type().choices())
                            .map(word -> "maybe " + word)
                            .orElse(bad.hint())
                    : bad.hint();
            findings.error(value, at, bad.getMessage(), hint);
            return Optional.empty();
        }
    }

    private static <T> T parsed(Field<T> field, String text) {
        try {
            return field.type().parse(text);
        } catch (BadValueException impossible) {
            throw new IllegalStateException(
                    "The default of " + field.name() + " is not one of its values.", impossible);
        }
    }

    /** A list with at least one item; empty and told when it is something else. */
    List<JsonTree> list(String name, Presence presence, String meaning) {
        known.add(name);
        JsonTree value = object.members().get(name);
        if (value == null) {
            if (presence == Presence.REQUIRED) {
                missing(name, meaning);
            }
            return List.of();
        }
        if (value.kind() != JsonTree.Kind.LIST) {
            findings.error(value, path(name), "not a list", "write it in square brackets: " + meaning);
            return List.of();
        }
        if (value.items().isEmpty()) {
            findings.error(value, path(name), "the list is empty", "leave it out, or fill it: " + meaning);
        }
        return value.items();
    }

    /** The members of each item of a list of objects. */
    List<Members> objects(String name, Presence presence, String meaning) {
        List<JsonTree> items = list(name, presence, meaning);
        List<Members> objects = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            object(items.get(i), path(name) + "[" + i + "]", meaning).ifPresent(objects::add);
        }
        return objects;
    }

    /** The members of an object within this one. */
    Optional<Members> object(String name, Presence presence, String meaning) {
        known.add(name);
        JsonTree value = object.members().get(name);
        if (value == null) {
            if (presence == Presence.REQUIRED) {
                missing(name, meaning);
            }
            return Optional.empty();
        }
        return object(value, path(name), meaning);
    }

    private Optional<Members> object(JsonTree value, String at, String meaning) {
        if (value.kind() != JsonTree.Kind.OBJECT) {
            findings.error(value, at, "not an object", "write its members in braces: " + meaning);
            return Optional.empty();
        }
        return Optional.of(new Members(value, at, findings));
    }

    /** An error in a member of this object. */
    void error(String name, String message, String hint) {
        findings.error(object.members().getOrDefault(name, object), path(name), message, hint);
    }

    /** Tells which members nobody has asked for; to be called last. */
    void refuseUnknown() {
        object.members().forEach((name, value) -> {
            if (!known.contains(name)) {
                String hint = NearestKey.nearest(name, known)
                        .map(near -> "maybe " + near)
                        .orElseGet(() -> "members here: " + String.join(", ", known));
                findings.error(value, path(name), "no such member", hint);
            }
        });
    }

    private void missing(String name, String meaning) {
        findings.error(object, path(name), "the member is missing", meaning);
    }
}
