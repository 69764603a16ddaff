package fayline.app.usecase.calc.fit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcAnswer;
import fayline.app.usecase.calc.CalcTopic;
import fayline.app.usecase.calc.form.Form;
import fayline.app.usecase.calc.form.Given;

/** One question of fit-up whose inputs are described by a form. */
final class FitTopic implements CalcTopic {
    private final String name;
    private final String about;
    private final Form form;
    private final Reckoning reckoning;

    /**
     * Makes a topic.
     *
     * @param kind the kind of question, which follows {@code fit.} in its name
     * @param about what it answers, in one sentence
     * @param form its inputs
     * @param reckoning how it answers
     */
    FitTopic(String kind, String about, Form form, Reckoning reckoning) {
        this.name = "fit." + kind;
        this.about = about;
        this.form = form;
        this.reckoning = reckoning;
    }

    /** Answers from inputs that are in order. */
    @FunctionalInterface
    interface Reckoning {
        CalcAnswer of(Given inputs);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String about() {
        return about;
    }

    @Override
    public ObjectNode schema() {
        return form.schema(name, about);
    }

    @Override
    public CalcAnswer answer(JsonNode inputs) {
        return reckoning.of(form.read(inputs));
    }
}
