package org.bandtrail.supplystock.handouts;

import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holds.HeldId;
import org.bandtrail.supplystock.kitlists.Pick;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a kit. It may be handed out at once, or be reserved first.
 *
 * @param stage how far it has come
 * @param holder who has it, or is to have it, null while nobody knows the kit
 * @param held what is reserved for it
 * @param signed whether the holder signed
 */
public record Kit(Stage stage, @Nullable PersonId holder, List<HeldId> held, boolean signed) {
    /** A kit nobody has packed. */
    public static final Kit UNKNOWN = new Kit(Stage.UNKNOWN, null, List.of(), false);

    /** How far a kit has come. Whether it is settled follows from its reels and batches. */
    public enum Stage {
        /** Nobody has packed it. */
        UNKNOWN("not known"),
        /** Chosen and kept for it. */
        RESERVED("reserved"),
        /** Given free before it went out. */
        RELEASED("released"),
        /** With a person. */
        OUT("handed out");

        private final String word;

        Stage(String word) {
            this.word = word;
        }
    }

    /**
     * What a command makes happen.
     *
     * @throws KitRefused if the wish cannot be granted
     */
    public List<KitEvent> decide(KitCommand command) {
        return switch (command) {
            case KitCommand.Reserve wish -> reserve(wish);
            case KitCommand.Release wish -> {
                if (stage != Stage.RESERVED) {
                    throw new KitRefused.KitNotReserved(wish.kitId(), stage.word);
                }
                yield List.of(new KitEvent.Released(wish.kitId(), held, wish.reason(), wish.by(), wish.occurred()));
            }
            case KitCommand.HandOut wish -> handOut(wish);
            case KitCommand.Sign wish -> sign(wish);
        };
    }

    private List<KitEvent> reserve(KitCommand.Reserve wish) {
        if (stage != Stage.UNKNOWN) {
            throw new KitRefused.KitNumberTaken(wish.kitId(), stage.word);
        }
        if (wish.picks().isEmpty()) {
            throw new KitRefused.KitEmpty(wish.kitId());
        }
        return List.of(new KitEvent.Reserved(
                wish.kitId(),
                wish.depot(),
                wish.crew(),
                wish.person(),
                wish.trees(),
                wish.rule(),
                wish.picks(),
                wish.until(),
                wish.by(),
                wish.occurred()));
    }

    private List<KitEvent> handOut(KitCommand.HandOut wish) {
        if (stage == Stage.OUT) {
            throw new KitRefused.KitAlreadyHandedOut(wish.kitId());
        }
        if (stage == Stage.RELEASED) {
            throw new KitRefused.KitWasReleased(wish.kitId());
        }
        if (wish.lines().isEmpty()) {
            throw new KitRefused.KitEmpty(wish.kitId());
        }
        return List.of(new KitEvent.HandedOut(
                wish.kitId(), wish.depot(), wish.crew(), wish.person(), wish.lines(), wish.by(), wish.occurred()));
    }

    private List<KitEvent> sign(KitCommand.Sign wish) {
        if (stage != Stage.OUT || holder == null) {
            throw new KitRefused.KitNotOut(wish.kitId(), stage.word);
        }
        if (!holder.equals(wish.person())) {
            throw new KitRefused.SignedBySomebodyElse(wish.kitId(), wish.person(), holder);
        }
        return signed ? List.of() : List.of(new KitEvent.Signed(wish.kitId(), wish.person(), wish.occurred()));
    }

    /** The kit after an event. */
    public Kit evolve(KitEvent event) {
        return switch (event) {
            case KitEvent.Reserved reserved ->
                new Kit(
                        Stage.RESERVED,
                        reserved.person(),
                        reserved.picks().stream().map(Kit::held).toList(),
                        false);
            case KitEvent.Released unused -> new Kit(Stage.RELEASED, holder, List.of(), false);
            case KitEvent.HandedOut out -> new Kit(Stage.OUT, out.person(), List.of(), false);
            case KitEvent.Signed unused -> new Kit(stage, holder, held, true);
        };
    }

    private static HeldId held(Pick pick) {
        return pick.kind().onReels() ? HeldId.reel(new ReelId(pick.id())) : HeldId.batch(new BatchId(pick.id()));
    }
}
