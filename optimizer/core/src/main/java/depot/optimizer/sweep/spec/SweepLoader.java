package depot.optimizer.sweep.spec;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.read.JsonFile;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Change.Subject;
import depot.optimizer.sweep.spec.Sweep.Axis;
import depot.optimizer.sweep.spec.Sweep.Frontier;
import depot.optimizer.sweep.spec.Sweep.Grid;
import depot.optimizer.sweep.spec.Sweep.Line;
import depot.optimizer.sweep.spec.Sweep.Losses;
import depot.optimizer.sweep.spec.Sweep.NamedCase;
import depot.optimizer.sweep.spec.Sweep.Tornado;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads and checks a sweep's file, all findings at once. */
public final class SweepLoader {
    private static final String TORNADO = "tornado";
    private static final String LINES = "lines";
    private static final String FRONTIERS = "frontiers";
    private static final String GRIDS = "grids";
    private static final String CASES = "cases";
    private static final String LOSSES = "losses";

    private final SweepFindings findings;
    private final ChangeReader changes;
    private final VariationCheck variations;
    private final Set<String> taken = new HashSet<>();

    private SweepLoader(Scenario scenario, SweepFindings findings) {
        this.findings = findings;
        this.changes = new ChangeReader(scenario, findings);
        this.variations = new VariationCheck(scenario, findings);
    }

    /**
     * Loads a file.
     *
     * @param scenario that the sweep is about, sound
     * @return the sweep when nothing is wrong, and everything found; bad input never raises an exception
     */
    public static LoadedSweep load(Path file, Scenario scenario) {
        SweepFindings findings = new SweepFindings(file.toString());
        JsonFile document = JsonFile.read(file, findings::error);
        SweepLoader loader = new SweepLoader(scenario, findings);
        Optional<Sweep> sweep = document.root().flatMap(root -> loader.sweep(new Members(root, "", findings)));
        return new LoadedSweep(findings.none() ? sweep : Optional.empty(), findings.sorted(), document.hash());
    }

    private Optional<Sweep> sweep(Members root) {
        root.get(SweepFields.SCHEMA);
        Optional<String> name = root.get(SweepFields.NAME);
        Optional<Tornado> tornado = root.object(TORNADO, Presence.OPTIONAL, "ranges, one change at a time")
                .map(this::tornado);
        List<Line> lines = all(root.objects(LINES, Presence.OPTIONAL, "cost along one change").stream()
                .map(this::line)
                .toList());
        List<Frontier> frontiers = all(root.objects(FRONTIERS, Presence.OPTIONAL, "cost along budgets").stream()
                .map(this::frontier)
                .toList());
        List<Grid> grids = all(root.objects(GRIDS, Presence.OPTIONAL, "cost for pairs of values").stream()
                .map(this::grid)
                .toList());
        List<NamedCase> cases = all(root.objects(CASES, Presence.OPTIONAL, "named cases").stream()
                .map(this::namedCase)
                .toList());
        Optional<Losses> losses =
                root.object(LOSSES, Presence.OPTIONAL, "what may fail").map(this::losses);
        root.refuseUnknown();
        if (List.of(TORNADO, LINES, FRONTIERS, GRIDS, CASES, LOSSES).stream()
                .noneMatch(part -> root.tree().members().containsKey(part))) {
            root.error("", "the sweep asks for nothing", "add tornado, lines, frontiers, grids, cases or losses");
        }
        if (findings.none()) {
            variations.check();
        }
        return name.map(text -> new Sweep(text, tornado, lines, frontiers, grids, cases, losses));
    }

    private Tornado tornado(Members members) {
        Optional<Purchases> purchases = members.get(SweepFields.PURCHASES);
        List<Sweep.Range> ranges = new ArrayList<>();
        Set<Subject> seen = new HashSet<>();
        for (Members range : members.objects("ranges", Presence.REQUIRED, "change, of, low and high")) {
            changes.range(range).ifPresent(ends -> {
                ranges.add(ends);
                refuseTwice(range, ends.subject(), seen);
                variations.add(
                        range.tree(), range.path("low"), List.of(ends.subject().to(ends.low())));
                variations.add(
                        range.tree(), range.path("high"), List.of(ends.subject().to(ends.high())));
            });
            range.refuseUnknown();
        }
        members.refuseUnknown();
        return new Tornado(purchases.orElse(Purchases.ANEW), List.copyOf(ranges));
    }

    private Optional<Line> line(Members members) {
        Optional<String> name = partName(members);
        Optional<Purchases> purchases = members.get(SweepFields.PURCHASES);
        Optional<Axis> axis = changes.axis(members);
        members.refuseUnknown();
        axis.ifPresent(values -> vary(members, values));
        return name.isPresent() && purchases.isPresent() && axis.isPresent()
                ? Optional.of(new Line(name.get(), purchases.get(), axis.get()))
                : Optional.empty();
    }

