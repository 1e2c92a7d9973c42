package org.drillwright.print.pose;

import java.lang.ref.SoftReference;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** What was made lately, as long as there is room for it; several may ask at once. */
public final class RecentCache<K, V> {

    private final Map<K, SoftReference<V>> kept;

    /** @param most how many are kept; the oldest go first */
    public RecentCache(int most) {
        this.kept = Collections.synchronizedMap(new LinkedHashMap<>() {

            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, SoftReference<V>> eldest) {
                return size() > most;
            }
        });
    }

    /** What was made for a key, or is made now. */
    public V of(K key, Supplier<V> made) {
        return Optional.ofNullable(kept.get(key))
                .flatMap(soft -> Optional.ofNullable(soft.get()))
                .orElseGet(() -> {
                    V now = made.get();
                    kept.put(key, new SoftReference<>(now));
                    return now;
                });
    }
}
