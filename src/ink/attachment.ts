import { type PDFContext, PDFHexString, type PDFRef } from 'pdf-lib';
import type { Said } from '../measure/said.ts';
import type { Store } from './stored.ts';

/**
 * A text kept inside the PDF as an embedded file (ISO 32000-1, 7.11.4), undated, so that the same job gives the same bytes.
 * Returns the reference to its file specification.
 */
export function attach(context: PDFContext, store: Store, name: string, text: string, about?: Said): PDFRef {
  const bytes = new TextEncoder().encode(text);
  const file = context.register(
    store.stream(bytes, {
      Type: 'EmbeddedFile',
      Subtype: 'text/plain',
      Params: { Size: bytes.length },
    }),
  );
  return context.register(
    context.obj({
      Type: 'Filespec',
      F: PDFHexString.fromText(name),
      UF: PDFHexString.fromText(name),
      EF: { F: file, UF: file },
      ...(about !== undefined && { Desc: PDFHexString.fromText(about) }),
      AFRelationship: 'Source',
    }),
  );
}
