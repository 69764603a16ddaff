package fayline.app.usecase.people;

import java.util.Locale;

/** What can be done, in the words of a refusal: "may not ...". */
public enum Act {
    /** Look at everything but costs and people. */
    SEE("see the shop"),
    /** Look at what things cost. */
    SEE_COSTS("see costs"),
    /** Start and finish steps, take readings, write notes, correct them. */
    WORK("enter work and readings"),
    /** Finish a hold point by one's own name. A tick in software is no licensed signature. */
    SIGN("sign a hold point"),
    /** Put a lot to use that is out of date. */
    OVERRIDE_LOT("use a lot that is out of date"),
    /** Decide what becomes of a deviation: used as it is, reworked, scrapped. */
    ACCEPT_DEVIATION("decide about a deviation"),
    /** Ask for an alteration of the design. */
    RAISE_CHANGE("raise a change"),
    /** Decide about a change, settle what it touches, close it, and let a step begin that a change stands before. */
    DECIDE_CHANGE("decide about a change"),
    /** Order from outside, and accept what comes or send it back. */
    ORDER("order and accept what was ordered"),
    /** Enter a visit or what it found. */
    INSPECT("enter a visit or a finding"),
    /** Save any file of the definition, by whatever form. */
    CHANGE_DEFINITION("change the definition"),
    /** Search for a better plan and tell the crew which one holds. */
    PUBLISH_PLAN("settle the plan"),
    /** Settle what is told of a week to people outside. */
    TELL_WEEK("settle a week report"),
    /** Print the head of the record, to be kept outside. */
    PRINT_SHEET("print a sheet of the record, or a book"),
    /** Take personal text out of the record. */
    ERASE("erase what is personal"),
    /** Say who may enter, pair and end devices, end sign-ins. */
    KEEP_PEOPLE("say who may enter"),
    /** One's own PIN, password, devices and sign-ins, and how the screen shows things. */
    KEEP_SELF("change one's own sign-in");

    private final String words;

    Act(String words) {
        this.words = words;
    }

    /** What it is, in words that follow "may" or "may not". */
    public String words() {
        return words;
    }

    /** The word in the record, as {@code change-definition}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
