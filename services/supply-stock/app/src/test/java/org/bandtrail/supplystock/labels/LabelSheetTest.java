package org.bandtrail.supplystock.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LabelSheetTest {

    @ParameterizedTest
    @EnumSource(LabelSheet.class)
    void every_label_lies_on_the_page_and_none_on_another(LabelSheet sheet) {
        for (int one = 0; one < sheet.perPage(); one++) {
            LabelSheet.Spot spot = sheet.spot(one, 1);
            assertThat(spot.page()).isZero();
            assertThat(spot.left()).isNotNegative();
            assertThat(spot.left() + sheet.labelWidth()).isLessThanOrEqualTo(sheet.pageWidth());
            assertThat(spot.top()).isNotNegative();
            assertThat(spot.top() + sheet.labelHeight()).isLessThanOrEqualTo(sheet.pageHeight());
            for (int other = 0; other < one; other++) {
                LabelSheet.Spot before = sheet.spot(other, 1);
                boolean beside = spot.left() >= before.left() + sheet.labelWidth()
                        || before.left() >= spot.left() + sheet.labelWidth();
                boolean below = spot.top() >= before.top() + sheet.labelHeight();
                assertThat(beside || below).as(one + " and " + other).isTrue();
            }
        }
        assertThat(sheet.spot(sheet.perPage(), 1).page()).isEqualTo(1);
    }

    /** 3 x 2.625 in and two gaps of 1/8 in leave 3/16 in on each side of 8.5 in: 4.7625 mm. Reckoned by hand. */
    @Test
    void a_letter_sheet_of_thirty_begins_three_sixteenths_of_an_inch_from_the_edge() {
        assertThat(LabelSheet.LETTER_3X10.spot(0, 1)).isEqualTo(new LabelSheet.Spot(0, 4_762, 12_700));
        assertThat(LabelSheet.LETTER_3X10.perPage()).isEqualTo(30);
    }

    @Test
    void a_partly_used_sheet_goes_on_where_it_was_left() {
        LabelSheet sheet = LabelSheet.A4_3X8;
        assertThat(sheet.spot(0, 5)).isEqualTo(sheet.spot(4, 1));
        assertThat(sheet.spot(20, 5)).isEqualTo(new LabelSheet.Spot(1, 0, 500));
        assertThatThrownBy(() -> sheet.spot(0, 25)).hasMessageContaining("[25]").hasMessageContaining("1 to 24");
        assertThatThrownBy(() -> LabelSheet.of("a5"))
                .hasMessageContaining("[a5]")
                .hasMessageContaining("letter-3x10");
    }
}
