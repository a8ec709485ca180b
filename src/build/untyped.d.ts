/** What the build uses of two packages that come without types. */

declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      targetFormat: 'sfnt';
      noHinting: boolean;
      noLayoutClosure: boolean;
      keepFeatures: string[];
      preserveNameIds: number[];
      dropTables: string[];
    },
  ): Promise<Uint8Array>;
}

declare module 'fontkit' {
  export interface Box {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly bbox: Box;
    readonly characterSet: number[];
    glyphForCodePoint(codePoint: number): { id: number; advanceWidth: number; bbox: Box };
  }
  export function create(bytes: Uint8Array): Font;
}
