package swineherd.setup;

/**
 * What things cost, in whatever money the keeper thinks in. Only the keeper knows it; nothing in
 * the program assumes a price.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param weaner one weaned pig
 * @param feed feed in bags, for each kg
 * @param bag what one bag holds, kg
 * @param bulk feed in bulk, for each kg
 * @param bulkLoad the load that is on offer, or the smallest the mill brings, kg
 * @param bulkDelivery delivery of the bulk load, and a bin if one must be bought
 * @param straw straw or other bedding, for each kg
 * @param vet vet, wormer and other medicines for the batch
 * @param travel fetching pigs, feed and meat, for the batch
 * @param insurance insurance for the batch
 * @param kill slaughter of one pig
 * @param cut cutting and wrapping, for each kg of hanging weight
 * @param fence posts, wire and netting, less what they will bring again
 * @param shelter shelter, less what it will bring again
 * @param trough troughs and drinkers, less what they will bring again
 * @param energizer fence energizer, less what it will bring again
 * @param freezer freezer, less what it will bring again
 * @param meat what such meat would cost or bring, for each kg wrapped
 */
public record Money(
    Double weaner,
    Double feed,
    Double bag,
    Double bulk,
    Double bulkLoad,
    Double bulkDelivery,
    Double straw,
    Double vet,
    Double travel,
    Double insurance,
    Double kill,
    Double cut,
    Double fence,
    Double shelter,
    Double trough,
    Double energizer,
    Double freezer,
    Double meat) {

  static final Money UNKNOWN =
      new Money(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null, null);
}