    private void vary(Members members, Axis axis) {
        axis.values()
                .forEach(value -> variations.add(
                        members.tree(),
                        members.path("values"),
                        List.of(axis.subject().to(value))));
    }

    private Optional<Frontier> frontier(Members members) {
        Optional<String> name = partName(members);
        Optional<Axis> axis = changes.axis(members).filter(values -> budgets(members, values));
        members.refuseUnknown();
        axis.ifPresent(values -> vary(members, values));
        return name.isPresent() && axis.isPresent()
                ? Optional.of(new Frontier(name.get(), axis.get()))
                : Optional.empty();
    }

    private static boolean budgets(Members members, Axis axis) {
        boolean budgets = SweepFields.FRONTIER_KINDS.contains(axis.subject().kind());
        if (!budgets) {
            members.error(
                    SweepFields.CHANGE.name(),
                    "a frontier is along a budget",
                    "use "
                            + SweepFields.FRONTIER_KINDS.stream()
                                    .map(ChangeKind::word)
                                    .collect(Collectors.joining(" or "))
                            + ", or write it as a line");
        }
        return budgets;
    }

    private Optional<Grid> grid(Members members) {
        Optional<String> name = partName(members);
        Optional<Purchases> purchases = members.get(SweepFields.PURCHASES);
        Optional<Axis> rows = axis(members, "rows");
        Optional<Axis> columns = axis(members, "columns");
        members.refuseUnknown();
        if (name.isEmpty() || purchases.isEmpty() || rows.isEmpty() || columns.isEmpty()) {
            return Optional.empty();
        }
        if (rows.get().subject().equals(columns.get().subject())) {
            members.error("columns", "rows and columns change the same thing", "a grid needs two different changes");
        }
        rows.get().values().forEach(row -> columns.get()
                .values()
                .forEach(column -> variations.add(
                        members.tree(),
                        members.path("rows"),
                        List.of(
                                rows.get().subject().to(row),
                                columns.get().subject().to(column)))));
        return Optional.of(new Grid(name.get(), purchases.get(), rows.get(), columns.get()));
    }

    private Optional<Axis> axis(Members members, String name) {
        return members.object(name, Presence.REQUIRED, "change, of and values").flatMap(object -> {
            Optional<Axis> axis = changes.axis(object);
            object.refuseUnknown();
            return axis;
        });
    }

    private Optional<NamedCase> namedCase(Members members) {
        Optional<String> name = partName(members);
        Optional<Purchases> purchases = members.get(SweepFields.PURCHASES);
        List<Change> list = new ArrayList<>();
        Set<Subject> seen = new HashSet<>();
        for (Members object : members.objects("changes", Presence.REQUIRED, "change, of and value")) {
            changes.change(object).ifPresent(change -> {
                list.add(change);
                refuseTwice(object, change.subject(), seen);
            });
            object.refuseUnknown();
        }
        members.refuseUnknown();
        if (!list.isEmpty()) {
            variations.add(members.tree(), members.path("changes"), list);
        }
        return name.isPresent() && purchases.isPresent()
                ? Optional.of(new NamedCase(name.get(), purchases.get(), List.copyOf(list)))
                : Optional.empty();
    }

    private Losses losses(Members members) {
        boolean out = members.get(SweepFields.CHARGER_OUT).orElse(false);
        Optional<Integer> packs = members.get(SweepFields.PACK_IN);
        Optional<Integer> late = members.get(SweepFields.LATE_MINUTES);
        members.refuseUnknown();
        boolean asked = members.tree().members().containsKey(SweepFields.PACK_IN.name())
                || members.tree().members().containsKey(SweepFields.LATE_MINUTES.name())
                || members.tree().members().containsKey(SweepFields.CHARGER_OUT.name());
        if (!asked) {
            members.error(
                    "", "no loss is asked for", "add charger_out, one_pack_in or late_minutes, or leave losses out");
        }
        late.ifPresent(minutes -> variations.add(
                members.tree(), members.path(SweepFields.LATE_MINUTES.name()), List.of(LossChanges.late(minutes))));
        return new Losses(out, number(packs), number(late));
    }

    private static OptionalInt number(Optional<Integer> value) {
        return value.map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    /** Names become parts of file names, where upper and lower case may be the same. */
    private Optional<String> partName(Members members) {
        Optional<String> name = members.get(SweepFields.PART_NAME);
        if (name.isPresent() && !taken.add(name.get().toLowerCase(Locale.ROOT))) {
            members.error(
                    SweepFields.PART_NAME.name(),
                    "the name is there twice",
                    "lines, frontiers, grids and cases have different names");
        }
        return name;
    }

    private static void refuseTwice(Members members, Subject subject, Set<Subject> seen) {
        if (!seen.add(subject)) {
            members.error(SweepFields.CHANGE.name(), "the same thing is changed twice", "keep one of the two changes");
        }
    }

    private static <T> List<T> all(List<Optional<T>> found) {
        return found.stream().flatMap(Optional::stream).toList();
    }
}
