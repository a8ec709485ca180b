import { PDFiumLibrary } from '@hyzyla/pdfium';

/** One printed sign and its em in points, as PDFium lays it on its page. */
export interface SignSize {
  readonly sign: string;
  readonly points: number;
}

const library = PDFiumLibrary.init();

type Call = (...numbers: number[]) => number;

/** Every sign of a file with the size it is printed in, by PDFium's own reading of its pages: no font or drawing of ours has a say. */
export async function typeSizesOf(pdf: Uint8Array): Promise<SignSize[][]> {
  const document = await (await library).loadDocument(pdf);
  try {
    return Array.from({ length: document.getPageCount() }, (_, i) => signsOf(document.getPage(i)));
  } finally {
    document.destroy();
  }
}

function signsOf(page: object): SignSize[] {
  const [module, pointer]: unknown[] = ['module', 'pageIdx'].map((key) => Reflect.get(page, key));
  if (typeof module !== 'object' || module === null || typeof pointer !== 'number')
    throw new Error('PDFium keeps its page elsewhere.');
  const call = (name: string): Call => {
    const found: unknown = Reflect.get(module, `_${name}`);
    if (typeof found !== 'function') throw new Error(`PDFium has no ${name}.`);
    return (...numbers) => Number(Reflect.apply(found, module, numbers));
  };
  // Its memory is another one whenever it has grown.
  const floatsAt = (place: number): Float32Array => {
    const floats: unknown = Reflect.get(module, 'HEAPF32');
    if (!(floats instanceof Float32Array)) throw new Error('PDFium has no memory.');
    return floats.subarray(place / 4, place / 4 + 2);
  };
  const text = call('FPDFText_LoadPage')(pointer);
  const matrix = call('malloc')(24);
  const signs = Array.from({ length: call('FPDFText_CountChars')(text) }, (_, i): SignSize[] => {
    // Spaces and ends of lines that PDFium adds between what is printed.
    if (call('FPDFText_IsGenerated')(text, i) === 1) return [];
    const size = call('FPDFText_GetFontSize')(text, i);
    call('FPDFText_GetMatrix')(text, i, matrix);
    const [a = 0, b = 0] = floatsAt(matrix);
    const sign = String.fromCodePoint(call('FPDFText_GetUnicode')(text, i));
    return sign.trim() === '' ? [] : [{ sign, points: size * Math.hypot(a, b) }];
  }).flat();
  call('free')(matrix);
  call('FPDFText_ClosePage')(text);
  return signs;
}
