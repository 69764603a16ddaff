package fayline.flow.project.shop;

import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.catalog.Catalog;
import java.time.ZoneId;
import java.util.List;

/**
 * The shop, which one or more projects share.
 *
 * @param name its name
 * @param zone its time zone
 * @param elevation height above the sea, for the pressure a bag can reach
 * @param limits the climate in which wet work may begin
 * @param dustSettles how long after dusty work the air of a room must settle before wet work
 * @param mixing hands-on time to weigh and mix one batch
 * @param lifeTrusted the share of a pot life on which batches rely
 * @param resinWaste mixed resin beyond what stays in the part, as a fraction of the latter
 * @param clothWaste cloth beyond the ply area, as a fraction of it
 * @param weights what a better plan is worth
 * @param people the crew
 * @param stands places where work happens
 * @param ports vacuum connections
 * @param moulds tools
 * @param wishes what the lead has decided about steps beforehand
 */
public record Shop(
        String name,
        ZoneId zone,
        Length elevation,
        Limits limits,
        TimeSpan dustSettles,
        TimeSpan mixing,
        Fraction lifeTrusted,
        Fraction resinWaste,
        Fraction clothWaste,
        PlanWeights weights,
        Catalog<Person> people,
        Catalog<Stand> stands,
        Catalog<Port> ports,
        Catalog<Mould> moulds,
        Catalog<LeadWish> wishes) {
    /** The same with another crew. */
    public Shop withPeople(List<Person> crew) {
        return with(new Catalog<>(crew), moulds);
    }

    /** The same with other moulds. */
    public Shop withMoulds(List<Mould> others) {
        return with(people, new Catalog<>(others));
    }

    private Shop with(Catalog<Person> crew, Catalog<Mould> tools) {
        return new Shop(
                name,
                zone,
                elevation,
                limits,
                dustSettles,
                mixing,
                lifeTrusted,
                resinWaste,
                clothWaste,
                weights,
                crew,
                stands,
                ports,
                tools,
                wishes);
    }

    /**
     * The climate in which wet work may begin.
     *
     * @param coldest least air temperature
     * @param dampest most relative humidity
     * @param dewMargin least distance of the coldest surface above the dew point
     */
    public record Limits(Temperature coldest, Fraction dampest, TemperatureDifference dewMargin) {}
}
