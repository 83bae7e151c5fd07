package depot.optimizer.dictionary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The JSON Schema (draft 2020-12, json-schema.org/draft/2020-12) of a sweep's file. */
final class SweepSchema {
    private SweepSchema() {}

    static String text() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "A sweep around a scenario's plan");
        schema.put("description", "Made from the data dictionary; describes the file that the command sweep reads.");
        Map<String, Object> parts = new LinkedHashMap<>();
        parts.put("tornado", tornado());
        parts.put("lines", list(line()));
        parts.put("frontiers", list(frontier()));
        parts.put("grids", list(grid()));
        parts.put("cases", list(namedCase()));
        parts.put("losses", object(SweepFields.LOSSES, Map.of()));
        schema.putAll(object(SweepFields.ROOT, parts));
        schema.put("minProperties", 2);
        return JsonText.of(schema);
    }

    private static Map<String, Object> tornado() {
        Map<String, Object> range = object(SweepFields.RANGES, Map.of());
        range.put("allOf", kinds(List.of(SweepFields.LOW, SweepFields.HIGH), List.of()));
        return object(List.of(SweepFields.PURCHASES), Map.of("ranges", list(range)), "ranges");
    }

    private static Map<String, Object> line() {
        Map<String, Object> line = object(
                List.of(SweepFields.PART_NAME, SweepFields.CHANGE, SweepFields.OF, SweepFields.PURCHASES),
                Map.of("values", values()),
                "values");
        line.put("allOf", kinds(List.of(), List.of(SweepFields.STEP)));
        return line;
    }

    private static Map<String, Object> frontier() {
        Map<String, Object> frontier = object(
                List.of(SweepFields.PART_NAME, SweepFields.CHANGE, SweepFields.OF),
                Map.of("values", values()),
                "values");
        List<Object> rules = new ArrayList<>(kinds(SweepFields.FRONTIER_KINDS, List.of(), List.of(SweepFields.STEP)));
        List<String> words =
                SweepFields.FRONTIER_KINDS.stream().map(ChangeKind::word).toList();
        rules.add(Map.of("properties", Map.of(SweepFields.CHANGE.name(), Map.of("enum", words))));
        frontier.put("allOf", rules);
        return frontier;
    }

    private static Map<String, Object> grid() {
        Map<String, Object> axes = new LinkedHashMap<>();
        axes.put("rows", axis());
        axes.put("columns", axis());
        return object(List.of(SweepFields.PART_NAME, SweepFields.PURCHASES), axes, "rows", "columns");
    }

    private static Map<String, Object> axis() {
        Map<String, Object> axis = object(SweepFields.AXES, Map.of("values", values()), "values");
        axis.put("allOf", kinds(List.of(), List.of(SweepFields.STEP)));
        return axis;
    }

    private static Map<String, Object> namedCase() {
        Map<String, Object> change = object(SweepFields.CHANGES, Map.of());
        change.put("allOf", kinds(List.of(SweepFields.VALUE), List.of()));
        return object(
                List.of(SweepFields.PART_NAME, SweepFields.PURCHASES), Map.of("changes", list(change)), "changes");
    }

    private static Map<String, Object> values() {
        Map<String, Object> values = list(Map.of("type", "number"));
        values.put("description", SweepFields.STEP.meaning());
        values.put("minItems", 2);
        values.put("uniqueItems", true);
        return values;
    }

    /** What each kind asks of its members. */
    private static List<Object> kinds(List<Field<?>> numbers, List<Field<?>> lists) {
        return kinds(List.of(ChangeKind.values()), numbers, lists);
    }

    private static List<Object> kinds(List<ChangeKind> kinds, List<Field<?>> numbers, List<Field<?>> lists) {
        List<Object> rules = new ArrayList<>();
        for (ChangeKind kind : kinds) {
            Map<String, Object> number = new LinkedHashMap<>();
            number.put("type", kind.form().whole() ? "integer" : "number");
            SettingsSchema.addRange(kind.range(), number);
            Map<String, Object> properties = new LinkedHashMap<>();
            numbers.forEach(field -> properties.put(field.name(), number));
            lists.forEach(field -> properties.put(field.name(), Map.of("items", number)));
            if (kind.about().none()) {
                properties.put(SweepFields.OF.name(), false);
            }
            Map<String, Object> then = new LinkedHashMap<>();
            then.put("properties", properties);
            if (kind.about().required()) {
                then.put("required", List.of(SweepFields.OF.name()));
            }
            Map<String, Object> rule = new LinkedHashMap<>();
            rule.put("if", Map.of("properties", Map.of(SweepFields.CHANGE.name(), Map.of("const", kind.word()))));
            rule.put("then", then);
            rules.add(rule);
        }
        return rules;
    }

    private static Map<String, Object> list(Map<String, Object> items) {
        Map<String, Object> list = new LinkedHashMap<>();
        list.put("type", "array");
        list.put("minItems", 1);
        list.put("items", items);
        return list;
    }

    private static Map<String, Object> object(
            List<Field<?>> fields, Map<String, Object> parts, String... requiredParts) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Field<?> field : fields) {
            properties.put(field.name(), SettingsSchema.property(field));
            if (field.presence() == Presence.REQUIRED) {
                required.add(field.name());
            }
        }
        properties.putAll(parts);
        required.addAll(List.of(requiredParts));
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        if (!required.isEmpty()) {
            object.put("required", required);
        }
        object.put("additionalProperties", false);
        object.put("properties", properties);
        return object;
    }
}
