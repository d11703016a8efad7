package org.griplore.ingest.grid.packed;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.james.mime4j.MimeException;
import org.apache.james.mime4j.stream.BodyDescriptor;
import org.apache.james.mime4j.stream.EntityState;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.MimeConfig;
import org.apache.james.mime4j.stream.MimeTokenStream;
import org.griplore.ingest.grid.Content;
import org.griplore.store.archive.Original;
import org.griplore.store.vocabulary.Problem;
import org.griplore.store.vocabulary.Refusal;

/**
 * Reads a letter (EML: RFC 5322, RFC 2045) or a page saved as one (MHTML: RFC 2557), through Apache
 * James Mime4j: its body and its attachments are documents of their own. Of bodies that say the
 * same in several forms, the page counts where it holds a table, else the plain text. Pictures,
 * styles and signatures are passed over; nothing that a letter refers to is fetched.
 */
public final class LetterReader {
  /** What marks the origin of a letter's body. */
  private static final String BODY = "body";

  private static final long MOST_BYTES = 128L << 20;
  private static final int DEEPEST = 20;
  private static final int MOST_PARTS = 500;
  private static final MimeConfig CONFIG =
      MimeConfig.custom()
          .setMaxLineLen(-1)
          .setMaxHeaderCount(1000)
          .setMaxHeaderLen(100_000)
          .build();

  private static final Set<String> PASSED_OVER =
      Set.of(
          "text/css",
          "text/javascript",
          "text/calendar",
          "text/x-vcard",
          "text/vcard",
          "application/javascript",
          "application/pgp-signature",
          "application/pkcs7-signature",
          "application/x-pkcs7-signature",
          "application/ms-tnef");

  private final Original letter;
  private final List<Part> parts = new ArrayList<>();
  private final List<String> passedOver = new ArrayList<>();
  private final List<Integer> alternatives = new ArrayList<>();
  private int groups;
  private String fileName;

  /**
   * A part that holds a document.
   *
   * @param group the number of the group of alternatives it belongs to; 0 for none
   * @param file the file name it is given; null for a body
   */
  private record Part(String type, int group, String file, byte[] bytes) {
    boolean isPage() {
      return type.equals("text/html");
    }

    boolean holdsTable() {
      return new String(bytes, StandardCharsets.ISO_8859_1)
          .toLowerCase(Locale.ROOT)
          .contains("<table");
    }

    boolean isBlank() {
      return new String(bytes, StandardCharsets.UTF_8).isBlank();
    }
  }

  private LetterReader(Original letter) {
    this.letter = letter;
  }

  /**
   * The documents of a letter.
   *
   * @throws Refusal when it is damaged, encrypted, nested too deep, or holds nothing to read
   */
  public static Content.Members read(Original letter) throws IOException {
    if (letter.bytes() > MOST_BYTES) {
      throw refusal(letter, "more than " + (MOST_BYTES >> 20) + " MB: save its table as a file");
    }
    LetterReader reader = new LetterReader(letter);
    try (InputStream in = letter.content().open()) {
      MimeTokenStream mime = new MimeTokenStream(CONFIG);
      mime.parse(in);
      reader.tokens(mime);
    } catch (MimeException e) {
      throw refusal(letter, "damaged or incomplete: save it anew");
    }
    return reader.members();
  }

  /** Whether a member is the body of a letter, and not a file sent with it. */
  public static boolean isBody(Original letter, Original member) {
    return member.origin().equals(letter.origin() + "!" + BODY);
  }

  private static Refusal refusal(Original letter, String what) {
    return new Refusal(
        letter.name() + " is a letter that is " + what + ".",
        new Problem(letter.name(), what, "a letter with a table or notes"));
  }

