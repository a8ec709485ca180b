import { build } from '../src/build/build.ts';

/** The tests of the command run what a user runs, so the command is built from today's source first. */
export default async function setup(): Promise<void> {
  await build();
}
