package depot.optimizer.sweep.spec;

import depot.optimizer.check.NearestKey;
import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.ChangeKind.About;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.read.JsonTree;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Change.Subject;
import depot.optimizer.sweep.spec.Sweep.Axis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads changes: what they are about, and values within the range of their kind. */
final class ChangeReader {
    private final Names names;
    private final SweepFindings findings;

    ChangeReader(Scenario scenario, SweepFindings findings) {
        this.names = new Names(scenario);
        this.findings = findings;
    }

    /** A change with one value. */
    Optional<Change> change(Members members) {
        Optional<Subject> subject = subject(members);
        Optional<BigDecimal> value = value(members, subject, SweepFields.VALUE);
        return subject.isPresent() && value.isPresent()
                ? Optional.of(subject.get().to(value.get()))
                : Optional.empty();
    }

    /** Two ends of a change. */
    Optional<Sweep.Range> range(Members members) {
        Optional<Subject> subject = subject(members);
        Optional<BigDecimal> low = value(members, subject, SweepFields.LOW);
        Optional<BigDecimal> high = value(members, subject, SweepFields.HIGH);
        if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) >= 0) {
            members.error(SweepFields.HIGH.name(), "not above low", "write the smaller value as low");
            return Optional.empty();
        }
        return subject.isPresent() && low.isPresent() && high.isPresent()
                ? Optional.of(new Sweep.Range(subject.get(), low.get(), high.get()))
                : Optional.empty();
    }

    /** Values of a change, rising. */
    Optional<Axis> axis(Members members) {
        Optional<Subject> subject = subject(members);
        String name = SweepFields.STEP.name();
        List<JsonTree> items = members.list(name, Presence.REQUIRED, SweepFields.STEP.meaning());
        List<BigDecimal> values = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            JsonTree item = items.get(i);
            String path = members.path(name) + "[" + i + "]";
            Optional<BigDecimal> value = members.parse(SweepFields.STEP, item, path)
                    .filter(number -> subject.isEmpty() || inRange(subject.get().kind(), number, item, path));
            if (value.isPresent() && !values.isEmpty() && value.get().compareTo(values.get(values.size() - 1)) <= 0) {
                findings.error(
                        item, path, "not above the value before it", "list the values from low to high, each once");
            }
            value.ifPresent(values::add);
        }
        if (items.size() == 1) {
            members.error(name, "one value only", "write two values or more, such as [0.8, 0.9]");
        }
        return subject.isPresent() && values.size() > 1 && values.size() == items.size()
                ? Optional.of(new Axis(subject.get(), List.copyOf(values)))
                : Optional.empty();
    }

    private Optional<Subject> subject(Members members) {
        Optional<ChangeKind> kind = members.get(SweepFields.CHANGE).flatMap(ChangeKind::of);
        Optional<String> of = members.get(SweepFields.OF);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        String name = SweepFields.OF.name();
        boolean named = members.tree().members().containsKey(name);
        if (kind.get().about().none() && named) {
            members.error(name, kind.get().word() + " is about the whole scenario", "leave \"of\" out");
            return Optional.empty();
        }
        if (kind.get().about().required() && !named) {
            members.error(
                    name, "the member is missing", "name " + kind.get().about().words());
            return Optional.empty();
        }
        List<String> keys = names.of(kind.get().about());
        if (kind.get().about() == About.PHASE && !named && keys.size() > 1) {
            members.error(name, "the member is missing", "name one of the phases: " + String.join(", ", keys));
            return Optional.empty();
        }
        if (kind.get() == ChangeKind.ALL_BUDGETS && !names.anyBudget()) {
            members.error(
                    SweepFields.CHANGE.name(),
                    "the scenario has no budget that could be multiplied",
                    "use budget, whose values are amounts");
            return Optional.empty();
        }
        if (of.isPresent() && !keys.contains(of.get())) {
            members.error(
                    name,
                    "the scenario has no such " + what(kind.get()),
                    NearestKey.nearest(of.get(), keys)
                            .map(key -> "maybe " + key)
                            .orElse("name " + kind.get().about().words()));
            return Optional.empty();
        }
        return named && of.isEmpty() ? Optional.empty() : Optional.of(new Subject(kind.get(), of.orElse("")));
    }

    private static String what(ChangeKind kind) {
        return switch (kind.about()) {
            case ITEM_OR_ALL -> "pack, charger, sharing unit or power bank";
            case PACK_OR_ALL -> "pack type";
            case CHARGER_OR_ALL -> "charger type";
            case TARIFF_OR_ALL -> "tariff";
            case SEASON_OR_ALL -> "season";
            case CREW_OR_ALL, CREW -> "crew";
            case CIRCUIT_OR_DEPOT -> "circuit or depot";
            case DEPOT -> "depot";
            case PHASE -> "phase";
            case NOTHING -> "thing";
        };
    }

    private Optional<BigDecimal> value(Members members, Optional<Subject> subject, Field<BigDecimal> field) {
        JsonTree item = members.tree().members().get(field.name());
        return members.get(field)
                .filter(value ->
                        subject.isEmpty() || inRange(subject.get().kind(), value, item, members.path(field.name())));
    }

    private boolean inRange(ChangeKind kind, BigDecimal value, JsonTree item, String path) {
        if (!kind.range().contains(value)) {
            findings.error(
                    item,
                    path,
                    "out of range for " + kind.word(),
                    "allowed: " + kind.range().words() + " (" + kind.form().words() + ")");
            return false;
        }
        if (kind.form().whole() && value.stripTrailingZeros().scale() > 0) {
            findings.error(item, path, "not a whole number", kind.word() + " counts " + kind.unit());
            return false;
        }
        return true;
    }
}
