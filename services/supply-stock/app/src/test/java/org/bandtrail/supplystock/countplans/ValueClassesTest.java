package org.bandtrail.supplystock.countplans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.bandtrail.supplystock.countplans.ValueClasses.Classified;
import org.bandtrail.supplystock.countplans.ValueClasses.ItemValue;
import org.bandtrail.testing.Histories;
import org.junit.jupiter.api.Test;

class ValueClassesTest {
    /**
     * Reckoned by hand. Ten items worth 50, 25, 10, 5, 4, 2.5, 1.5, 1, 0.6 and 0.4, together 100. Before them stand:
     *
     * <pre>
     * I0 0      A        I5 94     B (crosses 95: 96.5 with it)
     * I1 50     A        I6 96.5   C
     * I2 75     A (crosses 80: 85 with it)
     * I3 85     B        I7 98     C
     * I4 90     B        I8 99     C      I9 99.6   C
     * </pre>
     */
    @Test
    void ten_items_by_hand() {
        long[] values = {5_000, 2_500, 1_000, 500, 400, 250, 150, 100, 60, 40};
        List<ItemValue> items = new ArrayList<>();
        for (int i = values.length - 1; i >= 0; i--) {
            items.add(new ItemValue("I" + i, "USD", values[i]));
        }

        assertThat(ValueClasses.of(items, 800, 950))
                .extracting(each -> each.item().material() + " " + each.valueClass() + " " + each.upToPermille())
                .containsExactly(
                        "I0 A 500",
                        "I1 A 750",
                        "I2 A 850",
                        "I3 B 900",
                        "I4 B 940",
                        "I5 B 965",
                        "I6 C 980",
                        "I7 C 990",
                        "I8 C 996",
                        "I9 C 1000");
    }

    @Test
    void exactly_at_the_share_the_next_class_begins() {
        // 80 of 100 stand before the second, 95 before the third.
        assertThat(classes(item("X", 80), item("Y", 15), item("Z", 5))).containsExactly("X A", "Y B", "Z C");
    }

    @Test
    void an_item_of_no_value_is_class_c_even_when_nothing_has_any() {
        assertThat(classes(item("X", 0), item("Y", 0))).containsExactly("X C", "Y C");
        assertThat(classes(item("X", 1), item("Y", 0))).containsExactly("X A", "Y C");
    }

    @Test
    void currencies_are_classed_each_for_itself() {
        assertThat(classes(item("X", 1_000), new ItemValue("Y", "EUR", 1))).containsExactly("Y A", "X A");
    }

    @Test
    void shares_out_of_order_and_values_below_zero_are_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ValueClasses.of(List.of(), 950, 800))
                .withMessageContaining("950");
        assertThatIllegalArgumentException().isThrownBy(() -> item("X", -1)).withMessageContaining("-1");
    }

    @Test
    void a_dearer_item_is_never_in_a_worse_class_and_class_a_makes_up_its_share() {
        long checked = Histories.check(5_000, 80_15_05, 30, ValueClassesTest::anyItem, items -> {
            List<Classified> all = ValueClasses.of(items, 800, 950);
            assertThat(all).hasSize(items.size());
            long whole = items.stream().mapToLong(ItemValue::valueMinor).sum();
            long inA = 0;
            for (int i = 0; i < all.size(); i++) {
                inA += all.get(i).valueClass() == ValueClass.A
                        ? all.get(i).item().valueMinor()
                        : 0;
                assertThat(i == 0
                                || all.get(i - 1)
                                                .valueClass()
                                                .compareTo(all.get(i).valueClass())
                                        <= 0)
                        .isTrue();
            }
            assertThat(inA * 1000).isGreaterThanOrEqualTo(800 * whole);
        });
        assertThat(checked).isGreaterThan(5_000);
    }

    private static ItemValue anyItem(RandomGenerator random) {
        return item("I" + random.nextInt(1_000_000), random.nextInt(4) == 0 ? 0 : random.nextLong(1, 1_000_000));
    }

    private static ItemValue item(String material, long minor) {
        return new ItemValue(material, "USD", minor);
    }

    private static List<String> classes(ItemValue... items) {
        return ValueClasses.of(List.of(items), 800, 950).stream()
                .map(each -> each.item().material() + " " + each.valueClass())
                .toList();
    }
}
