/** Hands a file to the browser's own way of saving. */
export function save(name: string, data: string | Uint8Array, type: string): void {
  const link = document.createElement('a');
  link.download = name;
  link.href = URL.createObjectURL(blobOf(data, type));
  link.click();
  forget(link.href);
}

/** Opens a PDF in a new tab, for the browser's own viewer to print. Gives whether the browser let it. */
export function openTab(data: Uint8Array): boolean {
  const address = URL.createObjectURL(blobOf(data, 'application/pdf'));
  const opened = window.open(address, '_blank');
  forget(address);
  return opened !== null;
}

function blobOf(data: string | Uint8Array, type: string): Blob {
  return new Blob([typeof data === 'string' ? data : new Uint8Array(data)], { type });
}

/** A tab or a download may still be reading it for a while. */
function forget(address: string): void {
  setTimeout(() => URL.revokeObjectURL(address), 600_000);
}
