import type { Said } from '../../../measure/said.ts';
import { asWritten, say } from '../../said.ts';

/** The table of setbacks at equal stations, to lay out with tape and marker. */
export const ordinatesWords = {
  headline: (name: string, end: 'A' | 'B', isOpposite: boolean): Said =>
    say`${asWritten(name)}, end ${end}${isOpposite ? say`, opposite hand` : say``}`,
  setbacks: (units: 'mm' | 'in'): Said =>
    say`Setbacks in ${units === 'in' ? say`inches` : say`mm`} from the work point, positive towards the tube's body.`,
  roundMeans: say`"round" is the way round the outside from the spine, to the right with B up.`,
  columns: {
    station: say`station`,
    round: say`round`,
    outside: say`outside`,
    inside: say`inside`,
    square: say`square`,
    cut: say`cut to`,
  },
  misses: say`misses`,
  /** What is at a station that stands beside the equal ones. */
  marked: {
    fold: say`fold`,
    'long-point': say`long point`,
    'short-point': say`short point`,
    break: say`break`,
  },
};
