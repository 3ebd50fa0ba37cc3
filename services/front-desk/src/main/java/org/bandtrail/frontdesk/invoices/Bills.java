package org.bandtrail.frontdesk.invoices;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Form;

/** What a person chose for each line: {@code GOODS|PO-7|1} for an order line, or a word for what else it is. */
final class Bills {
    private Bills() {}

    static List<Map<String, Object>> of(Form form) {
        List<Map<String, Object>> lines = new ArrayList<>();
        form.lines("lineId", "bills", "quantityInBooks")
                .forEach((number, parts) -> lines.add(choice(
                        parts.getOrDefault("lineId", ""),
                        parts.getOrDefault("bills", "GOODS"),
                        form.filled("priceOnly").contains(parts.getOrDefault("lineId", "")),
                        parts.getOrDefault("quantityInBooks", ""))));
        return lines;
    }

    static Map<String, Object> choice(String line, String bills, boolean priceOnly, String quantity) {
        String[] parts = bills.split("\\|", -1);
        Map<String, Object> choice = new LinkedHashMap<>();
        choice.put("line", line);
        choice.put("use", parts[0]);
        if (parts.length == 3) {
            choice.put("purchaseId", parts[1]);
            choice.put("purchaseLine", Form.whole("order line", parts[2]));
        }
        choice.put("priceOnly", priceOnly);
        if (!quantity.isEmpty()) {
            choice.put("quantity", quantity);
        }
        return choice;
    }
}
