package depot.optimizer.report.page;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes the pack lists of a depot's crews. Trips that are packed alike stand in one row with all their days. */
final class CrewsPages {

    private final Catalog catalog;
    private final DepotPlan plan;

    /** A row without its days. */
    private record Packed(String trip, String packs, String onTheWay) {}

    private CrewsPages(Catalog catalog, DepotPlan plan) {
        this.catalog = catalog;
        this.plan = plan;
    }

    static CrewsPage of(PageMaker maker, DepotPlan plan) {
        CrewsPages pages = new CrewsPages(maker.catalog(), plan);
        List<CrewsPage.Crew> crews = new ArrayList<>();
        maker.catalog().scenario().crews().stream()
                .map(Crew::id)
                .filter(pages::listed)
                .forEach(crew -> crews.add(pages.crew("crew-" + (crews.size() + 1), crew)));
        return new CrewsPage(
                maker.title(plan),
                "Scenario " + maker.plan().scenario(),
                maker.sheetLinks(plan, Sheet.CREWS),
                List.copyOf(crews));
    }

    /** Whether the crew leaves from this depot, on packs or on petrol. */
    private boolean listed(String crew) {
        return plan.onPetrol().contains(crew)
                || plan.days().stream().anyMatch(day -> day.trips().stream()
                        .anyMatch(trip -> trip.crew().equals(crew)));
    }

    private CrewsPage.Crew crew(String id, String crew) {
        Map<Packed, List<SeasonDay>> rows = new LinkedHashMap<>();
        for (DayPlan day : plan.days()) {
            for (TripPlan trip : day.trips()) {
                if (trip.crew().equals(crew)) {
                    rows.computeIfAbsent(packed(day, trip), any -> new ArrayList<>())
                            .addAll(day.occurrences());
                }
            }
        }
        TableView.Builder table = TableView.of(id + "-trips", "What " + crew + " takes on which days")
                .words("Days", "Trip", "Packs on board when it leaves");
        boolean recharges =
                rows.keySet().stream().anyMatch(row -> !row.onTheWay().isEmpty());
        if (recharges) {
            table.words("Recharged on the way");
        }
        rows.forEach((packed, days) -> {
            Stream<String> row = Stream.of(DayNames.of(days), packed.trip(), packed.packs());
            Stream<String> more = recharges ? Stream.of(packed.onTheWay()) : Stream.empty();
            table.row(Stream.concat(row, more).toArray(String[]::new));
        });
        return new CrewsPage.Crew(id, crew, kit(crew), table.build());
    }

    private Packed packed(DayPlan day, TripPlan trip) {
        String when =
                "%d: %s to %s".formatted(trip.trip(), Clock.time(trip.leaveMinute()), Clock.time(trip.returnMinute()));
        String packs = trip.carried().stream().map(CrewsPages::words).collect(Collectors.joining(", "));
        String road = trip.roadCharges().stream()
                .map(charge -> words(charge, day.occurrences().get(0), trip.crew()))
                .collect(Collectors.joining("; "));
        return new Packed(when, packs.isEmpty() ? "none" : packs, road);
    }

    /** Such as "3 full B10", "2 B10 at 80 %" or both. */
    private static String words(Carried packs) {
        List<String> parts = new ArrayList<>();
        if (packs.full() > 0) {
            parts.add(packs.full() + " full " + packs.packType());
        }
        if (packs.at80() > 0) {
            parts.add(packs.at80() + " " + packs.packType() + " at 80 %");
        }
        return String.join(", ", parts);
    }

    private String words(RoadCharge charge, SeasonDay day, String crew) {
        if (charge.source().atAnotherDepot()) {
            return visit(charge, day, crew);
        }
        String where =
                switch (charge.source()) {
                    case SITE -> Words.of(charge.source()) + place(day, crew, charge.afterStop());
                    case VEHICLE, BANK, VISIT, VISIT_EIGHTY -> Words.of(charge.source());
                };
        return "%s to %s, %s: %d %s in %s, emptied at stop %d, for use from stop %d"
                .formatted(
                        Clock.time(charge.fromMinute()),
                        Clock.time(charge.toMinute()),
                        where,
                        charge.packs(),
                        charge.packType(),
                        charge.chargerType(),
                        charge.afterStop(),
                        charge.beforeStop());
    }

    /** Such as "plug 2 empty B10 in at 12:00 at another depot (south), collect them at 12:45, for use from stop 4". */
    private String visit(RoadCharge charge, SeasonDay day, String crew) {
        String level = charge.source() == RoadSource.VISIT ? "" : " at 80 %";
        return "plug %d empty %s in at %s at another depot%s, collect them%s at %s, for use from stop %d"
                .formatted(
                        charge.packs(),
                        charge.packType(),
                        Clock.time(charge.fromMinute()),
                        place(day, crew, charge.afterStop()),
                        level,
                        Clock.time(charge.toMinute()),
                        charge.beforeStop());
    }

    private String place(SeasonDay day, String crew, int stop) {
        return catalog.scenario().stops().stream()
                .filter(row -> row.crew().equals(crew)
                        && row.stop() == stop
                        && row.season().equals(day.season())
                        && row.days().contains(day.day()))
                .map(RouteStop::place)
                .findFirst()
                .map(place -> " (" + place + ")")
                .orElse("");
    }

    private String kit(String crew) {
        if (plan.onPetrol().contains(crew)) {
            return "Stays on petrol: packs would cost more.";
        }
        List<String> items = plan.kits().stream()
                .filter(kit -> kit.crew().equals(crew) && kit.count() > 0)
                .map(this::words)
                .toList();
        return items.isEmpty()
                ? "No portable chargers, no power banks."
                : "On every trip: " + String.join(", ", items) + ".";
    }

    private String words(CrewKit kit) {
        String what = catalog.portableCharger(kit.item()).isPresent() ? "portable charger " : "power bank ";
        return kit.count() + " x " + what + kit.item();
    }
}
