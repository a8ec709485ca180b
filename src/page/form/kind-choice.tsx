import type { ComponentChildren } from 'preact';
import type { Said } from '../../measure/said.ts';
import type { HeaderKind, SectionKind } from './kinds.ts';

interface KindChoiceProps<Kind extends string> {
  /** What is chosen, for those who hear the form. */
  readonly legend: Said;
  readonly name: string;
  readonly kinds: readonly Kind[];
  readonly chosen: Kind;
  readonly labels: Readonly<Record<Kind, Said>>;
  readonly signs: Readonly<Record<Kind, ComponentChildren>>;
  readonly onChoose: (kind: Kind) => void;
}

/** A choice between shapes, each with a small drawing. */
export function KindChoice<Kind extends string>(props: KindChoiceProps<Kind>) {
  const { legend, name, kinds, chosen, labels, signs, onChoose } = props;
  return (
    <fieldset class="kinds">
      <legend>{legend}</legend>
      {kinds.map((kind) => (
        <label key={kind} class="kind">
          <input
            type="radio"
            name={name}
            value={kind}
            checked={kind === chosen}
            onChange={() => onChoose(kind)}
          />
          <svg viewBox="0 0 28 20" class="sign" aria-hidden="true" focusable="false">
            {signs[kind]}
          </svg>
          <span>{labels[kind]}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The tube comes from above; what it lands on lies below. */
const STEM = <path d="M10 0V7M18 0V7" />;

export const HEADER_SIGNS: Readonly<Record<HeaderKind, ComponentChildren>> = {
  round: (
    <>
      <circle cx="14" cy="13" r="6" />
      <path d="M10 0v8.5M18 0v8.5" />
    </>
  ),
  box: (
    <>
      <rect x="7" y="7" width="14" height="12" rx="2" />
      {STEM}
    </>
  ),
  plate: (
    <>
      <path d="M2 9H26M5 9l-3 4M10 9l-3 4M15 9l-3 4M20 9l-3 4M25 9l-3 4" />
      <path d="M10 0V9M18 0V9" />
    </>
  ),
  bend: (
    <>
      <path d="M3 19C3 11 9 8 14 8s11 3 11 11M9 19c0-3 2-5 5-5s5 2 5 5" />
      <path d="M10 0v8.8M18 0v8.8" />
    </>
  ),
  mitre: <path d="M8 1v14h18M15 1v7h11M8 15l7-7" />,
};

export const SECTION_SIGNS: Readonly<Record<SectionKind, ComponentChildren>> = {
  round: (
    <>
      <circle cx="14" cy="10" r="8.5" />
      <circle cx="14" cy="10" r="6.5" />
    </>
  ),
  rectangular: (
    <>
      <rect x="3" y="3.5" width="22" height="13" rx="2.5" />
      <rect x="5" y="5.5" width="18" height="9" rx="1" />
    </>
  ),
};

export const EDGE_SIGNS = {
  bevel: <path d="M3 2h22M3 9h14l8-7M17 9" />,
  square: <path d="M3 2h22v8H3M3 18h22" />,
};
