import { expect } from 'vitest';
import { copeleaf, folderWith } from './run-command.ts';

/** One station as the command's JSON has it, mm and degrees. */
export interface Station {
  readonly phi: number;
  /** In its place, round a tube with faces: mm from the spine. */
  readonly s?: number;
  readonly contact: boolean;
  readonly outside: number;
  readonly inside?: number;
  readonly square?: number;
  readonly cut: number;
  readonly dihedral?: number;
}

export interface TubeTables {
  readonly name: string;
  readonly hand: string;
  readonly copies: number;
  readonly ends: Readonly<Record<string, { readonly stations: readonly Station[] }>>;
}

/** What the command writes as JSON, for these arguments and this job on standard input. */
export async function tubesOf(args: readonly string[], input = ''): Promise<readonly TubeTables[]> {
  const { code, out, err } = await copeleaf(folderWith(), ['ordinates', ...args, '--as', 'json'], { input });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const { units, tubes }: { units: string; tubes: TubeTables[] } = JSON.parse(out);
  expect(units).toBe('mm');
  return tubes;
}

export function stationsOf(tube: TubeTables | undefined, end: string): readonly Station[] {
  const stations = tube?.ends[end]?.stations;
  if (!stations) throw new Error(`no end ${end}`);
  return stations;
}
