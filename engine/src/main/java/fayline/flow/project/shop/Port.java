package fayline.flow.project.shop;

import fayline.flow.project.catalog.Keyed;

/**
 * A vacuum connection.
 *
 * @param id the id
 * @param name the name
 * @param pump the pump behind it
 */
public record Port(String id, String name, String pump) implements Keyed {}
