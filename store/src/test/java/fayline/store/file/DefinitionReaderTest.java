package fayline.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.units.Length;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.Recipe;
import fayline.method.cure.CureState;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class DefinitionReaderTest {
    @Test
    void should_have_no_problem_when_the_folder_is_correct() {
        DefinitionRead read = DefinitionReader.read(Teasel.folder());

        assertThat(read.problems()).isEmpty();
        assertThat(read.definition()).isPresent();
    }

    @Test
    void should_hold_what_is_written_when_the_folder_is_correct() {
        Definition d = DefinitionReader.read(Teasel.folder()).definition().orElseThrow();

        assertThat(d.facts().clock()).contains(Instant.parse("2026-03-03T07:30:00Z"));
        assertThat(d.facts().serial()).isEqualTo("001");
        assertThat(d.shop().clothWaste().percent()).isEqualTo(15);
        assertThat(d.shop().people().get("bo").hours()).hasSize(2);
        assertThat(d.systems().get("er-slow").cure().points()).hasSize(9);
        assertThat(d.systems().get("er-slow").useRateKgPerS()).isEqualTo(0.025 / 60);
        assertThat(d.laminates().get("seat-skin").plies()).hasSize(5);
        assertThat(d.laminates().get("seat-skin").plies().get(2).core()).isTrue();
        assertThat(d.laminates().get("thin").fibreMassFraction().ratio()).isEqualTo(0.5);
        Part seat = d.parts().get("seat");
        assertThat(seat.target().orElseThrow().asTyped()).isEqualTo("2.4 kg");
        assertThat(seat.sizes()).containsEntry("pleats", 6.0).containsEntry("depth", 0.12);
        assertThat(seat.zones().get(1).area().squareMillimetres())
                .isEqualTo(48_000, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(seat.zones().get(1).edge()).isEqualTo(Length.ofMillimetres(1040));
        Recipe skin = d.recipes().get("skin-staged");
        assertThat(skin.steps().get(3).after().get(0).step()).isEqualTo("bag-1");
        assertThat(skin.steps().get(2).alone().orElseThrow().until()).contains(CureState.HANDLING);
        assertThat(skin.steps().get(1).after().get(0).miss()).isPresent();
        assertThat(skin.steps().get(4).when()).isEqualTo("inner");
        assertThat(d.climate().readings()).hasSize(2);
    }
}
