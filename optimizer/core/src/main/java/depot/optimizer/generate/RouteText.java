package depot.optimizer.generate;

import depot.optimizer.dictionary.CrewTables.CrewBases;
import depot.optimizer.dictionary.CrewTables.Crews;
import depot.optimizer.dictionary.CrewTables.Tools;
import depot.optimizer.dictionary.RouteTables.Seasons;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.dictionary.RouteTables.WorkRows;
import depot.optimizer.generate.TableText.Row;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.util.List;

/** Tables of the seasons, the crews, their routes and their work. */
final class RouteText {
    private RouteText() {}

    static List<TableText> tables(Scenario scenario) {
        return List.of(
                TableText.of(Seasons.TABLE, scenario.seasons(), RouteText::season),
                TableText.of(Tools.TABLE, scenario.tools(), RouteText::tool),
                TableText.of(Crews.TABLE, scenario.crews(), RouteText::crew),
                TableText.of(CrewBases.TABLE, scenario.crewBases(), RouteText::crewBase),
                TableText.of(Stops.TABLE, scenario.stops(), RouteText::stop),
                TableText.of(WorkRows.TABLE, scenario.work(), RouteText::work));
    }

    private static void season(Row row, Season season) {
        row.put(Seasons.SEASON, season.id())
                .put(Seasons.WEEKS_PER_YEAR, season.weeksPerYear())
                .put(Seasons.PACK_CAPACITY_FACTOR, season.packCapacityFactor());
    }

    private static void tool(Row row, Tool tool) {
        row.put(Tools.TOOL, tool.id())
                .put(Tools.FAMILY, tool.family())
                .put(Tools.AVERAGE_WATTS, tool.averageWatts())
                .put(Tools.PETROL_LITRES_PER_HOUR, SiteText.boxed(tool.petrolLitresPerHour()));
    }

    private static void crew(Row row, Crew crew) {
        row.put(Crews.CREW, crew.id())
                .put(Crews.DEPOT, crew.depot())
                .put(Crews.PACK_PLACES, crew.packPlaces())
                .put(Crews.PAYLOAD_KG, crew.payloadKg())
                .put(Crews.VEHICLE_WATTS, crew.vehicleWatts())
                .put(Crews.PETROL_COST_PER_YEAR, crew.petrolCostPerYear());
    }

    private static void crewBase(Row row, CrewBase base) {
        row.put(CrewBases.CREW, base.crew())
                .put(CrewBases.DEPOT, base.depot())
                .put(CrewBases.COST_PER_YEAR, base.costPerYear());
    }

    private static void stop(Row row, RouteStop stop) {
        row.put(Stops.SEASON, stop.season())
                .put(Stops.DAYS, stop.days())
                .put(Stops.CREW, stop.crew())
                .put(Stops.STOP, stop.stop())
                .put(Stops.PLACE, stop.place())
                .put(Stops.ARRIVE, stop.arriveMinute())
                .put(Stops.LEAVE, stop.leaveMinute())
                .put(Stops.SITE_WATTS, stop.siteWatts());
    }

    private static void work(Row row, Work work) {
        row.put(WorkRows.SEASON, work.season())
                .put(WorkRows.DAYS, work.days())
                .put(WorkRows.CREW, work.crew())
                .put(WorkRows.STOP, work.stop())
                .put(WorkRows.TOOL, work.tool())
                .put(WorkRows.HOURS, work.hours())
                .put(WorkRows.TOOLS_AT_ONCE, work.toolsAtOnce());
    }
}
