package org.bandtrail.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Minor units of ISO 4217; amounts of two currencies never mix. */
class MoneyTest {

    /** Source, from memory: ISO 4217 table A.1, minor units: USD 2, EUR 2, JPY 0, KWD 3, CLF 4. */
    @ParameterizedTest
    @CsvSource({
        "USD, 2, 1250, USD 12.50",
        "EUR, 2, 5, EUR 0.05",
        "JPY, 0, 1250, JPY 1250",
        "KWD, 3, 1250, KWD 1.250",
        "CLF, 4, 1250, CLF 0.1250",
        "USD, 2, -5, USD -0.05",
        "USD, 2, -123456, USD -1234.56",
        "USD, 2, 0, USD 0.00"
    })
    void amounts_have_the_digits_of_iso_4217(String currency, int digits, long minor, String text) {
        Money amount = Money.of(minor, currency);

        assertThat(amount.minorDigits()).isEqualTo(digits);
        assertThat(amount).hasToString(text);
    }

    @Test
    void amounts_of_one_currency_add_up() {
        assertThat(Money.of(1_250, "USD").minus(Money.of(1_251, "USD"))).isEqualTo(Money.of(-1, "USD"));
        assertThat(Money.zero("JPY").plus(Money.of(7, "JPY"))).isEqualTo(Money.of(7, "JPY"));
        assertThat(Money.of(7, "JPY")).isGreaterThan(Money.of(6, "JPY"));
    }

    @Test
    void amounts_of_two_currencies_do_not_mix_and_both_are_named() {
        Money dollars = Money.of(100, "USD");
        Money euros = Money.of(250, "EUR");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> dollars.plus(euros))
                .withMessage("[USD 1.00] and [EUR 2.50] are of two currencies. Convert one amount first.");
        assertThatIllegalArgumentException().isThrownBy(() -> dollars.minus(euros));
        assertThatIllegalArgumentException().isThrownBy(() -> dollars.compareTo(euros));
    }

    @ParameterizedTest
    @NullSource
    @ValueSource(strings = {"", "usd", "US", "QQQ", "dollars"})
    void a_code_that_is_no_currency_is_refused_and_named(String code) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Money.of(1, code))
                .withMessage("Currency [%s] is not an ISO 4217 code. Use three letters, such as USD or EUR.", code);
    }

    /** Gold and "no currency" have codes and no minor unit. */
    @ParameterizedTest
    @ValueSource(strings = {"XAU", "XXX"})
    void a_code_without_a_minor_unit_is_refused_and_named(String code) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Money.of(1, code))
                .withMessageContaining("[" + code + "]");
    }

    @Test
    void an_amount_beyond_the_range_is_refused_and_named() {
        Money most = Money.of(1_000_000_000_000_000L, "USD");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> most.plus(Money.of(1, "USD")))
                .withMessageContaining("[1000000000000001]");
        assertThatIllegalArgumentException().isThrownBy(() -> Money.of(Long.MIN_VALUE, "USD"));
    }
}
