/** A person's words as a message quotes them, cut where they are longer than anyone reads. */
export function clipped(text: string, most = 60): string {
  return text.length > most ? `${text.slice(0, most - 3).replace(/[\uD800-\uDBFF]$/, '')}...` : text;
}

/** Without the signs that break a line, turn its direction or steer a terminal: a message quotes what people paste. */
export function onOneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069]/gu, ' ');
}
