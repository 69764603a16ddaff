package fayline.app.web.frame;

import io.javalin.http.Context;
import java.util.function.BooleanSupplier;

/** The one place that asks of every request who it is and whether they may. */
public interface Gate {
    /** Asks nobody: the program serves this machine alone. */
    Gate OPEN = new Gate() {
        @Override
        public boolean who(Context ctx) {
            return true;
        }

        @Override
        public void may(Context ctx) {
            // whoever is at this machine may do everything
        }

        @Override
        public BooleanSupplier stays(Context ctx) {
            return () -> true;
        }
    };

    /**
     * Finds out who it is, for every request.
     *
     * @return whether the request goes on; otherwise it was answered
     * @throws Refusal if it is nobody who is known
     */
    boolean who(Context ctx);

    /**
     * Asks whether they may, for an address that there is.
     *
     * @throws Refusal if not
     */
    void may(Context ctx);

    /**
     * Whether who asked is still known, to be asked again and again by answers that go on and on; asking does not count as use
     * of a sign-in.
     */
    BooleanSupplier stays(Context ctx);
}
