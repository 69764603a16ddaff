package fayline.flow.result.cost;

/**
 * An amount of money, in the project's currency, by what it is for.
 *
 * @param material what is drawn from the stores
 * @param hands hands-on time
 * @param orders what is made or bought outside by an order of its own
 */
public record Cost(double material, double hands, double orders) {
    /** Nothing. */
    public static final Cost NONE = new Cost(0, 0, 0);

    /** All of it. */
    public double all() {
        return material + hands + orders;
    }

    /** The sum of this and another. */
    public Cost plus(Cost other) {
        return new Cost(material + other.material, hands + other.hands, orders + other.orders);
    }

    /** This less another. */
    public Cost minus(Cost other) {
        return new Cost(material - other.material, hands - other.hands, orders - other.orders);
    }
}
