#!/usr/bin/env node
import { main } from './main.ts';
import { processShell } from './shell.ts';

// A reader that has seen enough, such as `head`, closes the pipe: that is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
});

process.exitCode = await main(process.argv.slice(2), processShell(new URL('../', import.meta.url)));
