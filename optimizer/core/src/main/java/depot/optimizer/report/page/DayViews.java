package depot.optimizer.report.page;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.UnitFeed;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Every kind of day of a depot. */
final class DayViews {

    private DayViews() {}

    /** In the plan's order; the first one is shown unfolded. */
    static List<DayView> of(DepotPlan plan, int handoverMinutes) {
        List<DayView> views = new ArrayList<>();
        for (int i = 0; i < plan.days().size(); i++) {
            DayPlan day = plan.days().get(i);
            String id = "day-" + (i + 1);
            views.add(new DayView(
                    id,
                    title(i, day),
                    Figures.count(Figures.plain(day.daysPerYear(), 1), "day") + " a year",
                    i == 0,
                    HandoverBook.of(plan, day, handoverMinutes),
                    trips(id + "-trips", day),
                    roadCharges(id + "-road", day),
                    feeds(id + "-feeds", day)));
        }
        return views;
    }

    static String title(int index, DayPlan day) {
        return "Kind of day " + (index + 1) + ": " + DayNames.of(day.occurrences());
    }

    private static TableView trips(String id, DayPlan day) {
        TableView.Builder table = TableView.of(id, "Packs on board when each trip leaves")
                .words("Crew")
                .numbers("Trip")
                .words("Leaves", "Is back", "Pack type")
                .numbers("Full (packs)", "At 80 % (packs)");
        for (TripPlan trip : day.trips()) {
            for (TripPlan.Carried carried : trip.carried()) {
                table.row(
                        trip.crew(),
                        Integer.toString(trip.trip()),
                        Clock.time(trip.leaveMinute()),
                        Clock.time(trip.returnMinute()),
                        carried.packType(),
                        Integer.toString(carried.full()),
                        Integer.toString(carried.at80()));
            }
        }
        return table.build();
    }

    private static TableView roadCharges(String id, DayPlan day) {
        TableView.Builder table = TableView.of(id, "Empty packs charged on the way")
                .words("Crew")
                .numbers("Trip")
                .words("From", "To", "Power from", "Charger", "Pack type")
                .numbers("Packs", "Emptied at stop", "Used from stop");
        for (TripPlan trip : day.trips()) {
            for (TripPlan.RoadCharge charge : trip.roadCharges()) {
                table.row(
                        trip.crew(),
                        Integer.toString(trip.trip()),
                        Clock.time(charge.fromMinute()),
                        Clock.time(charge.toMinute()),
                        Words.of(charge.source()),
                        charge.chargerType(),
                        charge.packType(),
                        Integer.toString(charge.packs()),
                        Integer.toString(charge.afterStop()),
                        Integer.toString(charge.beforeStop()));
            }
        }
        return table.build();
    }

    private static TableView feeds(String id, DayPlan day) {
        TableView.Builder table = TableView.of(id, "What each load-sharing unit may draw")
                .words("Circuit", "From", "To")
                .numbers("Energy (Wh)", "On average (W)");
        for (UnitFeed feed : day.feeds()) {
            int minutes = feed.toMinute() - feed.fromMinute();
            table.row(
                    feed.circuit(),
                    Clock.time(feed.fromMinute()),
                    Clock.time(feed.toMinute()),
                    Figures.read(feed.wattHours(), 0),
                    minutes == 0 ? "0" : Figures.read(60 * feed.wattHours() / minutes, 0));
        }
        return table.build();
    }
}
