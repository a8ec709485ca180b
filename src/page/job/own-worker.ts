/** A worker that runs the page's own script; undefined where the browser keeps a page from having one. */
export function ownWorker(script: string): Worker | undefined {
  try {
    return new Worker(URL.createObjectURL(new Blob([script], { type: 'text/javascript' })));
  } catch {
    return undefined;
  }
}
