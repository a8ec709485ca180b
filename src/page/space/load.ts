import { unzlibSync } from 'fflate';
import type { stageOn } from './scene.ts';

declare global {
  var copeleafSpace: { readonly stageOn: typeof stageOn } | undefined;
}

/**
 * Runs the part of the page that shows joints in space, the first time it is asked for. It lies deflated in the page, and the
 * content policy knows it by its hash. Undefined where it is not there.
 */
export function loadSpace(): typeof stageOn | undefined {
  const known = handedOver();
  if (known) return known.stageOn;
  const packed = document.getElementById('space-part')?.textContent?.trim();
  if (!packed) return undefined;
  const bytes = Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0));
  const script = document.createElement('script');
  script.textContent = new TextDecoder().decode(unzlibSync(bytes));
  document.head.append(script);
  return handedOver()?.stageOn;
}

function handedOver(): typeof globalThis.copeleafSpace {
  return globalThis.copeleafSpace;
}
