import { type OGLRenderingContext, Program } from 'ogl';

/** What paints a piece: whole surfaces and lines, and the sides of a surface that shines through. */
export type Shading = Readonly<Record<'surface' | 'line' | 'nearSide' | 'farSide', Program>>;

/** Readies the programs of a graphics card; each is told its `colour`, the opacity last, before it paints. */
export function shadingOn(gl: OGLRenderingContext): Shading {
  const program = (isLit: boolean, cullFace: GLenum | false): Program => {
    const shinesThrough = cullFace !== false;
    const how = { cullFace, transparent: shinesThrough, depthWrite: !shinesThrough };
    return new Program(gl, {
      vertex: CORNERS,
      fragment: PIXELS,
      uniforms: { isLit: { value: isLit } },
      ...how,
    });
  };
  return {
    // What is made first is painted first: a line lies on the surface that it cuts.
    surface: program(true, false),
    line: program(false, false),
    nearSide: program(true, gl.BACK),
    farSide: program(true, gl.FRONT),
  };
}

// The tube stands along z, the library's upright axis is y.
const CORNERS = `#version 300 es
in vec3 position;
uniform mat4 viewMatrix, projectionMatrix;
out vec3 seen;
void main() {
  vec4 there = viewMatrix * vec4(position.xzy * vec3(1, 1, -1), 1);
  seen = there.xyz;
  gl_Position = projectionMatrix * there;
}`;

// The light stands at the eye, above its right shoulder, and shines on the tube's origin; some is all round. Light adds up as
// such, colours are given and shown by the curve of sRGB (IEC 61966-2-1), all of them lighter than where it begins as a line.
const PIXELS = `#version 300 es
precision highp float;
in vec3 seen;
uniform mat4 viewMatrix;
uniform vec4 colour;
uniform bool isLit;
out vec4 shown;
void main() {
  vec3 outwards = normalize(cross(dFdx(seen), dFdy(seen)));
  vec3 light = normalize(vec3(.4, .8, 1) - viewMatrix[3].xyz);
  float bright = (1.3 + 2.4 * max(dot(outwards, light), 0.)) / radians(180.);
  vec3 lit = bright * pow((colour.rgb + .055) / 1.055, vec3(2.4));
  shown = isLit ? vec4(1.055 * pow(lit, vec3(1. / 2.4)) - .055, colour.a) : colour;
}`;
