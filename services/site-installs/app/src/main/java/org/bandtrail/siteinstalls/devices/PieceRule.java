package org.bandtrail.siteinstalls.devices;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.util.List;

/** How much of a part one device takes. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "by")
@JsonSubTypes({
    @JsonSubTypes.Type(value = PieceRule.ByGirth.class, name = "girth"),
    @JsonSubTypes.Type(value = PieceRule.Fixed.class, name = "count"),
    @JsonSubTypes.Type(value = PieceRule.ByPins.class, name = "pins")
})
public sealed interface PieceRule {
    /**
     * A length: girth times a factor, plus lengths of the policy, plus a fixed one; rounded up to the crew's tape.
     *
     * @param timesPermille factor of the girth in thousandths, 100 to 5000
     * @param plus lengths of the policy, each as often as it is named
     * @param plusMm a further length in mm, 0 to 5000
     */
    record ByGirth(int timesPermille, List<FromPolicy> plus, int plusMm) implements PieceRule {
        /** Refuses factors and lengths out of range, naming them. */
        public ByGirth {
            if (timesPermille < 100 || timesPermille > 5000) {
                throw new IllegalArgumentException(
                        "A factor of [%d] thousandths is not from 100 to 5000.".formatted(timesPermille));
            }
            if (plusMm < 0 || plusMm > 5000) {
                throw new IllegalArgumentException("A length of [%d] mm is not from 0 to 5000.".formatted(plusMm));
            }
            plus = List.copyOf(plus);
        }
    }

    /**
     * A count that does not depend on the trunk.
     *
     * @param pieces 1 to 100
     */
    record Fixed(int pieces) implements PieceRule {
        /** Refuses counts out of range, naming them. */
        public Fixed {
            if (pieces < 1 || pieces > 100) {
                throw new IllegalArgumentException("A count of [%d] is not from 1 to 100.".formatted(pieces));
            }
        }
    }

    /** Pins by the spacing and the minimum of the policy. */
    record ByPins() implements PieceRule {}
}
