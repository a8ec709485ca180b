import { type PDFContext, PDFName, type PDFRawStream } from 'pdf-lib';

/** What a stream holds: a text, or bytes. */
type Content = string | Uint8Array;

/** How the streams of one file are stored. */
export interface Store {
  /** A stream with these entries in its dictionary. */
  readonly stream: (content: Content, entries?: Parameters<PDFContext['stream']>[1]) => PDFRawStream;
  /** Whether a stream of this store holds just this content. */
  readonly holds: (stream: PDFRawStream, content: Content) => boolean;
  /** To be waited for before each sheet: what deflates is loaded when the file has become heavy. */
  readonly ready: () => Promise<void>;
}

/**
 * Streams are stored as they are until they are `LIGHT` bytes together; of the sheets from there on, all but the short ones are
 * deflated. What one end takes is light as it is, and to set about deflating it would take longer than to draw it.
 */
export function storeOf(context: PDFContext): Store {
  let weight = 0;
  let deflate: Deflate | undefined;
  return {
    stream(content, entries = {}) {
      const bytes = bytesOf(content);
      weight += bytes.length;
      if (deflate === undefined || bytes.length < SHORT) return context.stream(bytes, entries);
      return context.stream(deflate(bytes), { ...entries, Filter: 'FlateDecode' });
    },
    holds({ dict, contents }, content) {
      const bytes = bytesOf(content);
      const stored = deflate && dict.has(PDFName.of('Filter')) ? deflate(bytes) : bytes;
      return stored.length === contents.length && stored.every((byte, index) => byte === contents[index]);
    },
    async ready() {
      if (weight > LIGHT) deflate ??= await deflater();
    },
  };
}

/** Two sheets' worth or so. */
const LIGHT = 1 << 16;

/** A line of words or two. */
const SHORT = 1 << 10;

type Deflate = (bytes: Uint8Array) => Uint8Array;

/**
 * One deflate serves Node and the browser, so that both give the same bytes. The level is where a file of many sheets
 * costs least: a higher one saves a tenth of the bytes for twice the time.
 */
async function deflater(): Promise<Deflate> {
  const { zlibSync } = await import('./deflate.ts');
  return (bytes) => zlibSync(bytes, { level: 4 });
}

function bytesOf(content: Content): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
