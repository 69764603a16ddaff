package fayline.flow.project.design;

/**
 * Witness pieces that are laid up with a part and tested for it.
 *
 * @param id the id, within the part
 * @param name its name
 * @param test how they are tested
 * @param count how many results are planned
 * @param allowable name of the allowable that the results speak for; empty where none is said
 */
public record Coupon(String id, String name, CouponMeasure test, int count, String allowable) {}
