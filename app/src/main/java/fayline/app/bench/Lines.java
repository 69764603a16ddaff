package fayline.app.bench;

import java.util.concurrent.Flow;
import java.util.function.Consumer;

/** Takes an answer line by line as it comes, for as long as it goes on. */
record Lines(Consumer<String> each) implements Flow.Subscriber<String> {
    @Override
    public void onSubscribe(Flow.Subscription s) {
        s.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(String line) {
        each.accept(line);
    }

    @Override
    public void onError(Throwable t) {
        // the program was stopped
    }

    @Override
    public void onComplete() {
        // the program has ended the stream
    }
}
