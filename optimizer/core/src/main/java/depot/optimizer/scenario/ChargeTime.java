package depot.optimizer.scenario;

/** How long a charger needs for an empty pack: to 80 % of its energy, and to the full. */
public record ChargeTime(String chargerType, String packType, int minutesTo80, int minutesToFull) {}
