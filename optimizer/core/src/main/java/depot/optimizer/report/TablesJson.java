package depot.optimizer.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.report.table.OutputColumn;
import depot.optimizer.report.table.OutputColumn.Blanks;
import depot.optimizer.report.table.OutputColumn.Content;
import depot.optimizer.report.table.TableLayout;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The CSV tables of a run as a Data Package descriptor with Table Schemas (Data Package standard 2.0,
 * datapackage.org/standard/table-schema), so that general tools can load them with their types, units and meanings.
 */
final class TablesJson {

    /** Name of the file in a run's folder. */
    static final String FILE_NAME = "tables.json";

    /** What {@link depot.optimizer.report.text.Clock} writes. */
    private static final String TIME = "[0-2][0-9]:[0-5][0-9]( [+-][0-9]+)?";

    private static final JsonMapper MAPPER = new JsonMapper();

    private TablesJson() {}

    /** The text of tables.json, the tables in the order given. */
    static String write(List<TableLayout> tables) {
        Map<String, Object> descriptor = new LinkedHashMap<>();
        descriptor.put("$schema", "https://datapackage.org/profiles/2.0/datapackage.json");
        descriptor.put("name", "run");
        descriptor.put("title", "Tables of a run");
        descriptor.put("resources", tables.stream().map(TablesJson::resource).toList());
        try {
            return MAPPER.writer(PlanMapper.printer()).writeValueAsString(descriptor) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Maps, lists and texts can always be written as JSON.", e);
        }
    }

    private static Map<String, Object> resource(TableLayout table) {
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

    private static Map<String, Object> schema(TableLayout table) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://datapackage.org/profiles/2.0/tableschema.json");
        schema.put("fields", table.columns().stream().map(TablesJson::field).toList());
        schema.put("missingValues", List.of(""));
        return schema;
    }

    private static Map<String, Object> field(OutputColumn column) {
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", column.name());
        field.put("type", type(column.content()));
        if (column.content() == Content.YES_NO) {
            field.put("trueValues", List.of("yes"));
            field.put("falseValues", List.of("no"));
        }
        field.put("description", column.meaning());
        if (!column.unit().isEmpty()) {
            field.put("unit", column.unit());
        }
        Map<String, Object> constraints = constraints(column);
        if (!constraints.isEmpty()) {
            field.put("constraints", constraints);
        }
        return field;
    }

    private static Map<String, Object> constraints(OutputColumn column) {
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (column.blanks() == Blanks.NEVER) {
            constraints.put("required", true);
        }
        if (column.content() == Content.TIME) {
            String words = column.words().isEmpty() ? "" : "|" + String.join("|", column.words());
            constraints.put("pattern", "^(" + TIME + words + ")$");
        } else if (!column.words().isEmpty()) {
            constraints.put("enum", column.words());
        }
        return constraints;
    }

    /** The standard's own type for times ends at midnight; a night's schedule does not. */
    private static String type(Content content) {
        return switch (content) {
            case COUNT -> "integer";
            case NUMBER -> "number";
            case YES_NO -> "boolean";
            case WORDS, TIME -> "string";
        };
    }
}
