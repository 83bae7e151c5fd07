package depot.optimizer.dictionary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The CSV tables as a Data Package descriptor with Table Schemas (Data Package standard 2.0,
 * datapackage.org/standard/table-schema), so that general tools can check a scenario's tables one by one.
 */
final class TablesSchema {
    /** Hours up to 30, minutes, as {@link TimeSyntax} reads them. */
    private static final String TIME_PATTERN = "^([0-9]|[012][0-9]|30):[0-5][0-9](:00)?$";

    private TablesSchema() {}

    static String text() {
        Map<String, Object> descriptor = new LinkedHashMap<>();
        descriptor.put("$schema", "https://datapackage.org/profiles/2.0/datapackage.json");
        descriptor.put("name", "scenario");
        descriptor.put("title", "Tables of a scenario");
        descriptor.put(
                "description",
                "Made from the data dictionary. Copy it beside the tables, and delete the optional tables that are not"
                        + " there.");
        descriptor.put(
                "resources",
                Dictionary.TABLES.stream().map(TablesSchema::resource).toList());
        return JsonText.of(descriptor);
    }

    private static Map<String, Object> resource(Table table) {
        Map<String, Object> resource = new LinkedHashMap<>();
        resource.put("$schema", "https://datapackage.org/profiles/2.0/dataresource.json");
        resource.put("name", table.name());
        resource.put("type", "table");
        resource.put("path", table.file());
        resource.put("format", "csv");
        resource.put("mediatype", "text/csv");
        resource.put("encoding", "utf-8");
        resource.put("description", "One row per " + table.rowPer() + ".");
        resource.put("schema", schema(table));
        return resource;
    }

    private static Map<String, Object> schema(Table table) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://datapackage.org/profiles/2.0/tableschema.json");
        // Columns come in any order, and optional ones may be missing.
        schema.put("fieldsMatch", "superset");
        schema.put("fields", table.fields().stream().map(TablesSchema::field).toList());
        schema.put("missingValues", List.of(""));
        boolean plain = table.key().stream()
                .allMatch(field ->
                        field.presence() == Presence.REQUIRED && field.type().kind() != ValueType.Kind.DAYS);
        if (plain && !table.key().isEmpty()) {
            schema.put("primaryKey", table.key().stream().map(Field::name).toList());
        }
        List<Map<String, Object>> references = references(table);
        if (!references.isEmpty()) {
            schema.put("foreignKeys", references);
        }
        return schema;
    }

    private static Map<String, Object> field(Field<?> field) {
        ValueType<?> type = field.type();
        Map<String, Object> descriptor = new LinkedHashMap<>();
        descriptor.put("name", field.name());
        descriptor.put("type", typeName(type));
        if (type.kind() == ValueType.Kind.YES_NO) {
            descriptor.put("trueValues", List.of("yes"));
            descriptor.put("falseValues", List.of("no"));
        }
        descriptor.put("description", field.meaning());
        if (!field.unit().isEmpty()) {
            descriptor.put("unit", field.unit());
        }
        field.defaultText().ifPresent(text -> descriptor.put("default", text));
        Map<String, Object> constraints = constraints(field);
        if (!constraints.isEmpty()) {
            descriptor.put("constraints", constraints);
        }
        return descriptor;
    }

    private static String typeName(ValueType<?> type) {
        return switch (type.kind()) {
            case INTEGER -> "integer";
            case DECIMAL, MONEY -> "number";
            case YES_NO -> "boolean";
            default -> "string";
        };
    }

    private static Map<String, Object> constraints(Field<?> field) {
        ValueType<?> type = field.type();
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (field.presence() == Presence.REQUIRED) {
            constraints.put("required", true);
        }
        type.range().ifPresent(range -> SettingsSchema.addRange(range, constraints));
        switch (type.kind()) {
            case INTEGER -> {
                if (!type.choices().isEmpty()) {
                    constraints.put(
                            "enum",
                            type.choices().stream().map(Integer::valueOf).toList());
                }
            }
            case KEY, REFERENCE -> constraints.put("maxLength", WordSyntax.KEY_LENGTH);
            case TEXT -> constraints.put("maxLength", WordSyntax.TEXT_LENGTH);
            case TIME -> constraints.put("pattern", TIME_PATTERN);
            default -> {
                // The type says it all.
            }
        }
        return constraints;
    }

    private static List<Map<String, Object>> references(Table table) {
        List<Map<String, Object>> references = new ArrayList<>();
        for (Field<?> field : table.fields()) {
            field.type().target().ifPresent(target -> {
                Map<String, Object> reference = new LinkedHashMap<>();
                reference.put("resource", Dictionary.tableOf(target).name());
                reference.put("fields", List.of(target.name()));
                Map<String, Object> entry = new LinkedHashMap<>();
                entry.put("fields", List.of(field.name()));
                entry.put("reference", reference);
                references.add(entry);
            });
        }
        return references;
    }
}
