import type { Said } from '../../measure/said.ts';
import { useWords } from '../words.ts';
import type { WayName } from './measure.ts';

interface WayChoiceProps {
  /** What is asked, for those who hear the form. */
  readonly label: Said;
  readonly ways: readonly WayName[];
  readonly chosen: WayName;
  readonly onChoose: (way: string) => void;
}

/** How a value was measured. */
export function WayChoice({ label, ways, chosen, onChoose }: WayChoiceProps) {
  const words = useWords().page.measures.ways;
  return (
    <select
      class="way"
      aria-label={label}
      value={chosen}
      onChange={(event) => onChoose(event.currentTarget.value)}
    >
      {ways.map((way) => (
        <option key={way} value={way}>
          {words[way]}
        </option>
      ))}
    </select>
  );
}
