/** An element with its attributes, in their order; those that are undefined are left out. What stands in it is XML. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | undefined>>,
  content = '',
): string {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined ? [] : [` ${key}="${asText(value)}"`],
  );
  return `<${name}${written.join('')}>${content}</${name}>`;
}

/** Words as they stand in an element or an attribute. */
export function asText(words: string): string {
  return words
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
