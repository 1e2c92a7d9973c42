package org.drillwright.plan.roster;

/**
 * A hall and the lanes wanted in it, in whole centimetres. The lane, its gaps and margins are common practice, no source;
 * the instructor's own risk assessment and local rules decide.
 *
 * @param length of the hall
 * @param width of the hall
 * @param laneLength from end to end of the space in which a pair moves
 * @param laneWidth across it
 * @param sideGap clear space between lanes side by side
 * @param endGap clear space between lanes end to end
 * @param sideMargin clear space between a lane's side and a wall
 * @param endMargin clear space between a lane's end and a wall
 */
public record Hall(
        int length, int width, int laneLength, int laneWidth, int sideGap, int endGap, int sideMargin, int endMargin) {

    /** A hall with the usual lanes for work in pairs. */
    public static Hall of(int length, int width) {
        return new Hall(length, width, 600, 200, 100, 200, 100, 100);
    }

    public Hall withSideGap(int gap) {
        return new Hall(length, width, laneLength, laneWidth, gap, endGap, sideMargin, endMargin);
    }
}
