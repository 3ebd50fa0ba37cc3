package org.bandtrail.eventstore;

import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.axonframework.common.Registration;
import org.axonframework.common.caching.Cache;
import org.jspecify.annotations.Nullable;

/**
 * Keeps hot aggregates in memory, at most so many. Axon removes an entry when its work rolls back, which also heals an
 * entry that another replica has overtaken: the append fails on the sequence number, the work is rolled back and tried
 * again from the store.
 */
final class AggregateCache implements Cache {
    private final com.github.benmanes.caffeine.cache.Cache<Object, Object> entries;

    AggregateCache(long maximumEntries) {
        entries = Caffeine.newBuilder().maximumSize(maximumEntries).build();
    }

    @Override
    @SuppressWarnings("unchecked")
    public <K, V> @Nullable V get(K key) {
        return (V) entries.getIfPresent(key);
    }

    /** Keeps nothing under no key: an aggregate to which nothing happened yet has no identity. */
    @Override
    public void put(@Nullable Object key, Object value) {
        if (key != null) {
            entries.put(key, value);
        }
    }

    @Override
    public boolean putIfAbsent(Object key, Object value) {
        return entries.asMap().putIfAbsent(key, value) == null;
    }

    @Override
    @SuppressWarnings("unchecked")
    public <T> T computeIfAbsent(Object key, Supplier<T> value) {
        return (T) entries.get(key, unused -> value.get());
    }

    @Override
    public boolean remove(@Nullable Object key) {
        return key != null && entries.asMap().remove(key) != null;
    }

    @Override
    public void removeAll() {
        entries.invalidateAll();
    }

    @Override
    public boolean containsKey(Object key) {
        return entries.asMap().containsKey(key);
    }

    /** Refuses: nothing in the house listens to the cache, and a listener that is never called would be a trap. */
    @Override
    public Registration registerCacheEntryListener(EntryListener listener) {
        throw new UnsupportedOperationException("The aggregate cache has no listeners; listen to the events instead.");
    }

    @Override
    @SuppressWarnings("unchecked")
    public <V> void computeIfPresent(Object key, UnaryOperator<V> update) {
        entries.asMap().computeIfPresent(key, (unused, value) -> update.apply((V) value));
    }
}
