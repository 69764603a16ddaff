package fayline.app.usecase.shop;

import fayline.flow.record.NewEntry;
import java.util.Optional;

/** Decides whether who makes an entry may make it. Every entry of a shop's record passes it. */
@FunctionalInterface
public interface Judge {
    /** Lets everything pass: this machine alone, where no account is known. */
    Judge NONE = fresh -> Optional.empty();

    /** Why an entry is refused, in a sentence; empty where it may be made. */
    Optional<String> refuses(NewEntry fresh);
}
