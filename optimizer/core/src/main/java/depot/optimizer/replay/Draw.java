package depot.optimizer.replay;

/** What is uncertain about a day: the energy that each stop takes, and how late a crew comes back. */
interface Draw {
    /** Watt-hours of one family by stop. */
    double[] usedWh(DayCase.Trip trip, Needs need);

    /** Whole minutes after the planned return. */
    int lateMinutes(DayCase.Trip trip);

    /** The planned day: needs at the planned quantile, everybody on time. */
    Draw PLANNED = new Draw() {
        @Override
        public double[] usedWh(DayCase.Trip trip, Needs need) {
            return need.usedWh();
        }

        @Override
        public int lateMinutes(DayCase.Trip trip) {
            return 0;
        }
    };
}
