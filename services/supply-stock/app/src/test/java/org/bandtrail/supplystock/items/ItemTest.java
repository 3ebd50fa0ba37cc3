package org.bandtrail.supplystock.items;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ItemTest {
    private static final MaterialCode MESH = new MaterialCode("MESH-12");
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-04-01T08:00:00Z"));
    private static final Length WIDTH = Length.ofMm(300);

    @Test
    void mesh_needs_its_opening_because_animals_get_through() {
        assertThatExceptionOfType(ItemRefused.MeasuresDoNotFit.class)
                .isThrownBy(() -> Item.UNKNOWN.decide(register(MaterialKind.MESH, WIDTH, null, null)))
                .withMessageContaining("MESH-12")
                .withMessageContaining("opening");
        assertThat(Item.UNKNOWN.decide(register(MaterialKind.MESH, WIDTH, Length.ofMm(12), null)))
                .hasSize(1);
    }

    @Test
    void fasteners_need_a_pack_size_and_no_width() {
        assertThatExceptionOfType(ItemRefused.MeasuresDoNotFit.class)
                .isThrownBy(() -> Item.UNKNOWN.decide(register(MaterialKind.FASTENER, null, null, Pieces.ZERO)));
        assertThat(Item.UNKNOWN.decide(register(MaterialKind.FASTENER, null, null, Pieces.of(1))))
                .hasSize(1);
    }

    @Test
    void a_code_belongs_to_one_item() {
        Item known = registered();

        assertThatExceptionOfType(ItemRefused.ItemCodeTaken.class)
                .isThrownBy(() -> known.decide(register(MaterialKind.MESH, WIDTH, Length.ofMm(12), null)))
                .withMessage("Item code [MESH-12] belongs to Guard mesh. Choose another code.");
    }

    @Test
    void a_service_level_is_from_500_to_999_per_mille() {
        assertThat(registered().decide(supply(14, 999, "a new contract"))).hasSize(1);
        assertThatExceptionOfType(ItemRefused.SupplyOutOfRange.class)
                .isThrownBy(() -> registered().decide(supply(14, 1000, "a new contract")))
                .withMessageContaining("[1000]");
    }

    @Test
    void supply_figures_need_a_reason_and_a_known_item() {
        assertThatExceptionOfType(ItemRefused.SupplyOutOfRange.class)
                .isThrownBy(() -> registered().decide(supply(14, 950, " ")));
        assertThatExceptionOfType(ItemRefused.ItemUnknown.class)
                .isThrownBy(() -> Item.UNKNOWN.decide(supply(14, 950, "a new contract")));
    }

    @Test
    void a_correction_replaces_what_is_said_and_needs_a_reason() {
        ItemDescription better = described(MaterialKind.MESH, WIDTH, Length.ofMm(10), null);
        Item corrected = registered()
                .evolve(registered().decide(correct(better, "measured again")).getFirst());

        assertThat(corrected.description()).isEqualTo(better);
        assertThat(corrected.decide(correct(better, "again")))
                .as("the same once more changes nothing")
                .isEmpty();
        assertThatExceptionOfType(ItemRefused.MeasuresDoNotFit.class)
                .isThrownBy(() -> registered().decide(correct(better, " ")))
                .withMessageContaining("reason");
        assertThatExceptionOfType(ItemRefused.MeasuresDoNotFit.class)
                .isThrownBy(() -> registered()
                        .decide(correct(described(MaterialKind.MESH, WIDTH, null, null), "no opening known")));
    }

    @Test
    void a_correction_makes_no_other_kind_and_no_new_item() {
        ItemDescription fastener = described(MaterialKind.FASTENER, null, null, Pieces.of(100));

        assertThatExceptionOfType(ItemRefused.KindIsFixed.class)
                .isThrownBy(() -> registered().decide(correct(fastener, "a slip")))
                .withMessageContaining("[MESH]")
                .withMessageContaining("[FASTENER]");
        assertThatExceptionOfType(ItemRefused.ItemUnknown.class)
                .isThrownBy(() -> Item.UNKNOWN.decide(correct(fastener, "a slip")));
    }

    private static ItemCommand correct(ItemDescription description, String reason) {
        return new ItemCommand.Correct(MESH, description, reason, KEEPER, NOW);
    }

    private static ItemCommand supply(int days, int permille, String reason) {
        return new ItemCommand.SetSupply(MESH, new Supply(days, 3, permille), reason, KEEPER, NOW);
    }

    private static ItemCommand register(
            MaterialKind kind, @Nullable Length width, @Nullable Length opening, @Nullable Pieces pack) {
        return new ItemCommand.Register(MESH, described(kind, width, opening, pack), KEEPER, NOW);
    }

    private static ItemDescription described(
            MaterialKind kind, @Nullable Length width, @Nullable Length opening, @Nullable Pieces pack) {
        Length reel = kind == MaterialKind.FASTENER ? null : Length.ofMm(25_000);
        return new ItemDescription(kind, "Guard mesh", width, opening, reel, pack, Money.of(4200, "USD"));
    }

    private static Item registered() {
        return Item.UNKNOWN.evolve(Item.UNKNOWN
                .decide(register(MaterialKind.MESH, WIDTH, Length.ofMm(12), null))
                .getFirst());
    }
}
