import { type LinesDesk, refuseLine } from './drawn-line.ts';

/** A value of a drawing with the code that says what it is, and its line in the file. */
export interface DxfGroup {
  readonly code: number;
  readonly value: string;
  readonly line: number;
}

/** What a drawing holds one of: its kind, and its values. */
export interface DxfEntity {
  readonly kind: string;
  readonly line: number;
  readonly groups: readonly DxfGroup[];
}

/** What of a drawing (DXF) lines are made from. */
export interface DxfParts {
  /** The number behind `$INSUNITS`; undefined where the drawing does not say. */
  readonly units: string | undefined;
  readonly entities: readonly DxfEntity[];
}

/**
 * The entities of a drawing: two lines for each value, a code and what it is of (AutoCAD DXF Reference, ASCII). Read here and not by a
 * package, as those that may be bundled wait for ever on what is cut off, or tell no line. Throws `Refusal` with its first mistake.
 */
export function dxfParts(source: string, desk: LinesDesk): DxfParts {
  const words = desk.words.lines;
  const groups = groupsOf(source, desk);
  const entities: DxfEntity[] = [];
  let [section, units, variable]: [string, string | undefined, string] = ['', undefined, ''];
  let own: DxfGroup[] | undefined;
  for (const [i, group] of groups.entries()) {
    const { code, value, line } = group;
    if (code === 0) own = undefined;
    if (code === 0 && value === 'SECTION')
      section = groups[i + 1]?.code === 2 ? (groups[i + 1]?.value ?? '') : '';
    else if (code === 0 && (value === 'ENDSEC' || value === 'EOF')) {
      if (value === 'EOF' && section !== '') refuseLine(desk, line, 'dxf', value, words.cutOff);
      section = '';
      if (value === 'EOF') return { units, entities };
    } else if (section === 'HEADER') {
      if (code === 9) variable = value;
      else if (variable === '$INSUNITS') units = value;
    } else if (section === 'ENTITIES' && code === 0) {
      own = [];
      entities.push({ kind: value, line, groups: own });
    } else own?.push(group);
  }
  const last = groups.at(-1);
  return refuseLine(desk, last?.line ?? 1, 'dxf', last?.value ?? '', words.cutOff);
}

function groupsOf(source: string, desk: LinesDesk): readonly DxfGroup[] {
  const words = desk.words.lines;
  if (/^AutoCAD Binary DXF/.test(source)) refuseLine(desk, 1, 'dxf', source.slice(0, 18), words.binary);
  const lines = source.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const groups: DxfGroup[] = [];
  for (let i = 0; i < lines.length; i += 2) {
    if (i + 1 === lines.length && lines[i]?.trim() === '') break;
    const [code = '', value = ''] = [lines[i]?.trim(), lines[i + 1]?.trim()];
    if (!/^-?\d{1,4}$/.test(code)) refuseLine(desk, i + 1, 'dxf', code, words.noCode);
    if (i + 1 === lines.length) break;
    groups.push({ code: Number(code), value, line: i + 2 });
    if (code === '0' && value === 'EOF') break;
  }
  return groups;
}
