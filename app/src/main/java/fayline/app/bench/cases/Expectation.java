package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * What a case expects of one quantity. Seen by the comparison only.
 *
 * @param name the quantity
 * @param value the expected value: a number, a truth, a word, a list or an object of these
 * @param unit its unit
 * @param tolerance how close is close enough
 */
record Expectation(String name, JsonNode value, String unit, Tolerance tolerance) {}
