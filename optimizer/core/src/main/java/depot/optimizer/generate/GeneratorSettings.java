package depot.optimizer.generate;

/**
 * How big a synthetic fleet is.
 *
 * @param depots 1 or more
 * @param crewsPerDepot 1 or more
 * @param circuitsPerDepot 2 or more: the last one of a depot is always big enough for all of it, but has to be built
 * @param chargerTypes 1 to {@value GeneratedEquipment#MOST_CHARGER_TYPES}
 * @param packTypes 1 to {@value GeneratedEquipment#MOST_PACK_TYPES}; from 2 on there are two pack families
 * @param seasons 1 to {@value GeneratedYear#MOST_SEASONS}
 * @param days kinds of working days, 1 (Monday to Friday alike) to 7 (each day its own)
 */
public record GeneratorSettings(
        int depots, int crewsPerDepot, int circuitsPerDepot, int chargerTypes, int packTypes, int seasons, int days) {

    /** Eight depots of six crews, five circuits, four charger types, two pack types, one season, five days. */
    public static final GeneratorSettings DEFAULT = new GeneratorSettings(8, 6, 5, 4, 2, 1, 5);

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the setting, its value and its range
     */
    public GeneratorSettings {
        check("depots", depots, 1, 100_000);
        check("crewsPerDepot", crewsPerDepot, 1, 100);
        check("circuitsPerDepot", circuitsPerDepot, 2, 100);
        check("chargerTypes", chargerTypes, 1, GeneratedEquipment.MOST_CHARGER_TYPES);
        check("packTypes", packTypes, 1, GeneratedEquipment.MOST_PACK_TYPES);
        check("seasons", seasons, 1, GeneratedYear.MOST_SEASONS);
        check("days", days, 1, 7);
    }

    /** The same sizes with another number of depots. */
    public GeneratorSettings withDepots(int count) {
        return new GeneratorSettings(count, crewsPerDepot, circuitsPerDepot, chargerTypes, packTypes, seasons, days);
    }

    /** The same sizes with another number of crews at each depot. */
    public GeneratorSettings withCrewsPerDepot(int count) {
        return new GeneratorSettings(depots, count, circuitsPerDepot, chargerTypes, packTypes, seasons, days);
    }

    /** The same sizes with another number of seasons and kinds of working days. */
    public GeneratorSettings withCalendar(int seasonCount, int dayCount) {
        return new GeneratorSettings(
                depots, crewsPerDepot, circuitsPerDepot, chargerTypes, packTypes, seasonCount, dayCount);
    }

    private static void check(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(name + " is " + value + ", must be " + least + " to " + most);
        }
    }
}
