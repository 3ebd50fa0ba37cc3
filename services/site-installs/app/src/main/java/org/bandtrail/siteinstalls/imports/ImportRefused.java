package org.bandtrail.siteinstalls.imports;

import java.util.List;
import org.bandtrail.eventstore.Refusal;

/** Why a file cannot be looked at or a preview cannot be stored. */
public abstract sealed class ImportRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ImportRefused(String message) {
        super(message);
    }

    /** The file is no table. */
    public static final class FileUnreadable extends ImportRefused {
        private static final long serialVersionUID = 1L;

        FileUnreadable(int row, String why) {
            super("The file cannot be read at row %d: %s. Save it as CSV with column names in the first row."
                    .formatted(row, why));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "import-file-unreadable";
        }
    }

    /** The mapping names a column the file does not have. */
    public static final class ColumnMissing extends ImportRefused {
        private static final long serialVersionUID = 1L;

        ColumnMissing(String column, List<String> columns) {
            super("The file has no column [%s]. It has: %s.".formatted(column, String.join(", ", columns)));
        }

        @Override
        public int status() {
            return 422;
        }

        @Override
        public String problem() {
            return "import-column-missing";
        }
    }

    /** There is no such preview. */
    public static final class Unknown extends ImportRefused {
        private static final long serialVersionUID = 1L;

        Unknown(String importId) {
            super("No preview [%s] is kept. Look at the file once more.".formatted(importId));
        }

        @Override
        public int status() {
            return 404;
        }

        @Override
        public String problem() {
            return "import-unknown";
        }
    }

    /** Not all rows are ready and nobody agreed to leave some out. */
    public static final class NotAllReady extends ImportRefused {
        private static final long serialVersionUID = 1L;

        NotAllReady(String importId, int ready, int selected) {
            super("Of %d rows %d are ready. Mend the file of import %s, or store only those that are ready."
                    .formatted(selected, ready, importId));
        }

        @Override
        public String problem() {
            return "import-not-all-ready";
        }
    }

    /** The register is no longer what the preview was made against. */
    public static final class RegisterChanged extends ImportRefused {
        private static final long serialVersionUID = 1L;

        RegisterChanged(String importId, List<String> trees) {
            super("Since the preview %s somebody registered %s. Nothing was stored; look at the file once more."
                    .formatted(importId, String.join(", ", trees)));
        }

        @Override
        public String problem() {
            return "import-register-changed";
        }
    }

    /** The registers still take in what was stored a moment ago, so nothing can be compared with them. */
    public static final class RegisterBusy extends ImportRefused {
        private static final long serialVersionUID = 1L;

        RegisterBusy() {
            super("The registers still take in what was stored before. Nothing was stored; try again in a minute.");
        }

        @Override
        public int status() {
            return 503;
        }

        @Override
        public String problem() {
            return "import-register-busy";
        }
    }

    /** The preview was stored before. */
    public static final class StoredBefore extends ImportRefused {
        private static final long serialVersionUID = 1L;

        StoredBefore(String importId, int stored) {
            super("Import %s was stored before, %d trees. Nothing was stored twice.".formatted(importId, stored));
        }

        @Override
        public String problem() {
            return "import-stored-before";
        }
    }
}
