import type { TubeSolution } from '../saddle/solve.ts';

export function SpaceView(_: { readonly solution: TubeSolution }) {
  return null;
}
