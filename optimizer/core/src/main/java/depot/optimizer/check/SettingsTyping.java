package depot.optimizer.check;

import depot.optimizer.check.TypedRow.Place;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.ValueType.Kind;
import depot.optimizer.read.RawSettings;
import depot.optimizer.read.RawSettings.Member;
import depot.optimizer.read.RawSettings.Shape;
import depot.optimizer.read.ReadProblem;
import java.util.List;
import java.util.Map;

/** Matches the settings of {@code scenario.json} with the dictionary's and reads them into values. */
final class SettingsTyping {
    private static final List<Field<?>> FIELDS = Settings.TABLE.fields();

    private SettingsTyping() {}

    static TypedRow read(RawSettings raw, Findings findings) {
        Map<String, Member> members = raw.members();
        members.forEach((name, member) -> checkName(raw, name, member, findings));
        TypedRow row = TypedRow.read(
                Settings.TABLE,
                index -> text(members.get(FIELDS.get(index).name())),
                index -> place(members.get(FIELDS.get(index).name())),
                findings);
        for (Field<?> field : FIELDS) {
            Member member = members.get(field.name());
            if (member != null && row.find(field).isPresent()) {
                checkShape(row, field, member, findings);
            }
        }
        return row;
    }

    private static void checkName(RawSettings raw, String name, Member member, Findings findings) {
        if (Settings.TABLE.field(name).isEmpty()) {
            findings.error(new ReadProblem(
                    raw.file(),
                    member.line(),
                    name,
                    member.character(),
                    member.text(),
                    "no such setting",
                    settingNames(name)));
        }
    }

    private static String settingNames(String name) {
        List<String> names = FIELDS.stream().map(Field::name).toList();
        return NearestKey.nearest(name, names)
                .map(setting -> "maybe " + setting)
                .orElseGet(() -> "settings: " + String.join(", ", names));
    }

    /** A number in quotes may be a slip, and the schema refuses it as well. */
    private static void checkShape(TypedRow row, Field<?> field, Member member, Findings findings) {
        Kind kind = field.type().kind();
        boolean number = kind == Kind.INTEGER
                || kind == Kind.DECIMAL
                || kind == Kind.MONEY
                || (kind == Kind.MONEY_OR_WORD && !field.type().choices().contains(member.text()));
        if (member.shape() != (number ? Shape.NUMBER : Shape.TEXT)) {
            row.spoil();
            boolean quoted = member.shape() == Shape.TEXT;
            findings.error(
                    row,
                    field,
                    quoted ? "a number in quotes" : "not a text",
                    quoted ? "write it without quotes" : "write it in double quotes");
        }
    }

    private static String text(Member member) {
        return member == null ? "" : member.text().strip();
    }

    private static Place place(Member member) {
        return member == null ? new Place(0, 0) : new Place(member.line(), member.character());
    }
}
