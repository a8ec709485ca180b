import { render } from 'preact';
import { App } from './app.tsx';
import { loadFont } from './font.ts';
import { answerAsks, checkerOf } from './job/checker.ts';
import { keptJob } from './job/keep.ts';
import { startOf } from './job/start.ts';

function begin(): void {
  loadFont();
  const checker = checkerOf(document.currentScript?.textContent ?? '');
  const room = document.getElementById('page');
  const start = startOf(location.hash, keptJob(), navigator.language);
  if (room) render(<App start={start} checker={checker} />, room);
  // Another link put into this tab's address is another job.
  addEventListener('hashchange', () => location.reload());
}

// The same script runs in a worker, where there is no page.
if (typeof document === 'undefined') answerAsks();
else begin();
