import type { Fact } from './card/fact.ts';

/** A name that tells the drawings of two tubes of one name apart: drawings are stored once by their names. */
export function drawingKey(title: string, numbers: readonly number[], facts: readonly Fact[]): string {
  let sum = 0;
  const text = numbers.join(' ') + facts.map((fact) => fact.text).join(' ');
  for (let i = 0; i < text.length; i++) sum = (Math.imul(sum, 31) + text.charCodeAt(i)) >>> 0;
  return `${title} ${sum.toString(36)}`;
}
