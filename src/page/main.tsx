import { render } from 'preact';
import { ENGLISH } from '../words/english.ts';
import { App } from './app.tsx';
import { loadFont } from './font.ts';
import { answerAsks, checkerOf, counterOf } from './job/asker.ts';
import { cameToShow, heldUpBy, kept } from './job/keep.ts';
import { jobInFragment } from './job/link.ts';
import { pdfMakerOf } from './job/pdf-maker.ts';
import { startOf } from './job/start.ts';
import { WordsContext } from './words.ts';

function begin(): void {
  loadFont();
  const script = document.currentScript?.textContent ?? '';
  const aside = {
    check: checkerOf(script, ENGLISH),
    count: counterOf(script, ENGLISH),
    makePdf: pdfMakerOf(script, ENGLISH),
  };
  const room = document.getElementById('page');
  const { hash } = location;
  const linked = hash !== '' && heldUpBy(hash) ? 'held-up' : jobInFragment(hash);
  const start = startOf(linked, kept('job'), navigator.language, ENGLISH);
  const page = (
    <WordsContext.Provider value={ENGLISH}>
      <App start={start} aside={aside} />
    </WordsContext.Provider>
  );
  if (room) render(page, room);
  cameToShow();
  // Another link put into this tab's address is another job.
  addEventListener('hashchange', () => location.reload());
}

// The same script runs in a worker, where there is no page.
if (typeof document === 'undefined') answerAsks(ENGLISH);
else begin();
