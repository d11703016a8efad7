package org.griplore.ingest.grid.packed;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * A packed file (ZIP) and its parts by name, in the order of its directory. Names of parts count
 * whatever their case, as in the Open Packaging Conventions (ECMA-376 part 2).
 */
public final class PackedFile implements Closeable {
  /** It is held in memory. */
  private static final long MOST_BYTES = 128L << 20;

  private final String name;
  private final ZipFile zip;
  private final Unpacking unpacking;
  private final Map<String, ZipArchiveEntry> parts = new LinkedHashMap<>();

  private PackedFile(String name, byte[] bytes) throws IOException {
    this.name = name;
    this.unpacking = new Unpacking(name, bytes.length);
    this.zip = ZipFile.builder().setByteArray(bytes).get();
    List<ZipArchiveEntry> entries = Collections.list(zip.getEntries());
    unpacking.parts(entries.size());
    entries.forEach(entry -> parts.putIfAbsent(key(entry.getName()), entry));
  }

  /**
   * Opens a packed file.
   *
   * @throws Refusal when its directory is damaged, or it holds too much
   */
  public static PackedFile open(Original original) {
    if (original.bytes() > MOST_BYTES) {
      throw new Refusal(
          "%s is a packed file of more than %d MB: unpack it first."
              .formatted(original.name(), MOST_BYTES >> 20),
          new Problem(original.name(), original.bytes() + " bytes", "a smaller packed file"));
    }
    return open(original.name(), original.readAll());
  }

  static PackedFile open(String name, byte[] bytes) {
    try {
      return new PackedFile(name, bytes);
    } catch (Refusal e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      throw new Refusal(
          name
              + " is a damaged or incomplete workbook or packed file: save it anew and add it again.",
          e,
          new Problem(name, "a damaged packed file", "a whole one"));
    }
  }

  private static String key(String part) {
    String slashed = part.replace('\\', '/');
    return (slashed.startsWith("/") ? slashed.substring(1) : slashed).toLowerCase(Locale.ROOT);
  }

  /** The file's name. */
  public String name() {
    return name;
  }

  /** The parts' names in lower case, with slashes. */
  public Set<String> parts() {
    return parts.keySet();
  }

  /** Whether it has a part. */
  public boolean has(String part) {
    return parts.containsKey(key(part));
  }

  ZipArchiveEntry entry(String part) {
    return parts.get(key(part));
  }

  /**
   * Opens a part; what is read of it counts against what the file may unpack to.
   *
   * @throws IOException when there is no such part, or it is packed in a way that is not known
   */
  public InputStream open(String part) throws IOException {
    ZipArchiveEntry entry = parts.get(key(part));
    if (entry == null) {
      throw new IOException("there is no part " + part);
    }
    return unpacking.counted(zip.getInputStream(entry));
  }

  /** Unpacks a part without keeping it, to see how much it is and whether it is whole. */
  public void unpack(String part) throws IOException {
    try (InputStream in = open(part)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
