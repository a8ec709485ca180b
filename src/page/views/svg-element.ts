import type { Said } from '../../measure/said.ts';

/** What was inked as SVG as an element, a picture with a name. */
export function svgElement(source: string, name: Said): SVGSVGElement {
  const svg = new DOMParser().parseFromString(source, 'image/svg+xml').documentElement;
  if (!(svg instanceof SVGSVGElement)) throw new Error('no SVG');
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', name);
  return svg;
}
