/** Where the programs below take their values. */
export type Uniforms = Readonly<Record<'view' | 'lens' | 'colour' | 'isLit', WebGLUniformLocation | null>>;

/** Readies a graphics card for a white ground and a buffer of places, three numbers each. Throws where it can't. */
export function prepared(gl: WebGL2RenderingContext): Uniforms {
  const program = gl.createProgram();
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, CORNERS],
    [gl.FRAGMENT_SHADER, PIXELS],
  ] as const) {
    const shader = gl.createShader(kind);
    if (!shader) throw new Error('no shader');
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.bindAttribLocation(program, 0, 'place');
  gl.linkProgram(program);
  if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(program) ?? '');
  gl.useProgram(program);
  gl.bindBuffer(gl.ARRAY_BUFFER, gl.createBuffer());
  gl.enableVertexAttribArray(0);
  gl.vertexAttribPointer(0, 3, gl.FLOAT, false, 0, 0);
  gl.enable(gl.DEPTH_TEST);
  gl.depthFunc(gl.LEQUAL);
  gl.blendFunc(gl.SRC_ALPHA, gl.ONE_MINUS_SRC_ALPHA);
  gl.clearColor(1, 1, 1, 1);
  const at = (name: string): WebGLUniformLocation | null => gl.getUniformLocation(program, name);
  return { view: at('view'), lens: at('lens'), colour: at('colour'), isLit: at('isLit') };
}

const CORNERS = `#version 300 es
in vec3 place;
uniform mat4 view, lens;
out vec3 seen;
void main() {
  vec4 there = view * vec4(place, 1);
  seen = there.xyz;
  gl_Position = lens * there;
}`;

// The light stands at the eye, above its right shoulder, and shines on the tube's origin; some is all round. Light adds up as
// such, colours are given and shown by the curve of sRGB (IEC 61966-2-1), all of them lighter than where it begins as a line.
const PIXELS = `#version 300 es
precision highp float;
in vec3 seen;
uniform mat4 view;
uniform vec4 colour;
uniform bool isLit;
out vec4 shown;
void main() {
  vec3 outwards = normalize(cross(dFdx(seen), dFdy(seen)));
  vec3 light = normalize(vec3(.4, .8, 1) - view[3].xyz);
  float bright = (1.3 + 2.4 * max(dot(outwards, light), 0.)) / radians(180.);
  vec3 lit = bright * pow((colour.rgb + .055) / 1.055, vec3(2.4));
  shown = isLit ? vec4(1.055 * pow(lit, vec3(1. / 2.4)) - .055, colour.a) : colour;
}`;
