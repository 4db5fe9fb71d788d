package covewalk.app.desk;

/**
 * What is looked at, in all places at once.
 *
 * @param cove the cove's id
 * @param positionM m from its datum
 */
public record Spot(String cove, double positionM) {
}
