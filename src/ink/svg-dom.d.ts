/** What is used of a package that comes without types: a DOM where there is no browser. */
declare module 'svgdom' {
  export function createSVGWindow(): Window;
}
