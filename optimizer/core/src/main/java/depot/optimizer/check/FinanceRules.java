package depot.optimizer.check;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import depot.optimizer.dictionary.FinanceTables.Depreciation;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.scenario.DepreciationShare;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rules of the settings of finance and of depreciation schedules. */
final class FinanceRules {
    /** Published tables print shares in hundredths of a per cent. */
    private static final BigDecimal TOLERANCE = new BigDecimal("0.001");

    private FinanceRules() {}

    /** The years of a schedule are 1, 2, 3 and so on. */
    static void yearsWithoutGap(Drafts drafts, Findings findings) {
        schedules(drafts).forEach((schedule, rows) -> {
            Set<Integer> years = new HashSet<>();
            rows.forEach(row -> years.add(row.value().year()));
            rows.stream()
                    .filter(row -> row.value().year() > 1
                            && !years.contains(row.value().year() - 1))
                    .forEach(row -> findings.error(
                            row,
                            Depreciation.YEAR,
                            "schedule " + schedule + " has no year "
                                    + (row.value().year() - 1),
                            "count years from 1 without a gap; a year may have the share 0"));
        });
    }

    /** The shares of a schedule add to 1. */
    static void sharesAddToOne(Drafts drafts, Findings findings) {
        schedules(drafts).forEach((schedule, rows) -> {
            BigDecimal sum = rows.stream()
                    .map(row -> BigDecimal.valueOf(row.value().share()))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (sum.subtract(BigDecimal.ONE).abs().compareTo(TOLERANCE) > 0) {
                findings.error(
                        rows.get(rows.size() - 1),
                        Depreciation.SHARE,
                        "the shares of schedule " + schedule + " add to "
                                + sum.stripTrailingZeros().toPlainString(),
                        "they add to 1, within " + TOLERANCE);
            }
        });
    }

    /** The schedule that the settings name is there. */
    static void scheduleIsThere(Drafts drafts, Findings findings) {
        if (!drafts.table(Depreciation.TABLE).complete()) {
            return;
        }
        drafts.settings.ifPresent(
                settings -> settings.find(Settings.DEPRECIATION).ifPresent(named -> {
                    Set<Object> names = scheduleNames(drafts);
                    if (!names.contains(named)) {
                        findings.error(
                                settings,
                                Settings.DEPRECIATION,
                                "no such schedule in " + Depreciation.TABLE.file(),
                                names.isEmpty()
                                        ? "write the table, or leave the setting out"
                                        : NearestKey.hint(named, names));
                    }
                }));
    }

    /** A schedule that the settings do not name may be a slip. */
    static void schedulesAreUsed(Drafts drafts, Findings findings) {
        Optional<String> named = drafts.settings.flatMap(settings -> settings.find(Settings.DEPRECIATION));
        boolean known = drafts.settings.filter(TypedRow::sound).isPresent();
        schedules(drafts).forEach((schedule, rows) -> {
            if (known && !named.equals(Optional.of(schedule))) {
                findings.notice(
                        rows.get(0),
                        Depreciation.SCHEDULE,
                        "finance.depreciation does not name this schedule",
                        "it is not used");
            }
        });
    }

    /** A price of carbon needs to know how much of it electricity carries. */
    static void carbonOfElectricity(Drafts drafts, Findings findings) {
        drafts.settings.filter(TypedRow::sound).ifPresent(settings -> {
            if (settings.find(Settings.CARBON_PRICE_PER_TONNE).isPresent()
                    && settings.find(Settings.GRID_KG_CO2_PER_KWH).isEmpty()) {
                findings.error(
                        settings,
                        Settings.CARBON_PRICE_PER_TONNE,
                        "a price of carbon without " + Settings.GRID_KG_CO2_PER_KWH.name(),
                        "say what a kWh of the grid carries, 0 if it carries none");
            }
        });
    }

    /** Rows by schedule, those of schedules with a broken row left out. */
    private static Map<String, List<Located<DepreciationShare>>> schedules(Drafts drafts) {
        if (!drafts.table(Depreciation.TABLE).complete()) {
            return Map.of();
        }
        Set<String> broken = drafts.inBrokenRows(Depreciation.TABLE, Depreciation.SCHEDULE);
        return drafts.depreciation.stream()
                .filter(row -> !broken.contains(row.value().schedule()))
                .collect(groupingBy(row -> row.value().schedule(), LinkedHashMap::new, toList()));
    }

    private static Set<Object> scheduleNames(Drafts drafts) {
        Set<Object> names = new HashSet<>();
        drafts.table(Depreciation.TABLE).rows().forEach(row -> row.find(Depreciation.SCHEDULE)
                .ifPresent(names::add));
        return names;
    }
}
