import type { Angle, Length } from '../measure/units.ts';

/** The angle turned the other way; its words with it. */
export function mirroredAngle(angle: Angle): Angle {
  return angle.rad === 0 ? angle : { ...angle, rad: -angle.rad, wrote: mirroredWords(angle.wrote) };
}

/** The length to the other side; its words with it. */
export function mirroredLength(length: Length): Length {
  return length.mm === 0 ? length : { ...length, mm: -length.mm, wrote: mirroredWords(length.wrote) };
}

/** `35deg` becomes `-35deg`, and back; `arc 9.7mm` becomes `arc -9.7mm`. What a mark is called has no sign. */
function mirroredWords(wrote: string): string {
  if (wrote === 'mark') return wrote;
  const [, name = '', size = ''] = /^((?:arc )?)(.*)$/s.exec(wrote) ?? [];
  const unsigned = size.replace(/^[-+\u2010-\u2015\u2212\uFE58\uFE63\uFF0B\uFF0D]\s*/, '');
  const negative = unsigned !== size && !/^[+\uFF0B]/.test(size);
  return `${name}${negative ? '' : '-'}${unsigned}`;
}
