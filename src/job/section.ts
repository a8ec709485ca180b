import type { Said } from '../measure/said.ts';
import type { Length, Mm } from '../measure/units.ts';
import type { Section as Outline } from '../space/section.ts';
import type { Language } from '../words/language.ts';
import type { TubeSection } from './job.ts';
import type { Wall } from './preparation.ts';

/** All that the rest of the program asks of the tube's section, whatever its kind; the rest it asks of the outline. */
export interface TubeFacts {
  /** It in a language: `words` in the person's words and in the other unit, `brief` without that; `name` such a tube, `a rectangular tube`. */
  said(language: Language): { readonly words: Said; readonly brief: Said; readonly name: Said };
  /** Its own lengths by their keys, and the key under which these stand; without one they are the tube's. */
  readonly lengths: Readonly<Record<string, Length>>;
  readonly under?: string;
  /** How wide it is; in the unit of this what is computed for the tube is told. */
  readonly across: Length;
  /** How far it reaches from its axis, where that is as far to every side. */
  readonly radius?: Mm;
  /** Of a tube whose shape shows how it is turned: where its spine runs, and why no rotation is marked on it. */
  turned?(language: Language): { readonly spine: Said; readonly why: Said };
  /** Its outside in mm, which lines, leaves and pictures follow. */
  outline(): Outline;
}

/** What is read of a tube's size; without a section where it could not be read. */
export interface TubeSize {
  readonly section: TubeSection | undefined;
  readonly wall: Wall;
}
