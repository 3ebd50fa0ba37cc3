package org.bandtrail.local.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The season's files while they are being written, one table per kind of fact, with numbers handed out in order. */
final class SeasonBook {
    final CsvTable reels = new CsvTable("reelId,materialCode,depotId,length,costMinor,currency,lot,by,happenedAt");
    final CsvTable batches = new CsvTable("batchId,materialCode,depotId,pieces,costMinor,currency,by,happenedAt");
    final CsvTable handouts = new CsvTable("kitId,depotId,crewId,personId,reels,batches,by,happenedAt");
    final CsvTable fits = new CsvTable("bandId,siteId,tag,crewId,personId,girth,height,tapeReel,tapeLength,"
            + "meshReel,meshLength,batch,pieces,deviation,happenedAt,sentAt");
    final CsvTable replacements =
            new CsvTable("visitId,tapeReel,tapeLength,meshReel,meshLength,oldMesh,batch,pieces,bagId");
    final CsvTable bycatch = new CsvTable("visitId,animal,alive,action,handedTo,supervisorTold");
    final CsvTable outcomes = new CsvTable("visitId,bandId,outcome,handedTo,handedAt,by,happenedAt");
    final CsvTable teardowns = new CsvTable("teardownId,bandId,crewId,personId,bagId,mesh,fasteners,happenedAt,sentAt");
    final CsvTable returns = new CsvTable("kitId,personId,depotId,reels,batches,by,happenedAt");
    final CsvTable loads = new CsvTable("loadId,bagIds,carrier,by,happenedAt");
    final CsvTable slips = new CsvTable("bandId,field,typed,meant,note");

    /** Every bag something was put into. */
    final Set<String> bagsFilled = new TreeSet<>();

    private final Map<String, CsvTable> visits = new TreeMap<>();
    private final Map<String, Integer> numbers = new TreeMap<>();

    /** The visits file of the month an instant falls in. */
    CsvTable visits(String happenedAt) {
        return visits.computeIfAbsent(
                happenedAt.substring(0, 7),
                month -> new CsvTable("visitId,bandId,crewId,personId,answer,saturation,"
                        + "instar-1,instar-2,instar-3,instar-4,adult,guard,happenedAt,sentAt"));
    }

    /** The next identity of a kind, for example {@code B-0001}. */
    String next(String prefix, int digits) {
        return spelt(prefix, digits, numbers.merge(prefix, 1, Integer::sum));
    }

    /** The last identity of a kind that was handed out. */
    String last(String prefix, int digits) {
        return spelt(prefix, digits, numbers.getOrDefault(prefix, 0));
    }

    private static String spelt(String prefix, int digits, int number) {
        return prefix + "-"
                + "0".repeat(Math.max(0, digits - Integer.toString(number).length())) + number;
    }

    /** Writes all files into a folder. */
    void write(Path folder) throws IOException {
        reels.write(folder.resolve("reels.csv"));
        batches.write(folder.resolve("batches.csv"));
        handouts.write(folder.resolve("handouts.csv"));
        fits.write(folder.resolve("fits.csv"));
        replacements.write(folder.resolve("replacements.csv"));
        bycatch.write(folder.resolve("bycatch.csv"));
        outcomes.write(folder.resolve("outcomes.csv"));
        teardowns.write(folder.resolve("teardowns.csv"));
        returns.write(folder.resolve("returns.csv"));
        loads.write(folder.resolve("loads.csv"));
        slips.write(folder.resolve("slips.csv"));
        for (Map.Entry<String, CsvTable> month : visits.entrySet()) {
            month.getValue().write(folder.resolve("visits-" + month.getKey() + ".csv"));
        }
    }
}
