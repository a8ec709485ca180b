import type { Mm } from '../../measure/units.ts';

interface TubeBodyProps {
  /** Where its sides and near edges are, from its axis. */
  readonly across: readonly Mm[];
  /** Half of what is shown across. */
  readonly half: Mm;
  readonly ghost: boolean;
  /** Where an end without a joint is: cut off square, or not told. */
  readonly end?: { readonly at: 'top' | 'bottom'; readonly cut: boolean } | undefined;
}

/** The tube between its joints, as high as there is room, in line with their pictures. */
export function TubeBody({ across, half, ghost, end }: TubeBodyProps) {
  const [left, right] = [Math.min(...across), Math.max(...across)];
  return (
    <svg
      class={`body${ghost ? ' is-ghost' : ''}${end ? ' is-end' : ''}`}
      viewBox={`${-half} 0 ${2 * half} 1`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <path class="axes" d="M0 0V1" />
      <path class="tube" d={across.map((x) => `M${x.toFixed(2)} 0V1`).join('')} />
      {end && (
        <path
          class={end.cut ? 'saddle' : 'open'}
          d={`M${left.toFixed(2)} ${end.at === 'top' ? 0 : 1}H${right.toFixed(2)}`}
        />
      )}
    </svg>
  );
}
