package depot.optimizer.generate;

import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.Tool;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What a synthetic fleet can buy: invented types of ordinary size and price. */
final class GeneratedEquipment {
    static final int MOST_CHARGER_TYPES = 6;
    static final int MOST_PACK_TYPES = 4;
    static final String HAND = "hand";
    static final String BACK = "back";

    private static final double USABLE_SHARE = 0.9;
    private static final double SHARE_OF_STAGE_ONE = 0.8;
    /** The taper takes half as long again as the fast stage: 0.4 of its power, so the plate holds in both. */
    private static final double TAPER_PER_FAST_MINUTE = 0.5;
    /** Packs take no more than this many times their capacity per hour. */
    private static final double FASTEST_RATE = 1.2;

    private static final List<PackType> PACKS = List.of(
            new PackType("hand-360", HAND, 360, USABLE_SHARE, 2.2, price(240), 1800, 5),
            new PackType("back-1200", BACK, 1200, USABLE_SHARE, 8.8, price(790), 2500, 6),
            new PackType("hand-180", HAND, 180, USABLE_SHARE, 1.2, price(125), 1800, 5),
            new PackType("back-700", BACK, 700, USABLE_SHARE, 5.2, price(490), 2500, 6));

    /** The first one alone can serve a depot: four bays, little power. */
    private static final List<ChargerType> CHARGERS = List.of(
            new ChargerType("rail-four", 4, 1, 600, 0.92, 2, false, 0, price(380), price(30), 8),
            new ChargerType("shelf-six", 6, 6, 1800, 0.90, 3, false, 0, price(690), price(40), 8),
            new ChargerType("swift-one", 1, 1, 900, 0.93, 1, false, 0, price(260), price(20), 8),
            new ChargerType("carry-two", 2, 1, 300, 0.88, 1, true, 3.5, price(170), price(0), 6),
            new ChargerType("wall-one", 1, 1, 250, 0.88, 1, false, 0, price(95), price(10), 8),
            new ChargerType("dock-two", 2, 2, 1200, 0.92, 2, false, 0, price(360), price(30), 8));

    /** Every fleet can buy it. */
    static final PackType MAIN_PACK = PACKS.get(0);

    /** Every fleet can buy it. */
    static final ChargerType MAIN_CHARGER = CHARGERS.get(0);

    private GeneratedEquipment() {}

    static List<PackType> packTypes(GeneratorSettings settings) {
        return PACKS.subList(0, settings.packTypes());
    }

    static List<ChargerType> chargerTypes(GeneratorSettings settings) {
        return CHARGERS.subList(0, settings.chargerTypes());
    }

    static List<SharingUnitType> sharingUnitTypes() {
        return List.of(
                new SharingUnitType("ration-six", 6, 13, 2, price(310), price(120), 10),
                new SharingUnitType("ration-twelve", 12, 25, 3, price(620), price(160), 10));
    }

    static List<Tool> tools(GeneratorSettings settings) {
        List<Tool> tools = new ArrayList<>(List.of(
                new Tool("hedge-cutter", HAND, 450, OptionalDouble.of(0.9)),
                new Tool("limbing-saw", HAND, 750, OptionalDouble.of(1.1))));
        if (settings.packTypes() > 1) {
            tools.add(new Tool("brush-cutter", BACK, 900, OptionalDouble.of(1.2)));
            tools.add(new Tool("walk-mower", BACK, 1100, OptionalDouble.of(1.3)));
        }
        return tools;
    }

    /** Every charger takes every pack, as fast as its plate and the pack allow. */
    static List<ChargeTime> chargeTimes(GeneratorSettings settings) {
        List<ChargeTime> times = new ArrayList<>();
        for (ChargerType charger : chargerTypes(settings)) {
            for (PackType pack : packTypes(settings)) {
                times.add(chargeTime(charger, pack));
            }
        }
        return times;
    }

    private static ChargeTime chargeTime(ChargerType charger, PackType pack) {
        double packWatts = charger.plateWatts() / charger.chargingAtOnce();
        double gridWh = pack.capacityWh() * pack.usableShare() / charger.efficiency();
        double watts = Math.min(packWatts, pack.capacityWh() * FASTEST_RATE / charger.efficiency());
        int fast = (int) Math.ceil(SHARE_OF_STAGE_ONE * gridWh * 60 / watts);
        int taper = (int) Math.ceil(fast * TAPER_PER_FAST_MINUTE);
        return new ChargeTime(charger.id(), pack.id(), fast, fast + taper);
    }

    private static BigDecimal price(long amount) {
        return BigDecimal.valueOf(amount);
    }
}
