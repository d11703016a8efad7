package org.griplore.ingest.grid.packed;

import java.nio.charset.StandardCharsets;
import org.apache.james.mime4j.codec.DecoderUtil;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.NameValuePair;
import org.apache.james.mime4j.stream.RawBody;
import org.apache.james.mime4j.stream.RawField;
import org.apache.james.mime4j.stream.RawFieldParser;
import org.apache.james.mime4j.util.MimeParameterMapping;

/** The file name that a header field of a letter's part gives (RFC 2183, RFC 2231). */
final class FileNameField {
  private FileNameField() {}

  /** The last part of the name, as no name leads into a folder; null where there is none. */
  static String of(Field field) {
    RawField raw =
        field instanceof RawField known ? known : new RawField(field.getName(), field.getBody());
    RawBody body = RawFieldParser.DEFAULT.parseRawBody(raw);
    MimeParameterMapping parameters = new MimeParameterMapping();
    for (NameValuePair pair : body.getParams()) {
      if (pair.getValue() != null) {
        parameters.addParameter(pair.getName(), pair.getValue());
      }
    }
    String name = parameters.get("filename");
    name = name == null ? parameters.get("name") : name;
    if (name == null || name.isBlank()) {
      return null;
    }
    String decoded = DecoderUtil.decodeEncodedWords(name, StandardCharsets.UTF_8);
    String last =
        decoded.substring(Math.max(decoded.lastIndexOf('/'), decoded.lastIndexOf('\\')) + 1);
    return last.isBlank() ? null : last.strip();
  }
}
