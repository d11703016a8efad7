package org.griplore.ui.web.page;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Pages kept as they were laid out, by address, for as long as the archive's stamp stays the same.
 * The longest unused go first. Safe for many threads; two that ask for the same new page at once
 * both lay it out.
 */
public final class KeptPages {
  /** Characters kept: some hundred pages, at two bytes or fewer each. */
  private static final long ROOM = 16_000_000;

  private final LongSupplier stamp;
  private final long room;
  private final Map<String, String> pages = new LinkedHashMap<>(16, 0.75f, true);
  private long keptAt;
  private long length;

  public KeptPages(LongSupplier stamp) {
    this(stamp, ROOM);
  }

  public KeptPages(LongSupplier stamp, long room) {
    this.stamp = stamp;
    this.room = room;
  }

  /** The page at an address, laid out when it is not at hand. */
  public String at(String address, Supplier<String> layout) {
    long now = stamp.getAsLong();
    String known = known(address, now);
    if (known != null) {
      return known;
    }
    String page = layout.get();
    if (stamp.getAsLong() == now) {
      keep(address, now, page);
    }
    return page;
  }

  private synchronized String known(String address, long now) {
    if (now != keptAt) {
      pages.clear();
      length = 0;
      keptAt = now;
    }
    return pages.get(address);
  }

  private synchronized void keep(String address, long now, String page) {
    if (now != keptAt || page.length() > room / 4) {
      return;
    }
    String before = pages.put(address, page);
    length += page.length() - (before == null ? 0 : before.length());
    Iterator<String> oldest = pages.values().iterator();
    while (length > room) {
      length -= oldest.next().length();
      oldest.remove();
    }
  }
}
