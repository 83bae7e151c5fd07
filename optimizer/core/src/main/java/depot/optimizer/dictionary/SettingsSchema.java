package depot.optimizer.dictionary;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The JSON Schema (draft 2020-12, json-schema.org/draft/2020-12) of {@code scenario.json}. */
final class SettingsSchema {
    private SettingsSchema() {}

    static String text() {
        Map<String, List<Field<?>>> byObject = new TreeMap<>();
        for (Field<?> field : Settings.TABLE.fields()) {
            int dot = field.name().indexOf('.');
            byObject.computeIfAbsent(dot < 0 ? "" : field.name().substring(0, dot), none -> new ArrayList<>())
                    .add(field);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Settings of a scenario");
        schema.put("description", "Made from the data dictionary; describes scenario.json beside the CSV tables.");
        schema.putAll(object(byObject.remove("")));
        @SuppressWarnings("unchecked")
        Map<String, Object> properties = (Map<String, Object>) schema.get("properties");
        byObject.forEach((name, fields) -> properties.put(name, object(fields)));
        return JsonText.of(schema);
    }

    private static Map<String, Object> object(List<Field<?>> fields) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Field<?> field : fields) {
            String name = field.name().substring(field.name().indexOf('.') + 1);
            properties.put(name, property(field));
            if (field.presence() == Presence.REQUIRED) {
                required.add(name);
            }
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("type", "object");
        if (!required.isEmpty()) {
            object.put("required", required);
        }
        object.put("additionalProperties", false);
        object.put("properties", properties);
        return object;
    }

    /** Type, range and meaning of one member. */
    static Map<String, Object> property(Field<?> field) {
        Map<String, Object> property = new LinkedHashMap<>();
        String unit = field.unit().isEmpty() ? "" : " (" + field.unit() + ")";
        property.put("description", field.meaning() + unit);
        property.putAll(type(field.type()));
        field.defaultText().ifPresent(text -> property.put("default", literal(field.type(), text)));
        return property;
    }

    private static Map<String, Object> type(ValueType<?> type) {
        Map<String, Object> schema = new LinkedHashMap<>();
        switch (type.kind()) {
            case INTEGER -> {
                schema.put("type", "integer");
                if (!type.choices().isEmpty()) {
                    schema.put(
                            "enum",
                            type.choices().stream().map(Integer::valueOf).toList());
                }
            }
            case DECIMAL, MONEY -> schema.put("type", "number");
            case CHOICE, YES_NO -> schema.put("enum", type.choices());
            case CURRENCY -> {
                schema.put("type", "string");
                schema.put("pattern", "^[A-Z]{3}$");
            }
            case MONEY_OR_WORD -> {
                Map<String, Object> number = new LinkedHashMap<>();
                number.put("type", "number");
                type.range().ifPresent(range -> addRange(range, number));
                schema.put(
                        "oneOf", List.of(number, Map.of("const", type.choices().get(0))));
                return schema;
            }
            default -> {
                schema.put("type", "string");
                schema.put("minLength", 1);
                schema.put("maxLength", WordSyntax.TEXT_LENGTH);
            }
        }
        type.range().ifPresent(range -> addRange(range, schema));
        return schema;
    }

    private static Object literal(ValueType<?> type, String text) {
        boolean word = type.choices().contains(text) && type.kind() != ValueType.Kind.INTEGER;
        return word ? text : new BigDecimal(text);
    }

    /** JSON Schema and the table schema name the ends of a range alike. */
    static void addRange(Range range, Map<String, Object> schema) {
        range.low()
                .ifPresent(low -> schema.put(range.lowEnd() == Range.End.CLOSED ? "minimum" : "exclusiveMinimum", low));
        range.high()
                .ifPresent(
                        high -> schema.put(range.highEnd() == Range.End.CLOSED ? "maximum" : "exclusiveMaximum", high));
    }
}
