#!/usr/bin/env node
import { ENGLISH } from '../words/english.ts';
import { main } from './main.ts';
import { processShell } from './shell.ts';

process.exitCode = await main(process.argv.slice(2), processShell(new URL('../', import.meta.url), ENGLISH));
