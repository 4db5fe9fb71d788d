package covewalk.verdict.evidence;

/**
 * What the readings of one set-up have of weaknesses, counted over its walk readings.
 *
 * @param walked how many there are
 * @param belowRange of less lux than the meter reads well
 * @param foreign with over 0.2 % of their lux left with the cove off, which was subtracted
 * @param largestShare of lux left with the cove off, over the lux with it on
 * @param swamped with so much foreign light that nothing was subtracted
 * @param withoutLux where a dark reading was taken at the same spot, and one of them has no lux
 * @param inTime whose drift was corrected
 * @param withoutTime whose drift was to be corrected, and that have no time on the clock of the reference readings
 */
public record SetUpTally(String setUp, int walked, int belowRange, int foreign, double largestShare, int swamped,
                         int withoutLux, int inTime, int withoutTime) {
}
