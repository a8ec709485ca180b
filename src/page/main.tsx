import { render } from 'preact';
import { App } from './app.tsx';
import { loadFont } from './font.ts';
import { keptJob } from './keep.ts';
import { startOf } from './start.ts';

loadFont();
const room = document.getElementById('page');
if (room) render(<App start={startOf(location.hash, keptJob(), navigator.language)} />, room);
// Another link put into this tab's address is another job.
addEventListener('hashchange', () => location.reload());
