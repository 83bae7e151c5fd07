package depot.optimizer.sweep.change;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.sweep.change.Change.Subject;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** Changes in plain words. */
public final class ChangeWords {
    private ChangeWords() {}

    /** What is changed, such as "Price of all items". */
    public static String of(Subject subject) {
        String of = subject.of();
        return switch (subject.kind()) {
            case ITEM_PRICE -> "Price of " + or(of, "all items");
            case BUILDING_PRICE -> "Price of building work";
            case BUDGET -> "Budget of " + or(of, "what is bought now");
            case ALL_BUDGETS -> "All budgets";
            case ALL_MONEY -> "Every amount of money";
            case ELECTRICITY_PRICE -> "Price of energy" + (of.isEmpty() ? "" : " in tariff " + of);
            case DEMAND_PRICE -> "Price of demand" + (of.isEmpty() ? "" : " in tariff " + of);
            case ELECTRICITY_GROWTH -> "Yearly rise of electricity prices";
            case PETROL_PRICE -> "Price of petrol";
            case SHORTAGE_PRICE -> "Price of energy not covered";
            case HORIZON -> "Horizon";
            case DISCOUNT_RATE -> "Discount rate";
            case DEMAND_QUANTILE -> "Share of days covered";
            case DEMAND_SPREAD -> "Spread of the energy a stop needs";
            case WORK_HOURS -> "Hours of work of " + or(of, "all crews");
            case CREW_COPIES -> "Crews like " + of;
            case PACK_HEALTH -> "Pack health planned for";
            case PACK_LIFE -> "Life of " + or(of, "all packs");
            case SEASON_CAPACITY -> "Energy left in the cold, " + or(of, "all seasons");
            case CHARGE_TIMES -> "Charge times of " + or(of, "all chargers");
            case CIRCUIT_AMPS -> "Breaker amps of " + of;
            case SUPPLY_AMPS -> "Supply amps of " + of;
            case PLACES -> "Places for chargers at " + of;
            case LUNCH_MINUTES -> "Lunch stop of " + or(of, "all crews");
            case LATE_RETURN -> "Return of " + or(of, "all crews");
        };
    }

    /** What is changed and to what, such as "Price of all items × 0.8". */
    public static String of(Change change) {
        return of(change.subject()) + (change.kind().form() == ChangeKind.Form.FACTOR ? " " : ": ") + value(change);
    }

    /** Several changes. */
    public static String of(List<Change> changes) {
        return changes.stream().map(ChangeWords::of).collect(Collectors.joining("; "));
    }

    /** The value alone with its unit, such as "× 0.8", "30 min more" or "0.95". */
    public static String value(Change change) {
        String unit = change.kind().unit();
        return switch (change.kind().form()) {
            case FACTOR -> "× " + change.plain();
            case VALUE, WHOLE_VALUE -> withUnit(change.plain(), unit);
            case ADDED -> added(change.value(), unit);
            // Crews and places are named in what is changed.
            case WHOLE_ADDED -> added(change.value(), unit.equals("min") ? unit : "");
        };
    }

    /** What a plain value of a kind is counted in, such as "min more" or "times". */
    public static String unit(ChangeKind kind) {
        return switch (kind.form()) {
            case FACTOR -> "times";
            case VALUE, WHOLE_VALUE -> kind.unit();
            case ADDED, WHOLE_ADDED -> kind.unit() + " more";
        };
    }

    private static String added(BigDecimal value, String unit) {
        String amount = withUnit(new Change(ChangeKind.PLACES, "", value.abs()).plain(), unit);
        return amount + (value.signum() < 0 ? " less" : " more");
    }

    private static String withUnit(String number, String unit) {
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static String or(String of, String all) {
        return of.isEmpty() ? all : of;
    }
}
