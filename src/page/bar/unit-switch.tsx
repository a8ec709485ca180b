import { useState } from 'preact/hooks';
import { readLength } from '../../measure/length.ts';
import type { Length, Units } from '../../measure/units.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { type BareLength, bareLengths, unitWritten } from '../form/bare.ts';
import type { DocPath, Value } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Dialog } from './dialog.tsx';

/** In which unit numbers are that are written without one; where some are, what is to become of them is asked. */
export function UnitSwitch() {
  const { doc, units, write } = useBench();
  const words = useWords().page.bar.units;
  const [asked, ask] = useState<Units | undefined>(undefined);
  const take = (unit: Units): void => {
    if (unit === units) return;
    if (bareLengths(doc).length > 0) ask(unit);
    else write([[['units'], unit]]);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset can't be laid out in a row with its legend in every browser.
    <div class="units" role="group" aria-label={words.name}>
      {(['mm', 'in'] as const).map((unit) => (
        <Action key={unit} words={words[unit]} onAct={() => take(unit)} pressed={unit === units} />
      ))}
      {asked && <UnitDialog to={asked} onClose={() => ask(undefined)} />}
    </div>
  );
}

/** What the sizes are after the switch, either way. */
function UnitDialog({ to, onClose }: { readonly to: Units; readonly onClose: () => void }) {
  const { doc, units, write } = useBench();
  const words = useWords().page.bar.units;
  const bare = bareLengths(doc);
  const [first] = bare;
  const take = (values: readonly (readonly [DocPath, Value])[]): void => {
    write([...values, [['units'], to]]);
    onClose();
  };
  if (!first) return null;
  const wrote = asWritten(first.text);
  const [stays, becomes] = [lengthIn(first, units), lengthIn(first, to)];
  return (
    <Dialog title={words.title[to]} onClose={onClose}>
      <p>
        {words.bare(
          bare.length,
          asWritten(
            bare
              .slice(0, 3)
              .map(({ text }) => text)
              .join(', '),
          ),
        )}
      </p>
      <Action
        words={words.keep}
        onAct={() => take(bare.map((each) => [each.path, unitWritten(each, units)]))}
        kind="main"
      />
      {stays && <p class="aside">{words.kept(wrote, stays)}</p>}
      <Action words={words.reread[to]} onAct={() => take([])} />
      {becomes && <p class="aside">{words.becomes(wrote, becomes)}</p>}
    </Dialog>
  );
}

/** A number in this unit; undefined where it is none. */
function lengthIn(bare: BareLength, unit: Units): Length | undefined {
  const [size = ''] = unitWritten(bare, unit).split(/[x×*]/u);
  const reading = readLength(size, unit);
  return reading.ok ? reading.value : undefined;
}
