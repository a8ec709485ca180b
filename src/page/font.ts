import { unzlibSync } from 'fflate';
import { FONT_DEFLATED } from '../ink/font.generated.ts';
import { FONT } from '../ink/svg-marks.ts';

/** The sheets' own font for the page too: it has every sign that a job may hold, wherever the page is opened. */
export function loadFont(): void {
  const bytes = Uint8Array.from(atob(FONT_DEFLATED), (sign) => sign.charCodeAt(0));
  const font = new FontFace(FONT, new Uint8Array(unzlibSync(bytes)));
  document.fonts.add(font);
}
