package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.usecase.series.LookAtSeries;
import fayline.flow.result.series.Series;
import fayline.flow.result.series.SeriesPoint;
import fayline.flow.result.series.SeriesSort;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The demonstration's readings over time. */
class SeriesSiteTest extends AtTheDemo {
    private static Series series(SeriesSort sort) {
        return LookAtSeries.of(demo.view()).stream()
                .filter(s -> s.sort() == sort)
                .findFirst()
                .orElseThrow();
    }

    private static SeriesPoint point(SeriesSort sort, String of) {
        return series(sort).points().stream()
                .filter(p -> p.of().contains(of))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_draw_every_sort_with_its_limits_and_lead_to_the_entries() throws Exception {
        String page = browser.page("/over-time");
        List<Series> all = LookAtSeries.of(demo.view());
        assertThat(all).extracting(Series::sort).contains(SeriesSort.values());
        assertThat(page.split("<svg[^>]*over time", -1)).hasSize(all.size() + 1);
        all.forEach(s -> s.points().forEach(p -> assertThat(page).contains("/record/entry/" + p.entry())));
        assertThat(page).contains("mean step / 1.128", "[nist-handbook]", "these limits will still move");
        List<SeriesPoint> beyond =
                all.stream().flatMap(s -> s.beyond().stream()).toList();
        assertThat(beyond).isNotEmpty();
        beyond.forEach(p -> assertThat(page).contains("beyond</span>", ">" + p.name() + "</a>: "));
    }

    @Test
    void should_reckon_each_value_from_what_was_typed() {
        // 25.0 to 24.7 inHg in 5 minutes: 0.06 inHg a minute, 3386.389 Pa each.
        SeriesPoint leak = point(SeriesSort.LEAK, "hull-side-left/1/leak-test");
        assertThat(leak.typed()).isEqualTo("25.0 inHg, 24.7 inHg 5 min later");
        assertThat(leak.value()).isCloseTo(0.06 * 3386.389, within(0.1));
        // 40.20 kg against the target in the part's file
        double target = demo.view()
                .result()
                .part("hull-bottom")
                .orElseThrow()
                .target()
                .orElseThrow()
                .value()
                .kilograms();
        assertThat(point(SeriesSort.MASS_OVER_TARGET, "hull-bottom").value())
                .isCloseTo(40.20 / target - 1, within(1e-9));
        double dry =
                demo.view().result().part("hull-bottom").orElseThrow().dry().kilograms();
        assertThat(point(SeriesSort.RESIN, "hull-bottom").value()).isCloseTo(1 - dry / 40.20, within(1e-9));
    }

    @Test
    void should_say_what_is_missing_for_limits_when_too_little_was_read() throws Exception {
        List<Series> few = LookAtSeries.of(demo.view()).stream()
                .filter(s -> s.chart().isEmpty())
                .toList();
        String page = browser.page("/over-time");
        few.forEach(s -> assertThat(page)
                .contains(
                        s.points().isEmpty()
                                ? "Nothing of this was read yet"
                                : s.points().size() + " values so far, " + s.missing() + " more for limits"));
        browser.cookie("units", "inch");
        assertThat(browser.page("/over-time")).contains("inHg/min", "thou").doesNotContain("kPa/min");
    }
}
