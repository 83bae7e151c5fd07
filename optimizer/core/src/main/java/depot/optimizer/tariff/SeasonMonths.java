package depot.optimizer.tariff;

import java.time.Month;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which months belong to which season of a scenario. A season itself only knows how many weeks it has.
 *
 * @param bySeason in the order of the scenario's seasons; empty: the months were not told
 */
record SeasonMonths(Map<String, Set<Month>> bySeason) {
    static final String OPTION = "--season";

    /** Months whose prices are used: those of the seasons, or all of them. */
    Set<Month> used() {
        if (bySeason.isEmpty()) {
            return EnumSet.allOf(Month.class);
        }
        Set<Month> used = EnumSet.noneOf(Month.class);
        bySeason.values().forEach(used::addAll);
        return used;
    }

    /**
     * Reads texts such as {@code winter=Oct-Mar}.
     *
     * @return empty after telling all that is wrong
     */
    static Optional<SeasonMonths> parse(List<String> texts, List<String> seasons, Remarks remarks) {
        long before = remarks.errors();
        Map<String, Set<Month>> told = new LinkedHashMap<>();
        for (String text : texts) {
            parse(text, seasons, told, remarks);
        }
        Map<String, Set<Month>> ordered = new LinkedHashMap<>();
        for (String season : seasons) {
            if (told.containsKey(season)) {
                ordered.put(season, told.get(season));
            } else if (!texts.isEmpty() && remarks.errors() == before) {
                String hint = "each season of the scenario needs months, such as --season \"" + season + "=Apr-Sep\"";
                remarks.errorOfOption(OPTION, season, "the season has no months", hint);
            }
        }
        if (remarks.errors() > before) {
            return Optional.empty();
        }
        SeasonMonths months = new SeasonMonths(ordered);
        months.tellUnused(remarks);
        return Optional.of(months);
    }

    private static void parse(String text, List<String> seasons, Map<String, Set<Month>> told, Remarks remarks) {
        int equals = text.lastIndexOf('=');
        String season = text.substring(0, Math.max(0, equals)).strip();
        Optional<Set<Month>> months = Months.parse(text.substring(equals + 1));
        if (equals < 0 || months.isEmpty()) {
            String hint = "write SEASON=MONTHS, such as winter=Oct-Mar or winter=Jan,Feb,Dec";
            remarks.errorOfOption(OPTION, text, "not a season and its months", hint);
        } else if (!seasons.contains(season)) {
            String hint = "its seasons: " + String.join(", ", seasons);
            remarks.errorOfOption(OPTION, text, "the scenario has no season \"" + season + "\"", hint);
        } else if (told.putIfAbsent(season, months.get()) != null) {
            remarks.errorOfOption(OPTION, text, "the season is there twice", "give all its months at once");
        } else {
            requireApart(text, season, told, remarks);
        }
    }

    private static void requireApart(String text, String season, Map<String, Set<Month>> told, Remarks remarks) {
        told.forEach((other, months) -> {
            Set<Month> both = EnumSet.copyOf(months);
            both.retainAll(told.get(season));
            if (!other.equals(season) && !both.isEmpty()) {
                String message = "the season shares months with season \"" + other + "\": " + Months.text(both);
                remarks.errorOfOption(OPTION, text, message, "a month belongs to one season");
            }
        });
    }

    private void tellUnused(Remarks remarks) {
        Set<Month> unused = EnumSet.complementOf(EnumSet.copyOf(used()));
        if (!unused.isEmpty()) {
            String hint = "right if the scenario's seasons leave out a part of the year";
            remarks.noticeOfOption(
                    OPTION, "", "months of no season, whose prices are not used: " + Months.text(unused), hint);
        }
    }
}
