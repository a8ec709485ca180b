import { zlibSync } from 'fflate';
import { type PDFContext, PDFName, type PDFRawStream } from 'pdf-lib';

type Entries = Parameters<PDFContext['stream']>[1];

/** Makes a stream of a text or of bytes, with these entries in its dictionary. */
export type Store = (content: string | Uint8Array, entries?: Entries) => PDFRawStream;

/**
 * How the streams of one file are stored: as they are until they are `LIGHT` bytes together, and deflated from there on but for
 * the short ones. What one
 * end takes is light as it is, and to set about deflating it would take longer than to draw it.
 */
export function storeOf(context: PDFContext): Store {
  let weight = 0;
  return (content, entries) => {
    const bytes = bytesOf(content);
    weight += bytes.length;
    if (weight <= LIGHT || bytes.length < SHORT) return context.stream(bytes, entries);
    return deflated(context, bytes, entries);
  };
}

/** Two sheets' worth or so. */
const LIGHT = 1 << 16;

/** A line of words or two. */
const SHORT = 1 << 10;

/**
 * A stream of this text or these bytes, deflated. One deflate serves Node and the browser, so that both give the same
 * bytes. The level is where a file of many sheets costs least: a higher one saves a tenth of the bytes for twice the time.
 */
export function deflated(
  context: PDFContext,
  content: string | Uint8Array,
  entries: Entries = {},
): PDFRawStream {
  return context.stream(squeezed(content), { ...entries, Filter: 'FlateDecode' });
}

/** Whether a stream holds just this content. */
export function holds({ dict, contents }: PDFRawStream, content: string | Uint8Array): boolean {
  const bytes = dict.has(PDFName.of('Filter')) ? squeezed(content) : bytesOf(content);
  return bytes.length === contents.length && bytes.every((byte, index) => byte === contents[index]);
}

function squeezed(content: string | Uint8Array): Uint8Array {
  return zlibSync(bytesOf(content), { level: LEVEL });
}

const LEVEL = 4;

function bytesOf(content: string | Uint8Array): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
