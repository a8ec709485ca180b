import { render } from 'preact';
import { paperOfRegion } from '../job/regional-paper.ts';
import { App } from './app.tsx';
import { emptyJob } from './edit.ts';
import { loadFont } from './font.ts';

const region = new Intl.Locale(navigator.language).region ?? '';

loadFont();
const room = document.getElementById('page');
if (room) {
  const start = emptyJob(region === 'US' ? 'in' : 'mm', paperOfRegion(region).name);
  render(<App start={start} />, room);
}