  private void tokens(MimeTokenStream mime) throws IOException, MimeException {
    int depth = 0;
    for (EntityState state = mime.getState();
        state != EntityState.T_END_OF_STREAM;
        state = mime.next()) {
      switch (state) {
        case T_START_MESSAGE, T_START_BODYPART, T_START_MULTIPART -> {
          if (++depth > 3 * DEEPEST) {
            throw refusal(letter, "nested too deep");
          }
          fileName = state == EntityState.T_START_MULTIPART ? fileName : null;
          boolean choice =
              state == EntityState.T_START_MULTIPART
                  && mime.getBodyDescriptor().getMimeType().equals("multipart/alternative");
          int outer = alternatives.isEmpty() ? 0 : alternatives.get(alternatives.size() - 1);
          alternatives.add(choice && outer == 0 ? ++groups : outer);
        }
        case T_END_MESSAGE, T_END_BODYPART, T_END_MULTIPART -> {
          depth--;
          alternatives.remove(alternatives.size() - 1);
        }
        case T_FIELD -> field(mime.getField());
        case T_BODY -> body(mime);
        default -> {}
      }
    }
  }

  private void field(Field field) {
    String name = field.getName().toLowerCase(Locale.ROOT);
    if (name.equals("content-disposition") || name.equals("content-type")) {
      String file = FileNameField.of(field);
      fileName = file == null || name.equals("content-type") && fileName != null ? fileName : file;
    }
  }

  private void body(MimeTokenStream mime) throws IOException {
    BodyDescriptor descriptor = mime.getBodyDescriptor();
    String type = descriptor.getMimeType().toLowerCase(Locale.ROOT);
    String file = fileName;
    fileName = null;
    if (type.contains("pkcs7-mime") || type.equals("application/pgp-encrypted")) {
      throw refusal(letter, "encrypted: save its table as a file");
    }
    boolean side = file != null && SideFile.is(file);
    if (PASSED_OVER.contains(type) || type.matches("(image|audio|video|font)/.*") || side) {
      passedOver.add(file == null ? type : file);
      return;
    }
    if (parts.size() >= MOST_PARTS) {
      throw refusal(letter, "of more than " + MOST_PARTS + " parts");
    }
    byte[] bytes = mime.getDecodedInputStream().readAllBytes();
    boolean text = type.equals("text/plain") || type.equals("text/html");
    boolean attached = file != null && !(text && file.isBlank());
    if (!attached && text) {
      bytes = inUtf8(bytes, descriptor.getCharset());
    }
    int group = alternatives.isEmpty() ? 0 : alternatives.get(alternatives.size() - 1);
    Part part = new Part(type, attached ? 0 : group, attached ? file : null, bytes);
    if (bytes.length > 0 && (attached || !part.isBlank())) {
      parts.add(part);
    }
  }

  private static byte[] inUtf8(byte[] bytes, String charset) {
    try {
      boolean assumed = charset == null || charset.equalsIgnoreCase("us-ascii");
      return assumed || !Charset.isSupported(charset)
          ? bytes
          : new String(bytes, Charset.forName(charset)).getBytes(StandardCharsets.UTF_8);
    } catch (IllegalCharsetNameException e) {
      return bytes;
    }
  }

  private Content.Members members() {
    List<Part> chosen = new ArrayList<>();
    Set<Integer> done = new HashSet<>();
    for (Part part : parts) {
      if (part.group() == 0) {
        chosen.add(part);
      } else if (done.add(part.group())) {
        chosen.add(best(part.group()));
      }
    }
    List<Original> members = new ArrayList<>();
    int bodies = 0;
    for (int i = 0; i < chosen.size(); i++) {
      Part part = chosen.get(i);
      boolean body = part.file() == null;
      bodies += body ? 1 : 0;
      String path = body ? BODY + (bodies > 1 ? bodies : "") : (i + 1) + "/" + part.file();
      String name = body ? letter.name() : part.file();
      members.add(
          Original.of(
              letter.origin() + "!" + path, name, () -> new ByteArrayInputStream(part.bytes())));
    }
    if (members.isEmpty()) {
      throw refusal(letter, "without a text or a document");
    }
    return new Content.Members("letter", members, passedOver, List.of());
  }

  private Part best(int group) {
    List<Part> same = parts.stream().filter(part -> part.group() == group).toList();
    return same.stream()
        .filter(part -> part.isPage() && part.holdsTable())
        .findFirst()
        .or(() -> same.stream().filter(part -> part.type().equals("text/plain")).findFirst())
        .orElse(same.get(0));
  }
}
