package org.bandtrail.local.season;

/** Told by the loading of the season how far it is, so that a person sees that something happens. */
@FunctionalInterface
public interface Progress {

    /**
     * Something was done.
     *
     * @param what what is being loaded now, in a few words for a person, such as {@code 14 May: visits}
     * @param done how many steps of the whole are done, from 0 to {@code total}
     * @param total how many steps the whole has, at least 1 and the same at every call
     */
    void at(String what, int done, int total);
}
