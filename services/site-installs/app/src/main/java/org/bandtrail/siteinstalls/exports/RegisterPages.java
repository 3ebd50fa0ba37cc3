package org.bandtrail.siteinstalls.exports;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import org.bandtrail.siteinstalls.trees.TreeChoice;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;

/** The trees of the register one after another by identity, read from it page by page as they are asked for. */
final class RegisterPages implements Iterator<TreeView> {
    private static final int PAGE = 2_000;
    private final Trees trees;
    private final TreeChoice choice;
    private final @Nullable String site;
    private final @Nullable String text;
    private List<TreeView> page;
    private int next;

    RegisterPages(Trees trees, TreeChoice choice, @Nullable String site, @Nullable String text) {
        this.trees = trees;
        this.choice = choice;
        this.site = site;
        this.text = text;
        this.page = trees.page(choice, site, text, null, PAGE);
    }

    @Override
    public boolean hasNext() {
        if (next == page.size() && page.size() == PAGE) {
            page = trees.page(choice, site, text, page.getLast().treeId(), PAGE);
            next = 0;
        }
        return next < page.size();
    }

    @Override
    public TreeView next() {
        if (!hasNext()) {
            throw new NoSuchElementException("There is no further tree");
        }
        return page.get(next++);
    }
}
