package depot.optimizer.generate;

/**
 * A crew's day.
 *
 * @param lunch whether it is in a depot at lunch
 * @param lunchMinutes how long it then stays
 */
record CrewHours(int leaveMinute, int backMinute, boolean lunch, int lunchAtMinute, int lunchMinutes) {

    static CrewHours draw(Dice dice) {
        return new CrewHours(
                dice.stepped(405, 450, 15),
                dice.stepped(930, 1005, 15),
                dice.percent(30),
                dice.stepped(705, 735, 15),
                dice.stepped(45, 75, 15));
    }

    /** The same hours with a lunch in a depot. */
    CrewHours withLunch() {
        return new CrewHours(leaveMinute, backMinute, true, lunchAtMinute, lunchMinutes);
    }

    int lunchUntilMinute() {
        return lunchAtMinute + lunchMinutes;
    }
}
