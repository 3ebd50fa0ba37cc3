package org.bandtrail.supplystock.items;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;

/** Why a wish about an item is refused. */
public abstract sealed class ItemRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ItemRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** The code is taken. */
    public static final class ItemCodeTaken extends ItemRefused {
        private static final long serialVersionUID = 1L;

        ItemCodeTaken(MaterialCode material, String name) {
            super("Item code [%s] belongs to %s. Choose another code.".formatted(material, name));
        }

        @Override
        public int status() {
            return 409;
        }
    }

    /** The measures do not fit the kind. */
    public static final class MeasuresDoNotFit extends ItemRefused {
        private static final long serialVersionUID = 1L;

        MeasuresDoNotFit(MaterialCode material, String what) {
            super("Item [%s]: %s".formatted(material, what));
        }
    }

    /** Another kind is another item, because its reels or boxes are already counted in its unit. */
    public static final class KindIsFixed extends ItemRefused {
        private static final long serialVersionUID = 1L;

        KindIsFixed(MaterialCode material, MaterialKind is, MaterialKind wanted) {
            super("Item [%s] is of the kind [%s] and cannot become [%s]. Register another item for that."
                    .formatted(material, is, wanted));
        }
    }

    /** Nobody has registered the item. */
    public static final class ItemUnknown extends ItemRefused {
        private static final long serialVersionUID = 1L;

        ItemUnknown(MaterialCode material) {
            super("Item [%s] is not registered. Register it with its measures first, or check the code."
                    .formatted(material));
        }
    }

    /** A supply figure is out of range. */
    public static final class SupplyOutOfRange extends ItemRefused {
        private static final long serialVersionUID = 1L;

        SupplyOutOfRange(MaterialCode material, String what) {
            super("Item [%s]: %s".formatted(material, what));
        }
    }
}
